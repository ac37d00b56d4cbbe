import { describe, expect, it } from 'vitest';
import { makePlan } from '../../src/plan/make-plan.js';
import { bookOf, lineOf, planOf, type Sketch, sketch } from './fixture.js';

const day = (date: string) => `days:\n  - { date: ${date}, call: 8:00, wrap: 18:00, scenes: [1] }\n`;
const mask: Sketch = { scenes: [{ things: { mask: {} } }] };
const codesOf = (scenes: Sketch, book: string, today: string) =>
  makePlan(sketch(scenes), bookOf(book), today).messages.map((one) => one.code);
const saysOf = (scenes: Sketch, book: string, today: string, code: string) =>
  makePlan(sketch(scenes), bookOf(book), today).messages.filter((one) => one.code === code);

describe('raw material', () => {
  const far = 'suppliers:\n  far: { name: Far & Co, delivery: 15 }\n  near: { name: Corner, delivery: 1 }\n';
  const made = (materials: string) =>
    `${day('2027-03-16')}${far}elements:\n  mask: { get: make, materials: [${materials}] }\n`;

  it('has a date by its own shop', () => {
    // Scene Tue 16 March 2027, packed Mon 15, no work: in hand Mon 15. 15 working days back: Mon 8 (5), Mon 1 March (10),
    // Mon 22 February (15). One more for a wrong one: Fri 19 February.
    const { dates } = lineOf(planOf(mask, made('{ what: latex, from: far, pieces: 2 }'), '2027-02-15'), 'mask');
    expect(dates).toMatchObject({ inHand: '2027-03-15', orderBy: '2027-02-22', recommended: '2027-02-19' });
    expect(dates.tooLate).toBeNull();
  });

  it('comes too late when its own date is past', () => {
    const { dates } = lineOf(planOf(mask, made('{ what: latex, from: far, pieces: 2 }'), '2027-02-24'), 'mask');
    expect(dates.tooLate).toMatch(
      /^latex: the last day to order it was Mon 22 February 2027, and today is Wed 24 February 2027\. Ways out: .*move scene 1/,
    );
  });

  it('sets the date of the thing by the earliest that is still to be ordered, before the work on it', () => {
    // Work of 2 days, Sun 14 and Mon 15: material in hand Sat 13, so Fri 12 March. Paint, 1 day: Thu 11. Latex, 15 days: Fri 19
    // February, ordered in time: so paint sets the date.
    const book = `${day('2027-03-16')}${far}elements:\n  mask: { get: make, prep: [{ task: sew, days: 2 }], materials: [{ what: latex, from: far, ordered: 2027-02-19 }, { what: paint, from: near }] }\n`;
    const { dates } = lineOf(planOf(mask, book, '2027-02-20'), 'mask');
    expect(dates.materials.map((one) => [one.orderBy, one.ordered])).toEqual([
      ['2027-02-19', true],
      ['2027-03-11', false],
    ]);
    expect([dates.orderBy, dates.tooLate]).toEqual(['2027-03-11', null]);
  });

  it('is one task each, with pieces and shop, done when it is ordered', () => {
    const plan = planOf(
      mask,
      made('{ what: latex, from: far, pieces: 2, received: 2027-02-12 }, { what: paint, from: near }'),
      '2027-02-15',
    );
    const tasks = plan.tasks.filter((one) => one.kind === 'order');
    expect(tasks.map((one) => [one.what, one.date, one.done])).toEqual([
      ['order 2 × latex for mask (Far & Co)', '2027-02-19', true],
      ['order paint for mask (Corner)', '2027-03-11', false],
    ]);
  });

  it('is judged by the day it comes once it is ordered', () => {
    // Ordered Mon 1 March, 15 working days: Mon 22 March, after Mon 15.
    const late = made('{ what: latex, from: far, ordered: 2027-03-01 }');
    expect(lineOf(planOf(mask, late, '2027-03-02'), 'mask').dates.tooLate).toContain('it comes on Mon 22 March 2027');
    // What is made and here needs no material any more.
    const here = late.replace('get: make', 'get: make, received: 2027-03-02');
    expect(lineOf(planOf(mask, here, '2027-03-02'), 'mask').dates.tooLate).toBeNull();
  });

  it('of one’s own thing is wanted too, before the work on it', () => {
    const book = `${day('2027-03-16')}${far}elements:\n  mask: { get: own, have: 1, prep: [{ task: sew, days: 1 }], materials: [{ what: felt, from: near }] }\n`;
    const plan = planOf(mask, book, '2027-02-15');
    // Sewn Mon 15, felt in hand Sun 14: Fri 12; ordered by Thu 11, better Wed 10. The mask itself is here.
    expect(lineOf(plan, 'mask').dates).toMatchObject({ orderBy: null });
    expect(plan.tasks.find((one) => one.kind === 'order')).toMatchObject({ date: '2027-03-10', done: false });
  });
});

