import { describe, expect, it } from 'vitest';
import { lineOf, planOf } from './fixture.js';

const uniforms = { scenes: [{ wears: { ADA: { uniform: {} } } }] };
const crate = { scenes: [{ things: { crate: {} } }] };
const day = (date: string) => `days:\n  - { date: ${date}, call: 8:00, wrap: 18:00, scenes: [1] }\n`;
const prep = 'prep: [{ task: fit, days: 1 }, { task: break down, days: 1 }, { task: dry, days: 2 }]';

describe('dates counted backward', () => {
  it('orders the uniforms by Monday 1 March, better on Friday 26 February', () => {
    // N Fri 12 March 2027; P Thu 11; prep 4 days, Sun 7 to Wed 10; H Sat 6: no delivery, so Fri 5; 4 working days: Mon 1 March;
    // one more for a wrong size: Fri 26 February.
    const line = lineOf(
      planOf(uniforms, `${day('2027-03-12')}elements:\n  uniform: { get: buy, delivery: 2-4 days, ${prep} }\n`),
      'uniform',
    );
    expect(line.dates).toMatchObject({
      needed: '2027-03-12',
      packed: '2027-03-11',
      prepStarts: '2027-03-07',
      prepDays: 4,
      inHand: '2027-03-05',
      orderBy: '2027-03-01',
      recommended: '2027-02-26',
      tooLate: null,
    });
  });

  it('lets a supplier deliver on Saturday', () => {
    // The same, but Sat 6 is a delivery day: 4 of Mon-Sat back from Sat 6 is Tue 2 March; recommended Mon 1.
    const book = `${day('2027-03-12')}suppliers:\n  tailor: { delivers: Mon-Sat }\nelements:\n  uniform: { get: buy, from: tailor, delivery: 4, ${prep} }\n`;
    expect(lineOf(planOf(uniforms, book), 'uniform').dates).toMatchObject({
      inHand: '2027-03-06',
      orderBy: '2027-03-02',
      recommended: '2027-03-01',
    });
  });

  it('steps over holidays', () => {
    // N Thu 1 April 2027, no prep: P = H = Wed 31 March. Good Friday 26 and Easter Monday 29 are holidays:
    // back from Wed 31: Tue 30 (1), Thu 25 (2), Wed 24 (3). Recommended Tue 23.
    const book = `${day('2027-04-01')}holidays: [2027-03-26, 2027-03-29]\nelements:\n  crate: { get: buy, delivery: 3 }\n`;
    expect(lineOf(planOf(crate, book), 'crate').dates).toMatchObject({
      inHand: '2027-03-31',
      orderBy: '2027-03-24',
      recommended: '2027-03-23',
    });
  });

  it('starts from the state that is shot earliest, and from a fitting before it', () => {
    // Scene 2 is shot on the 10th, scene 1 on the 12th; the fitting on the 8th comes before both.
    const scenes = [{ things: { flag: { in: 'clean' } } }, { things: { flag: { in: 'torn' } } }];
    const book = 'days:\n  - { date: 2027-03-12, scenes: [1] }\n  - { date: 2027-03-10, scenes: [2] }\n';
    expect(lineOf(planOf({ scenes }, book), 'flag').dates).toMatchObject({
      needed: '2027-03-10',
      neededFor: 'scene 2, torn',
    });
    const fitted = `${book}elements:\n  flag: { fitting: 2027-03-08 }\n`;
    expect(lineOf(planOf({ scenes }, fitted), 'flag').dates).toMatchObject({
      needed: '2027-03-08',
      neededFor: 'fitting',
    });
  });

  it('says too late in words, with the ways out', () => {
    const book = `${day('2027-03-12')}elements:\n  uniform: { get: buy, delivery: 4, ${prep} }\n`;
    const { tooLate } = lineOf(planOf(uniforms, book, '2027-03-03'), 'uniform').dates;
    expect(tooLate).toBe(
      'the last day to order it was Mon 1 March 2027, and today is Wed 3 March 2027. Ways out: pay for express delivery, buy it in town by Fri 5 March, borrow one, play a simpler state, move scene 1 from Fri 12 March.',
    );
  });

  it('is content once it is ordered, unless it is promised too late', () => {
    const marks = (more: string) =>
      `${day('2027-03-12')}elements:\n  uniform: { get: buy, delivery: 4, ordered: 2027-03-01, ${prep}${more} }\n`;
    expect(lineOf(planOf(uniforms, marks(', promised: 2027-03-05'), '2027-03-03'), 'uniform').dates.tooLate).toBeNull();
    expect(lineOf(planOf(uniforms, marks(', promised: 2027-03-08'), '2027-03-03'), 'uniform').dates.tooLate).toContain(
      'promised for Mon 8 March 2027',
    );
  });

  it('shares a day among short tasks and gives waiting days of its own', () => {
    // At 4 h a day: fit 0.75 h and break down 2 h fit one day; tea on paper is 1 h more, 3.75 h, then 1 day to dry: 2 days in all.
    const book = `${day('2027-03-12')}elements:\n  uniform: { get: own, prep: [fit, break down, age with tea] }\n`;
    expect(lineOf(planOf(uniforms, book), 'uniform').dates).toMatchObject({ prepDays: 2, prepStarts: '2027-03-09' });
  });

  it('has no order date for what is one’s own, and none without a shooting day', () => {
    expect(
      lineOf(planOf(uniforms, `${day('2027-03-12')}elements:\n  uniform: { get: own, have: 1 }\n`), 'uniform').dates
        .orderBy,
    ).toBeNull();
    expect(lineOf(planOf(uniforms), 'uniform').dates).toMatchObject({
      needed: null,
      orderBy: null,
      neededFor: 'no shooting day yet',
    });
  });
});

