import { describe, expect, it } from 'vitest';
import { findRenamed } from '../../src/compare/find-renamed.js';
import { findSlipped } from '../../src/compare/find-slipped.js';
import { readRenames } from '../../src/compare/read-renames.js';
import type { SceneFacts } from '../../src/compare/types.js';
import { makeDraft, makeSceneFacts, makeThing } from '../support/make-draft.js';

const scene = (id: string, synopsis: string, part: Partial<SceneFacts> = {}) =>
  makeSceneFacts({
    id,
    synopsis,
    placeId: id.split('-')[0] ?? id,
    cast: [{ name: 'NORA', presence: 'seen' }],
    ...part,
  });
const words = (before: readonly SceneFacts[], after: readonly SceneFacts[]) =>
  findRenamed(before, after).scenes.map(({ from, to, sure }) => `${from} ${to}${sure ? '' : '?'}`);

describe('a scene under a new heading', () => {
  const kitchen = scene('kitchen-day', 'Nora bakes bread.');
  const attic = scene('attic-night', 'Tomi opens the trunk.');

  it('is certain where what happens is the same', () => {
    expect(words([kitchen, attic], [kitchen, scene('loft-night', 'Tomi opens the trunk.')])).toEqual([
      'attic-night loft-night',
    ]);
    expect(words([kitchen], [kitchen])).toEqual([]);
  });

  it('is doubtful where two new ones are alike', () => {
    const twice = [scene('loft-night', 'Tomi opens the trunk.'), scene('barn-night', 'Tomi opens the trunk.')];
    expect(words([kitchen, attic], [kitchen, ...twice])).toEqual(['attic-night loft-night?']);
  });

  it('is doubtful where it only stands in the same gap, and none where the gap holds more', () => {
    const quay = scene('quay-day', 'Ada leaves.');
    const other = scene('loft-night', 'Rats run over a beam.', { cast: [], things: [makeThing('rat')] });
    const more = scene('barn-night', 'Hens cackle in the straw.', { cast: [] });
    expect(words([kitchen, attic, quay], [kitchen, other, quay])).toEqual(['attic-night loft-night?']);
    expect(words([kitchen, attic, quay], [kitchen, other, more, quay])).toEqual([]);
  });

  it('takes its place along when all scenes of the place go to one new place', () => {
    const day = scene('attic-day', 'Nora sweeps the floor.');
    const moved = [scene('loft-night', 'Tomi opens the trunk.'), scene('loft-day', 'Nora sweeps the floor.')];
    const split = [scene('loft-night', 'Tomi opens the trunk.'), scene('barn-day', 'Nora sweeps the floor.')];
    const places = (after: readonly SceneFacts[]) =>
      findRenamed([attic, day], after).places.map(({ from, to, sure }) => [from, to, sure]);
    expect(places(moved)).toEqual([['attic', 'loft', true]]);
    expect(places(split)).toEqual([]);
    // A place that was there before has an address of its own.
    const known = [kitchen, scene('kitchen-night', 'Tomi opens the trunk.')];
    expect(findRenamed([kitchen, attic], known).places).toEqual([]);
  });
});

describe('a name that finds another scene', () => {
  const [bake, open] = [scene('kitchen', 'Nora bakes bread.'), scene('kitchen-2', 'Tomi opens the trunk.')];
  const put = scene('kitchen', 'A stranger waits in the dark.', { cast: [] });
  const after = [put, { ...bake, id: 'kitchen-2' }, { ...open, id: 'kitchen-3' }];
  const days = [{ number: 1, date: '2027-03-01', call: '08:00', places: [], scenes: ['kitchen-2'] }];
  const before = makeDraft([bake, open], { days });
  const named = (...names: readonly string[]) => [
    { date: '2027-03-01', scenes: names.map((name) => ({ name, scene: name })) },
  ];

  it('is told, until the scene that it meant stands in a day', () => {
    expect(findSlipped(before, after, named('kitchen-2')).map(({ name, meant }) => [name, meant])).toEqual([
      ['kitchen-2', 'kitchen-3'],
    ]);
    expect(findSlipped(before, after, named('kitchen', 'kitchen-2')).map(({ meant }) => meant)).toEqual(['kitchen-3']);
    expect(findSlipped(before, after, named('kitchen-3'))).toEqual([]);
    expect(findSlipped(before, after, named('kitchen-2', 'kitchen-3'))).toEqual([]);
  });
});

describe('names kept from the last run', () => {
  it('are read, and none from a file that has none', () => {
    const kept = readRenames('{"renamed":{"scenes":{"a":"b"},"places":{}}}');
    expect([...kept.scenes]).toEqual([['a', 'b']]);
    for (const none of ['{', '[]', '{"version":1}', '{"renamed":7}']) expect(readRenames(none).scenes.size).toBe(0);
  });
});
