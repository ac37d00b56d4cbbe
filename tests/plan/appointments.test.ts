import { describe, expect, it } from 'vitest';
import { makePlan } from '../../src/plan/make-plan.js';
import { bookOf, lineOf, planOf, type Sketch, sketch } from './fixture.js';

const day = (date: string) => `days:\n  - { date: ${date}, call: 8:00, wrap: 18:00, scenes: [1] }\n`;
const mask: Sketch = { scenes: [{ things: { mask: {} } }] };
const coat: Sketch = { scenes: [{ wears: { ADA: { coat: {} } } }] };
const codesOf = (scenes: Sketch, book: string, today: string) =>
  makePlan(sketch(scenes), bookOf(book), today).messages.map((one) => one.code);
const saysOf = (scenes: Sketch, book: string, today: string, code: string) =>
  makePlan(sketch(scenes), bookOf(book), today).messages.filter((one) => one.code === code);

describe('fittings', () => {
  it('of a garment without a date are over four days before the first shooting day', () => {
    // SD1 Fri 23 April 2027, last fitting Mon 19; in hand Sun 18, no delivery: Fri 16; 5 working days: Fri 9 April.
    const { dates } = lineOf(planOf(coat, day('2027-04-23')), 'coat');
    expect(dates).toMatchObject({
      needed: '2027-04-19',
      neededFor: 'fitting, at the latest',
      packed: '2027-04-22',
      inHand: '2027-04-16',
      orderBy: '2027-04-09',
    });
  });

  it('without a date are one task on the last day', () => {
    const both: Sketch = { scenes: [{ wears: { ADA: { coat: {}, shoes: {} } } }] };
    const plan = planOf(both, `${day('2027-04-23')}elements:\n  shoes: { get: buy }\n`);
    expect(plan.tasks.filter((one) => one.kind === 'fit')).toMatchObject([
      { date: '2027-04-19', what: 'last day to fit: coat, shoes', elements: ['coat', 'shoes'], done: false },
    ]);
    expect(plan.defaults.join()).toContain('Fittings without a date: 4 days before the first shooting day');
  });

  it('that are missed are said apart from the scene', () => {
    // The scene alone: in hand Thu 22 April, 5 working days: Thu 15.
    const { tooLate } = lineOf(planOf(coat, day('2027-04-23'), '2027-04-12'), 'coat').dates;
    expect(tooLate).toMatch(
      /^the last day to order it for a fitting 4 days before the first shooting day was Fri 9 April 2027, and today is Mon 12 April 2027; ordered by Thu 15 April it still comes before it is played/,
    );
  });

  const said = (entry: string) =>
    saysOf(
      coat,
      `${day('2027-03-16')}elements:\n  coat: { get: own, have: 1, ${entry} }\n`,
      '2027-02-15',
      'plan-fitting-late',
    );

  it.each([
    // Dye: 2 h on one day and 2 days to settle, packed Mon 15: Fri 12 to Sun 14 March.
    ['fitting: 2027-03-17', 'and it is played on Tue 16 March 2027', 'fitting: 2027-03-12'],
    ['fitting: 2027-03-16', 'and it is played on Tue 16 March 2027', 'fitting: 2027-03-12'],
    [
      'fitting: 2027-03-13, prep: [{ task: dye, hours: 2, wait: 2 days }]',
      'after the work on it begins on Fri 12 March 2027',
      'fitting: 2027-03-12',
    ],
    ['fitting: 2027-03-14', 'less than 4 days before the first shooting day, Tue 16 March 2027', 'fitting: 2027-03-12'],
    ['test: 2027-03-16', 'the camera test is on Tue 16 March 2027, but scene 1 is shot', 'test: 2027-03-15'],
    ['rehearsal: 2027-03-17', 'the rehearsal is on Wed 17 March 2027, but scene 1 is shot', 'rehearsal: 2027-03-15'],
  ])('%s is too late', (entry, words, write) => {
    expect(said(entry).map((one) => one.reason)[0]).toContain(words);
    expect(said(entry).map((one) => one.hint)[0]).toContain(write);
    expect(said(entry)[0]?.place?.start.line).toBe(4);
  });

  it.each([
    'fitting: 2027-03-12',
    'test: 2027-03-15',
    'rehearsal: 2027-03-16',
    'fitting: 2027-03-14, checked: 2027-03-14',
  ])('%s is in time', (entry) => expect(said(entry)).toEqual([]));
});

