import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Told } from '../support/break-down.js';
import { breakDown } from '../support/break-down.js';

const people = ['Nora', 'Josef', 'Young Nora', 'The driver'];
const things = ['lantern', 'storm lantern', 'brass key', 'iron key', 'key', 'grey coat', 'coat', 'mirror', 'letter'];
const times = [
  'DAY',
  'NIGHT',
  'DAWN',
  'DUSK',
  'CONTINUOUS',
  'LATER',
  'NEXT MORNING',
  'DAY (FLASHBACK)',
  'NIGHT (1931)',
  'SAME',
];
const places = ['INT. BAR', 'INT. BAR - BACK ROOM', 'EXT. BAR', 'INT. THE BAR', 'EXT. QUAY', 'INT/EXT. CAR'];

const person = fc.constantFrom(...people);
const thing = fc.constantFrom(...things);
const state = fc.constantFrom('wet', 'torn', 'Wet', 'lit, smoking');
const paragraph = fc.oneof(
  fc.tuple(person, thing).map(([who, what]) => `${who} takes the ${what}.`),
  thing.map((what) => `The [${what}] falls.`),
  thing.map((what) => `A [${what}](dressing) stands there.`),
  person.map((who) => `${who.toUpperCase()} (V.O.)\nI remember.`),
  person.map((who) => `${who.toUpperCase()}\nHand me the [lantern].`),
  fc.tuple(thing, state).map(([what, how]) => `> ${what}: ${how}`),
  fc.tuple(person, thing).map(([who, what]) => `> props: 2 ${what} (${who})`),
  fc
    .tuple(person, fc.constantFrom('wears', 'changes to', 'puts on', 'takes off', 'without'), thing)
    .map(([who, verb, what]) => `> ${who}: ${verb} ${what}`),
  thing.map((what) => `> no: ${what}`),
  person.map((who) => `${who} falls into the river.`),
  fc
    .tuple(
      fc.constantFrom('wet-nora', 'wet-josef', 'clothes-nora', 'along-grey-coat'),
      fc.constantFrom('all', 'no', 'coat', 'yes'),
    )
    .map(([id, said]) => `> answer: ${id}; ${said}`),
  fc.constantFrom(
    '> day: 2',
    '> day: flashback',
    '> no everywhere: mirror',
    'BACK TO PRESENT:',
    '> cast: Nora',
    'FLASHBACK TO:',
  ),
);
const scene = fc
  .tuple(fc.constantFrom(...places), fc.constantFrom(...times), fc.array(paragraph, { maxLength: 6 }))
  .map(([place, time, body]) => [`## ${place} - ${time}`, ...body].join('\n\n'));
const definitions = fc.constantFrom(
  '',
  '[lantern]: prop "2; carried by Nora"',
  '[grey coat]: costume "worn by Josef; was coat"',
);
const script = fc
  .tuple(fc.array(scene, { minLength: 1, maxLength: 8 }), definitions)
  .map(
    ([scenes, end]) =>
      `---\ncast: { NORA: {}, JOSEF: { age: 9 }, YOUNG NORA: {}, DRIVER: {} }\n---\n\n${scenes.join('\n\n')}\n\n${end}\n`,
  );

/** A finder that reads `takes the X` as found, handled by the first person, and sometimes worn or moved. */
function tellFinds(text: string): Told {
  const matches = [...text.matchAll(/(Nora|Josef|Young Nora|The driver) takes the ([a-z ]+)\./g)];
  const counts = new Map<string, number>();
  const elements = matches.map(([, who = '', what = ''], index) => {
    const words = `${who} takes the ${what}`;
    const nth = (counts.get(words) ?? 0) + 1;
    counts.set(words, nth);
    const worn = what.includes('coat');
    return {
      name: what,
      category: worn ? ('costumes' as const) : what === 'mirror' ? ('dressing' as const) : ('props' as const),
      words: `${words}#${nth}`,
      by: who === 'The driver' ? 'DRIVER' : who.toUpperCase(),
      worn: worn && index % 2 === 0,
      state: index % 3 === 0 ? 'torn' : null,
      confidence: index % 4 === 0 ? 0.5 : 0.9,
    };
  });
  const moves = elements.map(({ name, words, by }, index) => ({
    name,
    words,
    kind: (['put on', 'taken off', 'handed over', 'put down', 'carried off'] as const)[index % 5] ?? 'put down',
    from: by,
    to: index % 2 === 0 ? 'JOSEF' : null,
  }));
  return { elements, moves };
}

describe('any breakdown', () => {
  it('is the same twice, and whole: ids, carried things, clothes, counts, links and refusals agree', () => {
    fc.assert(
      fc.property(script, (text) => {
        const told = tellFinds(text);
        const { breakdown, scenes } = breakDown(text, told);
        expect(breakDown(text, told).breakdown).toEqual(breakdown);
        const ids = new Set(scenes.map(({ id }) => id));
        expect(ids.size).toBe(scenes.length);
        expect(new Set(breakdown.elements.map(({ id }) => id)).size).toBe(breakdown.elements.length);
        for (const one of scenes) {
          const own = one.elements.map(({ id }) => id);
          expect(new Set(own).size).toBe(own.length);
          for (const { carried, from, words, mentions, category } of one.elements) {
            expect(carried).toBe(from !== null);
            if (carried) expect(ids.has(from as string) && from !== one.id).toBe(true);
            expect(mentions.length > 0).toBe(!carried);
            expect(words === '').toBe(carried);
            expect(['cast', 'extras']).not.toContain(category);
          }
          const seen = one.cast.filter(({ presence }) => presence === 'seen').map(({ name }) => name);
          expect(one.wears.map(({ person: name }) => name).toSorted()).toEqual(seen.toSorted());
          for (const wears of one.wears) {
            expect(wears.changeOut).toBeGreaterThanOrEqual(wears.change);
            const keys = wears.garments.map(({ id, absent }) => `${absent} ${id}`);
            expect(new Set(keys).size).toBe(keys.length);
            for (const { id, absent, action } of wears.garments) {
              const taken = wears.garments.some((other) => other.id === id && !other.absent && other.action !== null);
              if (action === 'left off') expect(absent && (taken || wears.change !== wears.changeOut)).toBe(true);
            }
          }
          for (const { person: who, garments, from } of one.perhapsWorn) {
            expect(garments.length > 0 && ids.has(from) && seen.includes(who)).toBe(true);
            const on = one.wears.find(({ person: name }) => name === who)?.garments ?? [];
            expect(on.filter(({ name }) => garments.includes(name))).toEqual([]);
          }
          expect(one.storyDay.number).toBeGreaterThan(0);
          expect(new Set(one.questions.map(({ id }) => id)).size).toBe(one.questions.length);
          for (const { scene: other, what } of one.comesFrom) {
            const back = scenes.find(({ id }) => id === other)?.goesTo.find(({ scene: to }) => to === one.id);
            expect(back?.what).toEqual(what);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  it('counts the largest of any one scene', () => {
    fc.assert(
      fc.property(script, (text) => {
        const { breakdown, scenes } = breakDown(text, tellFinds(text));
        for (const { id, count, scenes: where } of breakdown.elements) {
          const own = scenes.flatMap(({ elements }) => elements.filter((one) => one.id === id));
          expect(own.length).toBe(where.length);
          const counts = own.map((one) => one.count).filter((one) => one !== null);
          expect(count).toBe(counts.length > 0 ? Math.max(...counts) : null);
        }
      }),
      { numRuns: 60 },
    );
  });
});
