import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatDuration, parseDuration } from '../../src/base/duration.js';
import { eighths, formatEighths, sumEighths } from '../../src/base/eighths.js';
import { editDistance, findNearest } from '../../src/base/nearest.js';
import { foldName, slug } from '../../src/base/slug.js';

describe('eighths', () => {
  // Unreduced eighths, and twelve eighths carried to 1 4/8: MasteringFilm, The Mathematics of Your Script; Wikipedia, Script breakdown.
  it.each([
    [1, '1/8'],
    [4, '4/8'],
    [8, '1'],
    [10, '1 2/8'],
    [12, '1 4/8'],
    [0, '0'],
  ])('prints %d as %s', (count, printed) => expect(formatEighths(eighths(count))).toBe(printed));

  it('refuses fractions and negative lengths', () => {
    expect(() => eighths(1.5)).toThrow(RangeError);
    expect(() => eighths(-1)).toThrow(RangeError);
  });

  it('adds', () => expect(sumEighths([eighths(3), eighths(9)])).toBe(12));
});

describe('durations', () => {
  it.each([
    [142.5, '2:23'],
    [59.4, '0:59'],
    [3600, '1:00:00'],
    [0, '0:00'],
  ])('prints %d seconds as %s', (seconds, printed) => expect(formatDuration(seconds)).toBe(printed));

  it.each([
    ['0:40', 40],
    ['40 s', 40],
    ['1 min 20 s', 80],
    ['1:02:03', 3723],
    ['NIGHT', null],
    ['', null],
    ['0:75', null],
  ])('reads %j as %j', (text, seconds) => expect(parseDuration(text)).toBe(seconds));

  it('reads back what it prints', () => {
    fc.assert(fc.property(fc.nat(100_000), (seconds) => parseDuration(formatDuration(seconds)) === seconds));
  });
});

describe('names', () => {
  it('folds case, white space, quotes and dashes', () => {
    expect(foldName('  Nora’s  “Big” coat–hook ')).toBe('nora\'s "big" coat-hook');
  });

  it.each([
    ['Storm Lantern', 'storm-lantern'],
    ['Éclair à la crème', 'eclair-a-la-creme'],
    ['Ключ', 'ключ'],
    ['!!!', 'unnamed'],
  ])('makes %j the id %s', (name, id) => expect(slug(name)).toBe(id));
});

describe('the nearest word', () => {
  it.each([
    ['sheetz', 'sheets'],
    ['porps', 'props'],
    ['umbrella', null],
  ])('of %s is %j', (typed, nearest) => expect(findNearest(typed, ['json', 'sheets', 'props'])).toBe(nearest));

  it('counts edits as the textbook pair kitten, sitting has them: 3 (common example, no single source)', () => {
    expect(editDistance('kitten', 'sitting')).toBe(3);
  });
});