describe('what is ordered', () => {
  const ordered = (more: string) =>
    `${day('2027-03-18')}suppliers:\n  far: { delivery: 15 }\nelements:\n  mask: { get: buy, from: far, ${more} }\n`;

  it('without a promise comes after the days of delivery', () => {
    // Ordered Mon 15 March, 15 working days: Mon 22 (5), Mon 29 (10), Mon 5 April (15); in hand Wed 17 March.
    const { tooLate, expected } = lineOf(planOf(mask, ordered('ordered: 2027-03-15'), '2027-03-16'), 'mask').dates;
    expect(expected).toBe('2027-04-05');
    expect(tooLate).toMatch(
      /^ordered on Mon 15 March 2027, with 15 working days of delivery it comes on Mon 5 April 2027, but it must be in hand on Wed 17 March 2027\. Ways out: /,
    );
  });

  it('on a day off goes out on the next working day', () => {
    // Ordered Sat 20 February: out Mon 22, 15 working days: Mon 15 March. In time for Wed 17.
    const { tooLate, expected } = lineOf(planOf(mask, ordered('ordered: 2027-02-20'), '2027-02-22'), 'mask').dates;
    expect([expected, tooLate]).toEqual(['2027-03-15', null]);
  });

  it('is asked for when the promise is past, and too late when the day is past too', () => {
    const promised = ordered('ordered: 2027-02-01, promised: 2027-03-10');
    expect(codesOf(mask, promised, '2027-03-10')).not.toContain('plan-overdue');
    expect(codesOf(mask, promised, '2027-03-11')).toContain('plan-overdue');
    expect(lineOf(planOf(mask, promised, '2027-03-18'), 'mask').dates.tooLate).toContain(
      'promised for Wed 10 March 2027 and not here yet, but it must be in hand on Wed 17 March 2027',
    );
    expect(
      codesOf(mask, ordered('ordered: 2027-02-01, promised: 2027-03-10, received: 2027-03-09'), '2027-03-11'),
    ).toEqual([]);
  });

  it('is no concern once its last scene is shot', () => {
    expect(codesOf(mask, ordered('ordered: 2027-03-15'), '2027-03-18')).toEqual(['plan-too-late']);
    expect(codesOf(mask, ordered('ordered: 2027-03-15'), '2027-03-19')).toEqual([]);
    expect(codesOf(mask, ordered('problem: wrong, promised: 2027-03-10'), '2027-03-19')).toEqual([]);
  });

  it.each([
    ['wrong', 'it came wrong'],
    ['broken', 'it is broken'],
    ['cancelled', 'the order was cancelled'],
  ])('and came %s is got again', (problem, words) => {
    const book = ordered(`ordered: 2027-02-01, received: 2027-02-22, problem: ${problem}`);
    const plan = planOf(mask, book, '2027-02-23');
    // In hand Wed 17 March less 15 working days: Wed 24 February; recommended Tue 23.
    expect(plan.tasks.find((one) => one.kind === 'order')).toMatchObject({
      what: `order again (${problem}) mask (far)`,
      date: '2027-02-23',
      done: false,
    });
    const [said] = saysOf(mask, book, '2027-02-23', 'plan-get-again');
    expect(said?.reason).toContain(`${words}; a new one must be ordered by Wed 24 February 2027`);
    expect(said?.place?.start.line).toBe(6);
    expect(lineOf(planOf(mask, book, '2027-02-25'), 'mask').dates.tooLate).toContain(`${words}, and the last day`);
    expect(codesOf(mask, book.replace('problem', 'checked: 2027-02-23, problem'), '2027-02-23')).not.toContain(
      'plan-get-again',
    );
  });
});

