import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, type CalendarDate } from '../../src/base/calendar-date.js';
import { calendarOf } from '../../src/plan/line-calendar.js';
import { addWorkingDays, isWorkingDay, lastWorkingDay, subtractWorkingDays } from '../../src/plan/working-days.js';
import { bookOf, planOf } from '../plan/fixture.js';

const day = fc.integer({ min: 0, max: 60 }).map((count) => addDays('2027-03-01' as CalendarDate, count));
const maybe = (name: string, value: fc.Arbitrary<string | number>) =>
  fc.option(value, { nil: null }).map((one) => (one === null ? [] : [`${name}: ${one}`]));
const entry = fc
  .tuple(
    fc.constantFrom('buy', 'make', 'borrow', 'hire', 'own').map((source) => [`get: ${source}`]),
    maybe('have', fc.integer({ min: 0, max: 3 })),
    maybe('copies', fc.integer({ min: 0, max: 6 })),
    maybe('delivery', fc.integer({ min: 0, max: 20 })),
    ...['fitting', 'test', 'rehearsal', 'collect', 'back', 'ordered', 'received'].map((name) => maybe(name, day)),
    maybe(
      'prep',
      fc.integer({ min: 1, max: 9 }).map((days) => `[{ task: sew, days: ${days} }]`),
    ),
    maybe(
      'materials',
      fc.integer({ min: 0, max: 20 }).map((days) => `[{ what: felt, delivery: ${days} }]`),
    ),
  )
  .map((parts) => `{ ${parts.flat().join(', ')} }`);

describe('dates counted backward, whatever the book says', () => {
  it('follow each other: recommended, order by, in hand, needed', () => {
    fc.assert(
      fc.property(
        entry,
        entry,
        fc.uniqueArray(day, { minLength: 2, maxLength: 2 }),
        day,
        (crate, coat, dates, today) => {
          const [first, second] = dates as [CalendarDate, CalendarDate];
          const book = `days:\n  - { date: ${first}, scenes: [1] }\n  - { date: ${second}, scenes: [2] }\nelements:\n  crate: ${crate}\n  coat: ${coat}\n`;
          const scene = { things: { crate: {} }, wears: { ADA: { coat: {} } } };
          const plan = planOf({ scenes: [scene, scene] }, book, today);
          for (const { dates } of plan.lines) {
            const { needed, inHand, packed, orderBy, recommended, materials } = dates;
            expect((needed ?? '') > (inHand ?? '') && (inHand ?? '') <= (packed ?? '')).toBe(true);
            if (orderBy !== null) expect(orderBy <= (inHand ?? '') && (recommended ?? '') < orderBy).toBe(true);
            for (const one of materials) expect(one.orderBy <= one.inHand && one.inHand < (needed ?? '')).toBe(true);
          }
          for (const task of plan.tasks) expect(task.until === null || task.until >= (task.date ?? '')).toBe(true);
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('working days', () => {
  it('counted forward never arrive after the day they were counted back from', () => {
    const calendar = calendarOf(bookOf('holidays: [2027-03-26, 2027-03-29]\n'), null);
    fc.assert(
      fc.property(day, fc.integer({ min: 0, max: 30 }), (date, count) => {
        const there = lastWorkingDay(date, calendar);
        const ordered = subtractWorkingDays(date, count, calendar);
        expect(isWorkingDay(ordered, calendar)).toBe(true);
        expect(addWorkingDays(ordered, count, calendar)).toBe(there);
        // A day later is too late.
        expect(addWorkingDays(addDays(ordered, 1), count, calendar) > there).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});

describe('the times of one day, whatever beginnings the book gives', () => {
  const clock = fc
    .integer({ min: 0, max: 95 })
    .map((quarter) => `${Math.floor(quarter / 4)}:${String((quarter % 4) * 15).padStart(2, '0')}`);
  it('go forward from call to wrap', () => {
    fc.assert(
      fc.property(
        clock,
        clock,
        fc.array(fc.option(clock, { nil: null }), { minLength: 3, maxLength: 3 }),
        (call, wrap, begins) => {
          const scenes = begins.map(
            (begin, index) => `  s${index + 1}: {${begin === null ? '' : ` begin: ${begin} `}}`,
          );
          const book = `days:\n  - { date: 2027-03-16, call: ${call}, wrap: ${wrap}, scenes: [1, 2, 3] }\nscenes:\n${scenes.join('\n')}\n`;
          const [plan] = planOf({ scenes: [{}, {}, {}] }, book).days;
          const hours = (plan?.scenes ?? []).flatMap((slot) => [slot.start ?? 0, slot.end ?? 0]);
          const midnight = Date.UTC(2027, 2, 16) / 3_600_000;
          const bounds = [midnight + (plan?.call.value ?? 0) / 60, ...hours, midnight + (plan?.wrap.value ?? 0) / 60];
          for (const [index, hour] of bounds.entries()) {
            if (index > 0) expect(hour).toBeGreaterThanOrEqual((bounds[index - 1] as number) - 1e-6);
          }
        },
      ),
      { numRuns: 200 },
    );
  });
});
