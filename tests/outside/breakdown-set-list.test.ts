import { describe, expect, it } from 'vitest';
import { breakDown } from '../support/break-down.js';

/**
 * J. Berg Esenwein and Arthur Leeds, *Writing the Photoplay*, revised 1919, chapter XI: the author's own list of the sets of a play of 32
 * scenes and the scenes that play in each. Set names and scene numbers are facts; each set is written here as one heading of today.
 */
const setList: readonly (readonly [heading: string, scenes: readonly number[]])[] = [
  ["EXT. SHERIFF'S OFFICE - MAIN STREET", [1, 23]],
  ["INT. DR. TURNER'S OFFICE", [2]],
  ['EXT. WAY TO THE RANCH', [3]],
  ['INT. RANCH HOUSE - BEDROOM', [4, 9, 17, 28, 30]],
  ['EXT. RANCH HOUSE - CORNER TOWARD STABLE', [5, 7, 16, 22, 27, 31]],
  ['EXT. WITHIN SIGHT OF THE RANCH', [6]],
  ['INT. RANCH HOUSE - KITCHEN', [8, 10, 32]],
  ['EXT. STABLE - DOOR', [11]],
  ['EXT. FOOTHILL TRAIL', [12]],
  ['EXT. CAVE - ENTRANCE IN ROCKY HILLSIDE', [13, 15]],
  ['INT. CAVE', [14]],
  ['EXT. WAY TO TOWN', [18]],
  ['EXT. ROAD ON OUTSKIRTS OF TOWN', [19]],
  ['EXT. ROAD FARTHER ON TOWARD TOWN', [20]],
  ["EXT. DR. TURNER'S HOUSE", [21]],
  ["INT. SHERIFF'S OFFICE", [24, 26]],
  ["EXT. SHERIFF'S OFFICE - REAR", [25]],
  ['INT. CLOSE ON A HAND WITH A PHOTOGRAPH', [29]],
];

/** The headings in scene order, with the small differences in which people write a place again. */
function writeScript(): string {
  const scenes = setList.flatMap(([heading, numbers]) =>
    numbers.map((number, nth) => ({ number, heading: nth % 2 === 0 ? heading : varied(heading) })),
  );
  scenes.sort((a, b) => a.number - b.number);
  return scenes.map(({ number, heading }) => `## ${number}. ${heading} - DAY\n\nA clock ticks.`).join('\n\n');
}

function varied(heading: string): string {
  const [setting = '', ...rest] = heading.split(' ');
  return [setting, ...rest.map((word) => word.charAt(0) + word.slice(1).toLowerCase().replaceAll("'", '\u2019'))].join(
    ' ',
  );
}

describe('the index of places against a handbook of 1919', () => {
  const { breakdown } = breakDown(writeScript());
  const numberOf = new Map(breakdown.scenes.map(({ id, number }) => [id, Number(number)]));

  it('has the 18 sets of the book, every one of the 32 scenes once', () => {
    const sets = breakdown.places.flatMap(({ sets: own }) =>
      own.map(({ scenes }) => scenes.map((id) => numberOf.get(id))),
    );
    expect(sets).toHaveLength(18);
    expect(sets.toSorted((a, b) => (a[0] ?? 0) - (b[0] ?? 0))).toEqual(
      setList.map(([, scenes]) => scenes).toSorted((a, b) => (a[0] ?? 0) - (b[0] ?? 0)),
    );
    expect(sets.flat().toSorted((a, b) => (a ?? 0) - (b ?? 0))).toEqual(
      Array.from({ length: 32 }, (_, index) => index + 1),
    );
  });

  it('keeps the sets of one place together: inside, outside and areas', () => {
    const scenesOf = (id: string) =>
      breakdown.places.find((place) => place.id === id)?.scenes.map((scene) => numberOf.get(scene));
    expect(scenesOf('sheriff-s-office')).toEqual([1, 23, 24, 25, 26]);
    expect(scenesOf('ranch-house')).toEqual([4, 5, 7, 8, 9, 10, 16, 17, 22, 27, 28, 30, 31, 32]);
    expect(scenesOf('cave')).toEqual([13, 14, 15]);
  });
});