describe('hires and loans', () => {
  const lent = (more: string) => `${day('2027-03-16')}elements:\n  mask: { get: hire, ${more} }\n`;
  const says = (more: string) => saysOf(mask, lent(more), '2027-02-15', 'plan-hire-dates').map((one) => one.reason);

  it.each([
    ['collect: 2027-03-20', 'it is fetched on Sat 20 March 2027, but must be in hand on Mon 15 March 2027'],
    // Fitted on the 10th: in hand the day before.
    ['fitting: 2027-03-10, collect: 2027-03-12', 'must be in hand on Tue 9 March 2027'],
    // Two days of work, Sat 13 and Sun 14: in hand Fri 12.
    ['collect: 2027-03-13, prep: [{ task: sew, days: 2 }]', 'must be in hand on Fri 12 March 2027'],
    ['back: 2027-03-15', 'it goes back on Mon 15 March 2027, but scene 1 is shot with it on Tue 16 March 2027'],
    ['collect: 2027-03-14, back: 2027-03-12', 'before it is fetched on Sun 14 March 2027'],
  ])('%s misses the scene', (entry, words) => {
    expect(says(entry).join()).toContain(words);
  });

  it('is not fetched or given back when its owner is shut', () => {
    // Fri 19 March 2027 is shot; the day after is a Saturday, and the shop opens again on Mon 22. A friend is asked on any day.
    const friday = (entry: string, more = '') =>
      lineOf(planOf(mask, `${day('2027-03-19')}${more}elements:\n  mask: { ${entry} }\n`), 'mask').back;
    expect(friday('get: hire, from: Hire store')).toBe('2027-03-22');
    expect(friday('get: borrow, owner: Ada')).toBe('2027-03-20');
    expect(friday('get: hire, from: store', 'suppliers:\n  store: { delivers: Mon-Sat }\n')).toBe('2027-03-20');
    const shut = (entry: string) =>
      saysOf(
        mask,
        `${day('2027-03-16')}suppliers:\n  store: { delivery: 1 }\nelements:\n  mask: { get: hire, from: store, ${entry} }\n`,
        '2027-02-15',
        'plan-hire-dates',
      ).map((one) => [one.reason, one.hint]);
    expect(shut('collect: 2027-03-14, back: 2027-03-20')).toEqual([
      [
        expect.stringMatching(/fetched on Sun 14 March 2027, when store is shut/),
        expect.stringMatching(/"collect: 2027-03-12"/),
      ],
      [
        expect.stringMatching(/goes back on Sat 20 March 2027, when store is shut/),
        expect.stringMatching(/"back: 2027-03-22"/),
      ],
    ]);
    expect(shut('collect: 2027-03-12, back: 2027-03-17')).toEqual([]);
  });

  it('may go back on the evening of the last scene', () => {
    expect(says('collect: 2027-03-15, back: 2027-03-16')).toEqual([]);
  });

  it('are never booked after they are needed', () => {
    // In hand Mon 15, one working day to fetch it: Fri 12 March.
    expect(lineOf(planOf(mask, lent('collect: 2027-03-20')), 'mask').dates).toMatchObject({
      inHand: '2027-03-15',
      orderBy: '2027-03-12',
    });
  });

  it('of what no scene names are for the whole shoot', () => {
    // Shot Tue 16 and Thu 18 March: fetched Mon 15, back Fri 19: 4 days × 9.00 = 36.00.
    const book =
      'days:\n  - { date: 2027-03-16, scenes: [1] }\n  - { date: 2027-03-18, scenes: [2] }\nkit:\n  ladder: { get: hire, price: 9, per: day, deposit: 40 }\n';
    const plan = planOf({ scenes: [{}, {}] }, book);
    expect(lineOf(plan, 'ladder')).toMatchObject({ collect: '2027-03-15', back: '2027-03-19' });
    expect(lineOf(plan, 'ladder').cost?.home.minor).toBe(3600);
    expect(plan.tasks.find((one) => one.kind === 'return')).toMatchObject({ date: '2027-03-19' });
  });
});

