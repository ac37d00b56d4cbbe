import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../src/book/read-book.js';
import { countCopies, nameCopies } from '../../src/plan/copy-flow.js';
import { makePlan } from '../../src/plan/make-plan.js';
import { cutLengths } from '../../src/plan/packs.js';
import { fullBook } from '../book/full-book.js';
import { planOf, type SceneSketch, sketch } from '../plan/fixture.js';

const state = fc.constantFrom('clean', 'soaked', 'torn', 'bloody', 'muddy', 'folded', 'odd');
const thing = fc
  .record({
    in: state,
    out: fc.option(state, { nil: undefined }),
    count: fc.option(fc.integer({ min: 1, max: 4 }), { nil: undefined }),
  })
  .map(({ out, count, ...rest }) => ({ ...rest, ...(out ? { out } : {}), ...(count ? { count } : {}) }));
const scene: fc.Arbitrary<SceneSketch> = fc.record({
  things: fc.record({ letter: thing, coat: thing }, { requiredKeys: [] }),
  eighths: fc.integer({ min: 1, max: 12 }),
}) as fc.Arbitrary<SceneSketch>;
const scenes = fc.array(scene, { minLength: 1, maxLength: 6 });

const daysOf = (order: readonly number[], cuts: readonly boolean[]) => {
  const days: number[][] = [[]];
  order.forEach((one, index) => {
    (days.at(-1) as number[]).push(one + 1);
    if (cuts[index]) days.push([]);
  });
  return `days:\n${days.map((list, index) => `  - { date: 2027-03-${String(10 + index).padStart(2, '0')}, scenes: [${list.join(', ')}] }`).join('\n')}\n`;
};

