import { describe, expect, it } from 'vitest';
import { makePlan } from '../../src/plan/make-plan.js';
import { bookOf, lineOf, planOf, sketch } from './fixture.js';

const day = 'days:\n  - { date: 2027-03-12, scenes: [1] }\n';
const three = { scenes: [{ things: { cup: { count: 3, by: 'ADA' } }, cast: ['ADA', 'BO'] }] };

describe('the cost of a line', () => {
  it('multiplies first, then adds tax that is not included', () => {
    // 3 × 12.49 = 37.47; 20 % of it is 7.494, rounded 7.49; together 44.96.
    const book = `money: { currency: EUR, tax: 20%, prices include tax: no }\nelements:\n  cup: { get: buy, copies: 3, price: 12.49 }\n`;
    expect(lineOf(planOf(three, book), 'cup').cost).toMatchObject({
      net: { minor: 3747 },
      tax: { minor: 749 },
      gross: { minor: 4496 },
      home: { minor: 4496 },
    });
  });

  it('adds no tax that is in the price', () => {
    const book = `money: { tax: 20%, prices include tax: yes }\nelements:\n  cup: { get: buy, copies: 3, price: 12.49 }\n`;
    expect(lineOf(planOf(three, book), 'cup').cost).toMatchObject({ tax: { minor: 0 }, home: { minor: 3747 } });
  });

  it('keeps another currency with its rate and converts once', () => {
    // 3 × 12.50 USD = 37.50 USD; × 0.923 = 34.6125: 34.61 EUR.
    const book = `money: { currency: EUR, rates: { USD: 0.923 on 2027-02-01 } }\nelements:\n  cup: { get: buy, copies: 3, price: 12.50 USD }\n`;
    const cost = lineOf(planOf(three, book), 'cup').cost;
    expect(cost).toMatchObject({ net: { minor: 3750, currency: 'USD' }, home: { minor: 3461, currency: 'EUR' } });
  });

  it('knows yen without decimals and dinars with three', () => {
    // 3 × 980 yen = 2940; 10 % tax = 294. 3 × 1.255 dinars = 3.765; 5 % tax = 0.18825: 0.188.
    const yen = planOf(
      three,
      'money: { currency: JPY, tax: 10%, prices include tax: no }\nelements:\n  cup: { get: buy, copies: 3, price: 980 }\n',
    );
    expect(lineOf(yen, 'cup').cost?.home).toEqual({ minor: 3234, currency: 'JPY' });
    const dinar = planOf(
      three,
      'money: { currency: KWD, tax: 5%, prices include tax: no }\nelements:\n  cup: { get: buy, copies: 3, price: 1.255 }\n',
    );
    expect(lineOf(dinar, 'cup').cost?.home).toEqual({ minor: 3953, currency: 'KWD' });
  });

  it('counts begun weeks of a hire', () => {
    // Thu 11 to Thu 18 March is one week; returned a day late, on Fri 19, it is two.
    const hire = (back: string) =>
      `${day}elements:\n  cup: { get: hire, copies: 1, price: 30, per: week, collect: 2027-03-11, back: ${back} }\n`;
    expect(lineOf(planOf(three, hire('2027-03-18')), 'cup').cost?.home.minor).toBe(3000);
    expect(lineOf(planOf(three, hire('2027-03-19')), 'cup').cost?.home.minor).toBe(6000);
  });
});

