import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareDrafts } from '../../src/compare/compare-drafts.js';
import { readFacts } from '../../src/compare/read-facts.js';
import type { Change, DayFacts, DraftFacts, SceneFacts, ThingFacts } from '../../src/compare/types.js';
import { makeDraft, makeSceneFacts, makeThing } from '../support/make-draft.js';

const word = fc.constantFrom('wet', 'torn', 'lit', 'broken');
const state = fc.option(word, { nil: null });
const uniqueOf = <T>(arbitrary: fc.Arbitrary<T>, key: (one: T) => string, most = 4) =>
  fc.uniqueArray(arbitrary, { selector: key, maxLength: most });

const thing: fc.Arbitrary<ThingFacts> = fc
  .record({
    name: fc.constantFrom('rope', 'crate', 'lamp', 'letter', 'key'),
    by: fc.option(fc.constantFrom('NORA', 'TOMI'), { nil: null }),
    count: fc.option(fc.nat(5), { nil: null }),
    stateIn: state,
    stateOut: state,
  })
  .map(({ name, ...part }) => makeThing(name, part));

const garment = fc.record({
  id: fc.constantFrom('coat', 'hat', 'scarf'),
  stateIn: state,
  stateOut: state,
  absent: fc.boolean(),
});

const scene: fc.Arbitrary<SceneFacts> = fc
  .record({
    id: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'),
    time: fc.constantFrom('DAY', 'NIGHT'),
    eighths: fc.integer({ min: 1, max: 20 }),
    things: uniqueOf(thing, (one) => one.id),
    cast: uniqueOf(
      fc.record({
        name: fc.constantFrom('NORA', 'TOMI', 'IVA'),
        presence: fc.constantFrom('seen' as const, 'heard' as const),
      }),
      (one) => one.name,
    ),
    wears: uniqueOf(
      fc.record({
        person: fc.constantFrom('NORA', 'TOMI'),
        change: fc.integer({ min: 1, max: 3 }),
        garments: uniqueOf(
          garment.map((one) => ({ ...one, name: one.id })),
          (one) => one.id,
        ),
      }),
      (one) => one.person,
    ),
    dangers: fc.uniqueArray(fc.constantFrom('Open flame', 'Water'), { maxLength: 2 }),
  })
  .map((part) => makeSceneFacts(part));

/** Shooting days over some of the scenes. */
function daysOver(scenes: readonly SceneFacts[]): fc.Arbitrary<DayFacts[] | null> {
  const ids = scenes.map((one) => one.id);
  const days = fc
    .tuple(fc.shuffledSubarray(ids), fc.nat(ids.length), fc.integer({ min: 10, max: 14 }))
    .map(([order, cut, first]) =>
      [order.slice(0, cut), order.slice(cut)].map((list, i) => ({
        number: i + 1,
        date: `2027-03-${first + i}`,
        call: '08:00',
        places: [],
        scenes: list,
      })),
    );
  return fc.option(days, { nil: null });
}

const draft: fc.Arbitrary<DraftFacts> = uniqueOf(scene, (one) => one.id, 6)
  .map((scenes) => scenes.map((one, i) => ({ ...one, label: `${i + 1}` })))
  .chain((scenes) => daysOver(scenes).map((days) => makeDraft(scenes, { days })));

/** All changes in one order, each with its sides as they are or the other way round; day names differ by side. */
function flatten({ scenes, whole }: ReturnType<typeof compareDrafts>, turn: boolean): string[] {
  const words = (scene: string | null, change: Change) => {
    const [before, after] = turn ? [change.after, change.before] : [change.before, change.after];
    const subject = /^day|^shooting order/.test(change.kind) ? null : change.subject;
    return JSON.stringify({ ...change, scene, subject, before, after });
  };
  return [
    ...whole.map((change) => words(null, change)),
    ...scenes.flatMap((one) => {
      const labels = turn ? `${one.after} ${one.before}` : `${one.before} ${one.after}`;
      return one.changes.map((change) => words(labels, change));
    }),
  ].sort();
}

describe('any two drafts', () => {
  it('have no changes when they are one', () => {
    fc.assert(
      fc.property(draft, (one) => {
        expect(compareDrafts(one, one)).toMatchObject({ scenes: [], whole: [] });
      }),
    );
  });

  it('mirror each other: what is new one way is gone the other way', () => {
    fc.assert(
      fc.property(draft, draft, (one, other) => {
        expect(flatten(compareDrafts(other, one), true)).toEqual(flatten(compareDrafts(one, other), false));
      }),
      { numRuns: 300 },
    );
  });
});

describe('any text in place of a breakdown', () => {
  it('is read or gives a reason, and never throws', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(readFacts(text)).toHaveProperty('why');
      }),
    );
  });
});
