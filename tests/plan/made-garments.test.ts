import { describe, expect, it } from 'vitest';
import { lineOf, planOf } from './fixture.js';

const hats = { scenes: [{ wears: { ADA: { hat: {} } } }] };
const book = (entry: string) =>
  `prep: { hours a day: 4, starts: 2027-02-15 }\ndays:\n  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1] }\nelements:\n  hat: { get: make, ${entry} }\n`;
const work = (plan: ReturnType<typeof planOf>) =>
  plan.tasks.filter((one) => one.id.startsWith('hat/work')).map((one) => [one.what, one.date, one.until]);

describe('a made garment', () => {
  it('is made before its fitting and aged after it', () => {
    // Shot Fri 12 March, packed Thu 11; fitted 4 days before the first day, Mon 8. Knitting 5 h at 4 h a day: Sat 6 and Sun 7.
    // Breaking down 2 h: Wed 10. The wool is in hand on Fri 5.
    const plan = planOf(
      hats,
      book('prep: [{ task: knit, hours: 5 }, break down], materials: [{ what: wool, delivery: 2 }]'),
    );
    const { dates } = lineOf(plan, 'hat');
    expect(dates).toMatchObject({
      needed: '2027-03-08',
      packed: '2027-03-11',
      prepStarts: '2027-03-06',
      finishStarts: '2027-03-10',
      prepDays: 3,
      inHand: '2027-03-05',
      orderBy: '2027-03-03',
    });
    expect(work(plan)).toEqual([
      ['hat: knit (5 h)', '2027-03-06', '2027-03-07'],
      ['hat: break down (2 h)', '2027-03-10', '2027-03-10'],
    ]);
  });

  it('has its wool dyed before it is knitted, and all before a fitting that the book dates', () => {
    // Fitted Fri 5 March. Dyeing 2 h and 2 days to dry: 3 days, Sun 28 February to Tue 2 March; knitting 8 h: Wed 3 and Thu 4.
    const plan = planOf(hats, book('fitting: 2027-03-05, prep: [dye, { task: knit, hours: 8 }]'));
    expect(work(plan)).toEqual([
      ['hat: dye (2 h), then 2 days to dry or settle', '2027-02-28', '2027-02-28'],
      ['hat: knit (8 h)', '2027-03-03', '2027-03-04'],
    ]);
  });

  it('says for which fitting the work would have to begin too early', () => {
    // 88 h at 4 h a day: 22 days before Mon 8 March is Sun 14 February, and preparation begins on the 15th.
    const { workShort } = lineOf(planOf(hats, book('prep: [{ task: knit, hours: 88 }]')), 'hat').dates;
    expect(workShort).toMatch(
      /^work of 22 days, made for the fitting on Mon 8 March 2027, would have to begin on Sun 14 February 2027, and preparation begins on Mon 15 February 2027/,
    );
  });
});