describe('hires of a shop', () => {
  const ladders = (more: string) =>
    `days:\n  - { date: 2027-03-15, scenes: [1] }\n  - { date: 2027-03-19, scenes: [2] }\nsuppliers:\n  shed: { name: Tool shed }\nkit:\n  ladder: { get: hire, from: shed, need: 2, deposit: 40${more} }\n`;

  it('are fetched and brought back on days on which it is open', () => {
    // Shot Mon 15 to Fri 19 March: wanted on Sun 14, when the shop is shut, so fetched on Fri 12; back on Mon 22, not on Sat 20.
    const line = lineOf(planOf({ scenes: [{}, {}] }, ladders('')), 'ladder');
    expect(line).toMatchObject({ collect: '2027-03-12', back: '2027-03-22' });
  });

  it('have a deposit on every piece', () => {
    // 2 × 40.00 leave on Fri 12 and come back on Mon 22.
    const plan = planOf({ scenes: [{}, {}] }, ladders(''));
    expect(lineOf(plan, 'ladder').deposit?.minor).toBe(8000);
    expect(plan.money.cash.map((one) => [one.date, one.out.minor])).toEqual([
      ['2027-03-12', 8000],
      ['2027-03-22', 0],
    ]);
    const fetched = planOf({ scenes: [{}, {}] }, ladders(', have: 2, received: 2027-03-12'));
    expect(lineOf(fetched, 'ladder').deposit?.minor).toBe(8000);
  });
});

describe('one’s own', () => {
  const own = (more: string) => `${day('2027-03-16')}elements:\n  mask: { get: own, ${more} }\n`;

  it('with too few is told, dated and decided', () => {
    // Packed Mon 15 March, 5 working days: Mon 8; better Fri 5.
    const book = own('have: 1, copies: 9');
    expect(saysOf(mask, book, '2027-02-15', 'plan-own-few')[0]?.reason).toBe(
      `Expected 9 of "mask", found 1 of one's own: 8 missing, to be ordered by Mon 8 March 2027.`,
    );
    const tasks = planOf(mask, book).tasks.filter((one) => one.elements.includes('mask') && one.kind !== 'pack');
    expect(tasks.map((one) => [one.what, one.date])).toEqual([
      ['decide where these come from, and order them: 8 × mask', '2027-03-05'],
      ['put mask aside', '2027-03-15'],
    ]);
    expect(lineOf(planOf(mask, book, '2027-03-10'), 'mask').dates.tooLate).toContain('Mon 8 March 2027');
    // The 8 cost money: without a price they are named, with one they are counted, 8 × 3.00.
    expect(planOf(mask, book).money.withoutPrice).toEqual(['mask']);
    expect(lineOf(planOf(mask, own('have: 1, copies: 9, price: 3')), 'mask').cost?.home.minor).toBe(2400);
  });

  it('with enough for the scenes may lack the spare', () => {
    // A cup breaks easily: at least 1, better 2. One is here; the spare has an order date, but no scene waits for it.
    const cup: Sketch = { scenes: [{ things: { cup: {} } }] };
    const book = `${day('2027-03-16')}elements:\n  cup: { get: own, have: 1 }\n`;
    expect(lineOf(planOf(cup, book), 'cup').dates.orderBy).toBe('2027-03-08');
    expect(codesOf(cup, book, '2027-03-10')).toEqual([]);
  });

  it('is only put aside with enough; of which nobody says how many are here, somebody is asked', () => {
    for (const more of ['have: 9, copies: 9', 'copies: 9']) {
      expect(codesOf(mask, own(more), '2027-02-15')).toEqual(more.startsWith('have') ? [] : ['plan-own-uncounted']);
      expect(lineOf(planOf(mask, own(more)), 'mask').dates.orderBy).toBeNull();
    }
  });
});

describe('batteries', () => {
  it('come before the camera test of what they light', () => {
    // The lamp is tested on Fri 5 March: batteries packed Thu 4, 5 working days: Thu 25 February.
    const book = `${day('2027-03-16')}elements:\n  mask: { get: borrow, batteries: 2 AA, test: 2027-03-05 }\n`;
    expect(lineOf(planOf(mask, book), 'batteries-aa').dates).toMatchObject({
      needed: '2027-03-05',
      neededFor: 'camera test of mask',
      inHand: '2027-03-04',
      orderBy: '2027-02-25',
    });
    expect(lineOf(planOf(mask, book, '2027-03-01'), 'batteries-aa').dates.tooLate).toContain(
      'put off the camera test of mask of Fri 5 March',
    );
  });
});