describe('a price that must not be multiplied by what it is not for', () => {
  const cooking = { scenes: [{ things: { wine: {}, rope: {} } }], categories: { wine: 'food' as const } };

  it('asks how much a bottle holds instead of paying for each millilitre', () => {
    // 9 × 100 ml × 1.3 = 1170 ml. At 8.00 a bottle of unknown size no cost is known; of 750 ml it is 2 bottles: 16.00.
    const wine = (pack: string) => `elements:\n  wine: { get: buy, per take: 100 ml, price: 8${pack} }\n`;
    const open = planOf(cooking, wine(''));
    expect(lineOf(open, 'wine').cost).toBeNull();
    expect(lineOf(open, 'wine').remarks[0]).toContain('how much one bottle, bag or roll holds');
    expect(open.money.withoutPrice).toContain('wine');
    expect(lineOf(planOf(cooking, wine(', pack: 750 ml')), 'wine').cost?.home.minor).toBe(1600);
    expect(lineOf(planOf(cooking, wine(', pack: 750 ml, per: piece')), 'wine').cost?.home.minor).toBe(1600);
  });

  it('cuts what a take uses of a length from rolls', () => {
    // 9 + a fifth = 10.8, so 11 pieces of 2 m; 2 from each roll of 5 m: 6 rolls at 3.00 = 18.00. Never 22 m / 5 m = 5 rolls.
    const line = lineOf(
      planOf(cooking, 'elements:\n  rope: { get: buy, per take: 2 m, pack: 5 m, price: 3 }\n'),
      'rope',
    );
    expect([line.need.toGet, line.packs, line.cost?.home.minor]).toEqual([11, 6, 1800]);
  });

  it('finds the price of shared packs on whichever line has it', () => {
    // 3 pieces of 1.2 m and 4 of 2 m from rolls of 5 m: 2 + 2 | 2 + 2 | 1.2 × 3 = 3 rolls at 12.00 = 36.00.
    const scenes = [{ things: { rope: { count: 3 }, string: { count: 4 } } }];
    const book = (extra: string) =>
      `elements:\n  rope: { get: buy, copies: 3, piece: 1.2 m, pool: cord, pack: 5 m${extra} }\n  string: { get: buy, copies: 4, piece: 2 m, pool: cord, pack: 5 m, price: 12 }\n`;
    const plan = planOf({ scenes }, book(''));
    expect([lineOf(plan, 'rope').packs, lineOf(plan, 'rope').cost?.home.minor]).toEqual([3, 3600]);
    expect(lineOf(plan, 'string').cost).toBeNull();
  });

  it('shares no pack between two prices or two suppliers', () => {
    // 3 pieces of 1.2 m: 4 to a roll of 5 m, 1 roll at 11.00. 4 pieces of 2 m: 2 to a roll, 2 rolls at 12.00 = 24.00.
    const scenes = [{ things: { rope: { count: 3 }, string: { count: 4 } } }];
    const book = (rope: string, string: string) =>
      `elements:\n  rope: { get: buy, copies: 3, piece: 1.2 m, pool: cord, pack: 5 m${rope} }\n  string: { get: buy, copies: 4, piece: 2 m, pool: cord, pack: 5 m${string} }\n`;
    const costs = (rope: string, string: string) => {
      const plan = planOf({ scenes }, book(rope, string));
      return [lineOf(plan, 'rope').cost?.home.minor, lineOf(plan, 'string').cost?.home.minor];
    };
    expect(costs(', price: 11', ', price: 12')).toEqual([1100, 2400]);
    expect(costs(', price: 12, from: Harbour shop', ', price: 12, from: market')).toEqual([1200, 2400]);
    expect(costs(', price: 12, from: market', ', price: 12')).toEqual([3600, undefined]);
  });
});