describe('the state of a line', () => {
  const status = (entry: string, today = '2027-02-15') =>
    lineOf(planOf(uniforms, `${day('2027-03-12')}elements:\n  uniform: { ${entry} }\n`, today), 'uniform').status;
  it.each([
    ['', 'needed'],
    ['get: buy', 'decided'],
    ['get: buy, ordered: 2027-02-10', 'ordered'],
    ['get: buy, ordered: 2027-02-01, promised: 2027-02-10', 'late'],
    ['get: buy, received: 2027-02-10', 'received'],
    ['get: buy, received: 2027-02-10, problem: wrong', 'wrong'],
    ['get: buy, received: 2027-02-10, problem: wrong, checked: 2027-02-12', 'checked'],
    ['get: cut', 'done without'],
    ['get: own, have: 1', 'here already'],
  ])('%s is %s', (entry, expected) => {
    expect(status(entry)).toBe(expected);
  });
});

describe('one thing in place of another', () => {
  const scenes = { scenes: [{ things: { lantern: {} } }] };
  it('keeps the old line, costs nothing for it, and says what stands in', () => {
    const plan = planOf(
      scenes,
      `${day('2027-03-12')}elements:\n  lantern: { get: buy, price: 40 }\nkit:\n  torch: { get: buy, price: 12, need: 1, replaces: lantern }\n`,
    );
    expect(lineOf(plan, 'lantern')).toMatchObject({ status: 'replaced', cost: null });
    expect(lineOf(plan, 'lantern').remarks[0]).toMatch(/^torch stands in for it; ask before it is swapped/);
    expect(lineOf(plan, 'torch').remarks).toEqual(['stands in for lantern']);
    expect(plan.money.stillToGet.minor).toBe(1200);
    expect(plan.tasks.some((task) => task.elements.includes('lantern'))).toBe(false);
  });

  it('says when more is here than is needed, and never takes the record back', () => {
    const line = lineOf(
      planOf(scenes, `${day('2027-03-12')}elements:\n  lantern: { get: buy, have: 4, paid: 40 }\n`),
      'lantern',
    );
    // Needed 1, here 4: 3 more.
    expect([line.need.have, line.remarks]).toEqual([4, ['3 more than needed: keep as spare, or give back']]);
  });
});