describe('permuting the shooting days', () => {
  it('changes what is needed only by what is handed on or converted', () => {
    fc.assert(
      fc.property(
        scenes.chain((list) =>
          fc.tuple(
            fc.constant(list),
            fc.shuffledSubarray(
              list.map((_, i) => i),
              { minLength: list.length },
            ),
            fc.array(fc.boolean(), { minLength: 6, maxLength: 6 }),
          ),
        ),
        ([list, order, cuts]) => {
          const [inStory, shuffled] = [
            daysOf(
              list.map((_, i) => i),
              cuts,
            ),
            daysOf(order, cuts),
          ].map((book) => planOf({ scenes: list }, book));
          for (const need of inStory?.needs ?? []) {
            const other = shuffled?.needs.find((one) => one.id === need.id);
            const asked = (one: typeof need | undefined) => one?.uses.reduce((sum, use) => sum + use.atLeast, 0) ?? 0;
            expect(asked(other)).toBe(asked(need));
            const most = Math.max(0, ...need.uses.map((use) => use.atLeast));
            for (const one of [need, other]) {
              expect(one?.minimum).toBeGreaterThanOrEqual(most);
              expect(one?.minimum).toBeLessThanOrEqual(asked(one));
              expect(one?.recommended).toBeGreaterThanOrEqual(one?.minimum ?? 0);
            }
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('money', () => {
  const entry = fc.record({
    price: fc.integer({ min: 0, max: 99_999 }),
    copies: fc.integer({ min: 0, max: 30 }),
    paid: fc.option(fc.integer({ min: 0, max: 50_000 })),
    ordered: fc.boolean(),
    deposit: fc.option(fc.integer({ min: 0, max: 9999 })),
    tax: fc.integer({ min: 0, max: 30 }),
    refund: fc.option(fc.integer({ min: 0, max: 100 })),
  });
  const write = (minor: number, decimals: number) =>
    decimals === 0
      ? String(minor)
      : `${Math.floor(minor / 10 ** decimals)}.${String(minor % 10 ** decimals).padStart(decimals, '0')}`;

  it('totals are the sums of the printed lines, and the cash of all days is what was paid and is to be paid', () => {
    fc.assert(
      fc.property(
        fc.array(entry, { minLength: 1, maxLength: 5 }),
        fc.constantFrom(['EUR', 2] as const, ['JPY', 0] as const, ['KWD', 3] as const),
        fc.boolean(),
        (entries, [currency, decimals], included) => {
          const names = entries.map((_, index) => `thing-${String.fromCharCode(97 + index)}`);
          const list = entries.map(
            (one, index) =>
              `  ${names[index]}: { get: hire, from: shop, copies: ${one.copies}, price: ${write(one.price, decimals)}, tax: ${one.tax}%${one.paid === null ? '' : `, paid: ${write(one.paid, decimals)}, paid on: 2027-02-01`}${one.ordered ? ', ordered: 2027-02-01' : ''}${one.deposit === null ? '' : `, deposit: ${write(one.deposit, decimals)}`}${one.refund === null ? '' : `, refund: ${write(one.refund, decimals)}`} }`,
          );
          const book = `money: { currency: ${currency}, contingency: 10%, prices include tax: ${included ? 'yes' : 'no'} }\ndays:\n  - { date: 2027-03-12, scenes: [1] }\nelements:\n${list.join('\n')}\n`;
          const { money, lines } = planOf(
            { scenes: [{ things: Object.fromEntries(names.map((name) => [name, {}])) }] },
            book,
          );
          const total = money.lines.reduce((sum, line) => sum + line.amount.minor, 0);
          expect(money.paid.minor + money.orderedUnpaid.minor + money.stillToGet.minor).toBe(total);
          expect(money.forecast.minor).toBe(total + money.contingency.minor);
          expect(money.cash.at(-1)?.out.minor ?? 0).toBe(total);
          expect(money.peak?.out.minor ?? 0).toBe(
            Math.max(...money.cash.map((day) => day.out.minor), ...(money.cash.length === 0 ? [0] : [])),
          );
          for (const line of lines)
            expect(line.cost?.gross.minor).toBe((line.cost?.net.minor ?? 0) + (line.cost?.tax.minor ?? 0));
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('copies', () => {
  const problem = fc
    .integer({ min: 1, max: 6 })
    .chain((size) =>
      fc.tuple(
        fc.array(fc.integer({ min: 0, max: 3 }), { minLength: size, maxLength: size }),
        fc.array(fc.boolean(), { minLength: size * size, maxLength: size * size }),
      ),
    );

  /** The least number of copies by trying everything: unit by unit, each one handed on to any later unit or none. */
  const tryAll = (asked: readonly number[], can: (i: number, j: number) => boolean): number => {
    const units = asked.flatMap((count, use) => new Array<number>(count).fill(use));
    const best = (index: number, free: readonly number[]): number => {
      if (index === units.length) return 0;
      const use = units[index] as number;
      const options = [...new Set(free)].filter((from) => from < use && can(from, use));
      const without = 1 + best(index + 1, [...free, use]);
      return Math.min(
        without,
        ...options.map((from) => best(index + 1, [...free.toSpliced(free.indexOf(from), 1), use])),
      );
    };
    return best(0, []);
  };

  it('are the fewest that there can be', () => {
    fc.assert(
      fc.property(problem, ([asked, allowed]) => {
        const can = (i: number, j: number) => allowed[i * asked.length + j] === true;
        fc.pre(asked.reduce((a, b) => a + b, 0) <= 8);
        expect(countCopies(asked, can).copies).toBe(tryAll(asked, can));
      }),
    );
  });

  it('have names that say which copy goes on', () => {
    fc.assert(
      fc.property(problem, ([asked, allowed]) => {
        const { copies, flow } = countCopies(asked, (i, j) => allowed[i * asked.length + j] === true);
        const named = nameCopies(asked, flow, (index) => `C-${index + 1}`);
        expect(named.map((one) => one.length)).toEqual(asked);
        expect(new Set(named.flat()).size).toBe(copies);
        for (const one of named) expect(new Set(one).size).toBe(one.length);
      }),
    );
  });
});

describe('any book at all', () => {
  const lines = fullBook.split('\n');
  const mend = fc.oneof(
    fc.record({ kind: fc.constant('drop' as const), at: fc.nat(lines.length - 1) }),
    fc.record({
      kind: fc.constant('value' as const),
      at: fc.nat(lines.length - 1),
      text: fc.constantFrom(
        '',
        '0',
        '-1',
        '999999',
        'yes',
        'soon',
        '2027-03-12',
        '[a, 1]',
        '{ a: 1 }',
        '1e9',
        '5 m',
        '0.0001',
        '100%',
        '&x',
        'null',
      ),
    }),
    fc.record({ kind: fc.constant('swap' as const), at: fc.nat(lines.length - 2) }),
  );
  const mended = fc.array(mend, { minLength: 1, maxLength: 12 }).map((mends) => {
    const text = [...lines];
    for (const one of mends) {
      const line = text[one.at] ?? '';
      if (one.kind === 'drop') text[one.at] = '';
      else if (one.kind === 'value') text[one.at] = line.replace(/: .*$/, `: ${one.text}`);
      else [text[one.at], text[one.at + 1]] = [text[one.at + 1] ?? '', line];
    }
    return text.join('\n');
  });
  const script = sketch({
    scenes: [
      { cast: ['NORA'], place: 'BOATHOUSE', things: { letter: { in: 'whole', out: 'torn', by: 'NORA' } } },
      { setting: 'EXT', light: 'dusk', things: { letter: { in: 'torn' }, empty: {} } },
    ],
  });

  it('is planned or refused with messages, and never throws', () => {
    fc.assert(
      fc.property(mended, (text) => {
        const { book, messages } = readBook(text, 'book.yaml');
        if (book === null) {
          expect(messages.length).toBeGreaterThan(0);
          return;
        }
        const { plan } = makePlan(script, book, '2027-02-20');
        expect(plan.money.forecast.minor).toBe(
          plan.money.lines.reduce((sum, line) => sum + line.amount.minor, plan.money.contingency.minor),
        );
        expect(plan.slots).toHaveLength(2);
      }),
      { numRuns: 60 },
    );
  });
});

describe('cutting from lengths', () => {
  const whole = (value: number) => ({ over: BigInt(value), under: 1n });

  it('is pieces over floor(roll / piece), rounded up, for equal pieces', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 0, max: 400 }),
        (pieces, piece, more) => {
          const roll = piece + more;
          expect(cutLengths(new Array(pieces).fill(whole(piece)), whole(roll))).toBe(
            Math.ceil(pieces / Math.floor(roll / piece)),
          );
        },
      ),
    );
  });

  it('never needs less than the total length', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 50, max: 90 }),
        (pieces, roll) => {
          expect(cutLengths(pieces.map(whole), whole(roll))).toBeGreaterThanOrEqual(
            Math.ceil(pieces.reduce((a, b) => a + b, 0) / roll),
          );
        },
      ),
    );
  });
});