describe('the forecast', () => {
  it('puts contingency on what is not yet paid only', () => {
    // Paid 40.00; ordered 20.00; to get 10.00; contingency 10 % of 30.00 = 3.00; forecast 73.00; headroom of 100.00: 27.00.
    const scenes = [{ things: { cup: {}, jug: {}, tray: {} } }];
    const book = `money: { currency: EUR, budget: 100, contingency: 10% }\nelements:
  cup: { get: buy, copies: 1, price: 40, ordered: 2027-02-01, paid: 40, paid on: 2027-02-01 }
  jug: { get: buy, copies: 1, price: 20, ordered: 2027-02-02 }
  tray: { get: buy, copies: 1, price: 10 }\n`;
    expect(planOf({ scenes }, book).money).toMatchObject({
      paid: { minor: 4000 },
      orderedUnpaid: { minor: 2000 },
      stillToGet: { minor: 1000 },
      contingency: { minor: 300 },
      forecast: { minor: 7300 },
      headroom: { minor: 2700 },
    });
  });

  it('takes 15 % when there is water, an animal or a child, and says so', () => {
    const wet = planOf({ scenes: [{ wears: { ADA: { coat: { in: 'dry', out: 'soaked' } } } }] }).money;
    expect([wet.contingencyRate.given, wet.contingencyReason]).toEqual([
      false,
      'contingency of 15 % on what is not yet paid: water, an animal or a child is in the film',
    ]);
    expect(planOf(three).money.contingencyReason).toContain('10 %');
  });

  it('ships once an order, and free above the limit', () => {
    // Two lines from one shop: 10 + 15 = 25, shipping 4.90 once. With free shipping from 25 it falls away.
    const scenes = [{ things: { cup: {}, jug: {} } }];
    const book = (free: string) =>
      `suppliers:\n  shop: { shipping: 4.90${free} }\nelements:\n  cup: { get: buy, copies: 1, from: shop, price: 10 }\n  jug: { get: buy, copies: 1, from: shop, price: 15 }\n`;
    expect(planOf({ scenes }, book('')).money.stillToGet.minor).toBe(2990);
    expect(planOf({ scenes }, book(', free from: 25')).money.stillToGet.minor).toBe(2500);
  });

  it('ships a second order anew', () => {
    // One line was ordered on 1 February, the other is still open: two orders, 2 × 4.90.
    const scenes = [{ things: { cup: {}, jug: {} } }];
    const book = `suppliers:\n  shop: { shipping: 4.90 }\nelements:\n  cup: { get: buy, copies: 1, from: shop, price: 10, ordered: 2027-02-01 }\n  jug: { get: buy, copies: 1, from: shop, price: 15 }\n`;
    const { orderedUnpaid, stillToGet } = planOf({ scenes }, book).money;
    expect([orderedUnpaid.minor, stillToGet.minor]).toEqual([1490, 1990]);
  });

  it('feeds every head on every day', () => {
    // Day 1: ADA and BO, one helper, and whoever makes the film: 4 heads × 8 = 32.
    const book = `${day}helpers:\n  sam: { does: [props] }\nmoney: { other costs: [{ what: crew food, cost: 8, per: head and day }] }\n`;
    expect(planOf(three, book).money.lines.find((line) => line.kind === 'other')?.amount.minor).toBe(3200);
  });

  it('feeds the background too, and on each day only who is there', () => {
    // Day 1: ADA, twenty guests and the filmmaker: 22 × 5 = 110. Day 2: BO and the filmmaker: 2 × 5 = 10. Day 3 has no scene. 10 are paid.
    const scenes = sketch({ scenes: [{ cast: ['ADA'] }, { cast: ['ADA'] }, { cast: ['BO'] }] });
    const guests = (count: number | null) => ({
      id: 'guests',
      name: 'guests',
      count,
      known: 'found' as const,
      words: 'guests',
      line: 1,
    });
    const counts = [20, null, null];
    const told = {
      ...scenes,
      scenes: scenes.scenes.map((scene, at) => ({ ...scene, extras: at === 2 ? [] : [guests(counts[at] ?? null)] })),
    };
    const book = `days:
  - { date: 2027-03-12, scenes: [1, 2] }
  - { date: 2027-03-13, scenes: [3] }
  - { date: 2027-03-14 }
money: { other costs: [{ what: food, cost: 5, per: head and day, paid: 10, paid on: 2027-02-01 }] }\n`;
    const { money } = makePlan(told, bookOf(book), '2027-02-15').plan;
    expect(money.lines[0]).toMatchObject({ amount: { minor: 12000 }, byDay: [11000, 1000, 0] });
    expect(money.cash.map((one) => [one.date, one.out.minor])).toEqual([
      ['2027-02-01', 1000],
      ['2027-03-12', 11000],
      ['2027-03-13', 12000],
    ]);
  });

  it('closes what is paid and here, with the shipping of its order', () => {
    // Reckoned at 7.20, paid 2.50 and here: 2.50 and nothing open. On the way, with 2.50 paid on account: 4.70 open.
    const scenes = [{ things: { tape: {} } }];
    const book = (more: string) =>
      `suppliers: { shop: { shipping: 4 } }\nelements:\n  tape: { get: buy, copies: 1, from: shop, price: 7.20, ordered: 2027-02-01, paid: 2.50${more} }\n`;
    const open = (more: string) => {
      const { paid, orderedUnpaid } = planOf({ scenes }, book(more)).money;
      return [paid.minor, orderedUnpaid.minor];
    };
    expect(open(', received: 2027-02-08')).toEqual([650, 0]);
    expect(open('')).toEqual([250, 870]);
    // A part is still owed although it is here: 2.50 + 1.00, and the shipping was paid with the goods.
    expect(open(', received: 2027-02-08, owed: 1')).toEqual([650, 100]);
  });

  it('prints the rate and its date with the price', () => {
    const book = `money: { currency: EUR, rates: { USD: 0.923 on 2027-02-01, SEK: 0.088 } }\nelements:\n  cup: { get: buy, copies: 3, price: 12.50 USD }\n`;
    expect(lineOf(planOf(three, book), 'cup').cost?.words).toBe('3 × USD 12.50 at 0.923 (Mon 1 February 2027)');
    const undated = book.replace('12.50 USD', '90 SEK');
    expect(lineOf(planOf(three, undated), 'cup').cost?.words).toBe('3 × SEK 90.00 at 0.088 (of no date)');
  });

  it('takes a refund as a line of its own', () => {
    const book = `elements:\n  cup: { get: buy, copies: 1, price: 40, ordered: 2027-02-01, paid: 40, refund: 40, refund on: 2027-02-20 }\n`;
    const { lines, paid } = planOf(three, book).money;
    expect(lines.map((line) => line.amount.minor)).toEqual([4000, -4000]);
    expect(paid.minor).toBe(0);
  });
});

describe('cash apart from cost', () => {
  it('shows a peak that deposits make', () => {
    // Hire 30.00 booked Wed 10 March, deposit 200.00 out on Thu 11 and back on Mon 15: the peak is 230.00 on the 11th, the cost is 30.00.
    const book = `${day}elements:\n  cup: { get: hire, copies: 1, price: 30, per: hire, deposit: 200, collect: 2027-03-11, back: 2027-03-15, delivery: 1 }\n`;
    const { cash, peak, stillToGet } = planOf(three, book).money;
    expect(stillToGet.minor).toBe(3000);
    expect(peak).toEqual({ date: '2027-03-11', out: { minor: 23000, currency: 'EUR' } });
    expect(cash.map((one) => [one.date, one.out.minor])).toEqual([
      ['2027-03-09', 3000],
      ['2027-03-11', 23000],
      ['2027-03-15', 3000],
    ]);
  });

  it('never pays before today what is not yet paid', () => {
    const book = `${day}elements:\n  cup: { get: buy, copies: 1, price: 30, delivery: 20 }\n`;
    expect(planOf(three, book, '2027-03-01').money.cash[0]?.date).toBe('2027-03-01');
  });
});
