import { describe, expect, it } from 'vitest';
import { labelScenes, listLabels } from '../../src/breakdown/scene-label.js';
import { makeScene } from '../support/make-breakdown.js';

const scenes = (numbers: (string | null)[]) =>
  numbers.map((number, i) => makeScene({ order: i + 1, place: 'Yard', number }));

describe('the label of a scene on paper', () => {
  it('is its number, as written', () => {
    expect([...labelScenes(scenes(['1', '3A', 'A4'])).values()]).toEqual(['1', '3A', 'A4']);
  });

  it('is its position when the script numbers none', () => {
    expect([...labelScenes(scenes([null, null])).values()]).toEqual(['1', '2']);
  });

  it('cannot be taken for a number when the script numbers some', () => {
    const mixed = Array.from({ length: 23 }, (_, i) => (i === 0 ? '1' : null));
    expect([...labelScenes(scenes(mixed)).values()].slice(1, 4)).toEqual(['2nd', '3rd', '4th']);
    expect([...labelScenes(scenes(mixed)).values()].slice(10)).toEqual([
      ...['11th', '12th', '13th', '14th', '15th', '16th', '17th', '18th', '19th', '20th', '21st', '22nd', '23rd'],
    ]);
  });

  it('lists in script order, each once', () => {
    const all = scenes(['5', '6', '7']);
    expect(listLabels(['scene-3', 'scene-1', 'scene-3'], all, labelScenes(all))).toEqual(['5', '7']);
  });
});