describe('what nobody has decided on', () => {
  it('is said once a shooting day, when it is too late for several', () => {
    // Scene Thu 18 March, in hand Wed 17, 5 working days: Wed 10 March.
    const scenes = { scenes: [{ things: { mask: {}, cup: {}, jug: {} } }] };
    const book = `${day('2027-03-18')}elements:\n  jug: { get: buy }\n`;
    const said = makePlan(sketch(scenes), bookOf(book), '2027-03-11').messages;
    expect(said.map((one) => [one.code, one.place?.start.line])).toEqual([
      ['plan-too-late', 4],
      ['plan-undecided-late', 2],
    ]);
    expect(said[1]?.reason).toContain(
      '2 things for shooting day 1, found that the last day to order them was Wed 10 March 2027: cup, mask. Ways out: borrow them, buy them in town by Wed 17 March',
    );
    expect(codesOf(scenes, book, '2027-03-10')).toEqual([]);
  });

  it('is said by itself when it is one', () => {
    expect(codesOf(mask, day('2027-03-18'), '2027-03-11')).toEqual(['plan-too-late']);
  });
});

describe('work that must be done first', () => {
  const work = (more: string, prep = '') => `${prep}${day('2027-03-18')}elements:\n  mask: { ${more} }\n`;

  it('no longer fits before the shoot', () => {
    // Packed Wed 17 March; 10 days of work: Sun 7 to Tue 16. Begun Tue 16, they end on Thu 25.
    const plan = planOf(mask, work('get: own, have: 1, prep: [{ task: carve, days: 10 }]'), '2027-03-16');
    expect(lineOf(plan, 'mask').dates.workShort).toBe(
      'work of 10 days was to begin on Sun 7 March 2027; begun today it ends on Thu 25 March 2027, and it is packed on Wed 17 March 2027. Ways out: more hands, fewer hours of it, one that needs no work, move scene 1 from Thu 18 March.',
    );
    expect(plan.tasks.find((one) => one.kind === 'work')).toMatchObject({ date: '2027-03-07', late: true });
  });

  it('of what is received too, until it is ready', () => {
    const book = work('get: buy, received: 2027-03-10, prep: [{ task: sew, days: 20 }]');
    expect(codesOf(mask, book, '2027-03-16')).toEqual(['plan-work-short']);
    expect(codesOf(mask, book.replace('received', 'ready: 2027-03-15, received'), '2027-03-16')).toEqual([]);
  });

  it('is content on the last day it can begin', () => {
    // 2 days of work, Mon 15 and Tue 16.
    const book = work('get: own, have: 1, prep: [{ task: carve, days: 2 }]');
    expect(codesOf(mask, book, '2027-03-15')).toEqual([]);
    expect(codesOf(mask, book, '2027-03-16')).toEqual(['plan-work-short']);
  });

  it('lies before the first day of preparation', () => {
    const book = work('get: own, have: 1, prep: [{ task: carve, days: 20 }]', 'prep: { starts: 2027-03-10 }\n');
    const [said] = saysOf(mask, book, '2027-02-15', 'plan-work-short');
    expect(said?.reason).toContain('would have to begin on Thu 25 February 2027');
    expect(said?.hint).toContain('"starts: 2027-02-25"');
  });
});
