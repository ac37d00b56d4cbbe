import { describe, expect, it } from 'vitest';
import { matchScenes } from '../../src/compare/match-scenes.js';
import type { SceneFacts } from '../../src/compare/types.js';
import { makeSceneFacts, makeThing } from '../support/make-draft.js';

const match = (before: readonly SceneFacts[], after: readonly SceneFacts[]) =>
  matchScenes(before, after).map((pair) => `${pair.before?.id ?? '-'} ${pair.after?.id ?? '-'}`);

const kitchen = (id: string, synopsis: string, part: Partial<SceneFacts> = {}) =>
  makeSceneFacts({ id, place: 'KITCHEN', synopsis, cast: [{ name: 'NORA', presence: 'seen' }], ...part });

describe('scenes of two drafts', () => {
  it('are found by what happens where a namesake was put in before them', () => {
    const before = [kitchen('k', 'Nora bakes bread.'), kitchen('k-2', 'Nora reads the letter aloud.')];
    const after = [
      kitchen('k', 'Nora bakes bread.'),
      kitchen('k-2', 'Two policemen search every drawer.'),
      kitchen('k-3', 'Nora reads the letter aloud.'),
    ];
    expect(match(before, after)).toEqual(['k k', '- k-2', 'k-2 k-3']);
  });

  it('are found when the heading changed and the rest did not', () => {
    const things = [makeThing('letter'), makeThing('bread knife')];
    const before = [kitchen('int-kitchen-day', 'Nora reads the letter aloud.', { things })];
    const after = [
      kitchen('ext-yard-night', 'Nora reads the letter aloud.', { things, place: 'YARD', light: 'night' }),
    ];
    expect(match(before, after)).toEqual(['int-kitchen-day ext-yard-night']);
  });

  it('are the same by id, however much was rewritten', () => {
    const before = [makeSceneFacts({ id: 's4', place: 'QUAY', synopsis: 'A boat leaves.' })];
    const after = [makeSceneFacts({ id: 's4', place: 'ATTIC', synopsis: 'Tomi hides.', setting: 'EXT', light: null })];
    expect(match(before, after)).toEqual(['s4 s4']);
  });

  it('are two when only place and people are alike', () => {
    const before = [kitchen('k-day', 'Nora bakes bread.')];
    const after = [kitchen('k-night', 'Somebody knocks; nobody opens.')];
    expect(match(before, after)).toEqual(['- k-night', 'k-day -'].reverse());
  });
});
