import { describe, expect, it } from 'vitest';
import { planOf, type Sketch } from './fixture.js';

const day = 'days:\n  - { date: 2027-03-16, call: 8:00, wrap: 18:00, scenes: [1] }\n';
const tasksOf = (scenes: Sketch, elements: string, more = '') =>
  planOf(scenes, `${day}${more}elements:\n${elements}`).tasks.filter(
    (one) => one.kind === 'order' || one.kind === 'ask',
  );

describe('what the helper is told to order', () => {
  it('is whole packs, with what they are for', () => {
    // 53 eggs by tens: 6 packs. 20 in packs of 10: 2. 273 ml by 250: 2 bottles.
    const scenes = { scenes: [{ things: { eggs: {}, warmers: {}, syrup: {} } }] };
    const elements =
      '  eggs: { get: buy, pack: 10, copies: 53 }\n  warmers: { get: buy, pack: 10, copies: 20 }\n  syrup: { get: buy, per take: 15 ml, takes: 4, setups: 3, rehearsals: 2, pack: 250 ml }\n';
    // (4 × 3 + 2) × 15 ml = 210, and 30 % that stays on walls and clothes: 273.
    expect(tasksOf(scenes, elements).map((one) => one.what)).toEqual([
      'order 6 packs of 10 for 53 × eggs',
      'order 2 × 250 ml for 273 ml of syrup',
      'order 2 packs of 10 for 20 × warmers',
    ]);
  });

  it('is whole rolls for all lines that share them, at the earliest date, once', () => {
    // 3 × 1.2 m and 4 × 2 m from rolls of 5 m: 2 + 2 | 2 + 2 | 1.2 + 1.2 + 1.2: 3 rolls. The string is tested on 10 March: in hand
    // Tue 9, 5 working days: Tue 2, better Mon 1. The rope alone: in hand Mon 15, Mon 8, better Fri 5.
    const scenes = { scenes: [{ things: { rope: {}, string: {} } }] };
    const elements =
      '  rope: { get: buy, from: Shop, pool: cord, piece: 1.2 m, pack: 5 m, copies: 3 }\n  string: { get: buy, pool: cord, piece: 2 m, pack: 5 m, copies: 4, test: 2027-03-10 }\n';
    expect(tasksOf(scenes, elements)).toMatchObject([
      {
        what: 'order 3 × 5 m for 3 × 1.2 m rope and 4 × 2 m string (Shop)',
        date: '2027-03-01',
        elements: ['rope', 'string'],
      },
    ]);
  });

  it('stays a plain count without packs', () => {
    const scenes = { scenes: [{ things: { letter: {} } }] };
    expect(tasksOf(scenes, '  letter: { get: buy, copies: 11, from: Shop }\n')[0]?.what).toBe(
      'order 11 × letter (Shop)',
    );
  });

  it('names packs where nobody has decided the source, too', () => {
    const scenes = { scenes: [{ things: { letter: {} } }] };
    expect(tasksOf(scenes, '  letter: { copies: 11, pack: 5 }\n')[0]?.what).toBe(
      'decide where these come from, and order them: 3 packs of 5 for 11 × letter',
    );
  });
});

describe('the identity of work between scenes', () => {
  it('is counted for each thing, so that another thing moves nothing', () => {
    // The coat is soaked in scene 1 and clean in scene 2, a day later: it dries between them.
    const coat = { coat: { in: 'clean', out: 'soaked' } };
    const clean = { coat: { in: 'clean' } };
    const book =
      'days:\n  - { date: 2027-03-16, scenes: [1] }\n  - { date: 2027-03-18, scenes: [2] }\nelements:\n  coat: { material: cotton, copies: 2 }\n  cap: { material: cotton, copies: 2 }\n';
    const ids = (scenes: Sketch) =>
      planOf(scenes, book)
        .tasks.filter((one) => one.kind === 'convert' && one.elements.includes('coat'))
        .map((one) => one.id);
    const alone = ids({ scenes: [{ wears: { ADA: coat } }, { wears: { ADA: clean } }] });
    const cap = { cap: { in: 'clean', out: 'soaked' } };
    const both = ids({
      scenes: [{ wears: { BO: cap, ADA: coat } }, { wears: { BO: { cap: { in: 'clean' } }, ADA: clean } }],
    });
    expect(alone.length).toBeGreaterThan(0);
    expect(both).toEqual(alone);
  });
});

describe('when money goes out', () => {
  const lamp = { scenes: [{ things: { lamp: {} } }] };
  it('of raw material is when its own order is better placed', () => {
    // In hand Mon 15 March, 15 working days: Mon 22 February, better Fri 19.
    const book = `${day}suppliers:\n  far: { delivery: 15 }\nelements:\n  lamp: { get: make, materials: [{ what: brass, from: far, price: 10, pieces: 2 }] }\n`;
    expect(planOf(lamp, book).money.cash.map((one) => [one.date, one.out.minor])).toEqual([['2027-02-19', 2000]]);
  });

  it('of the rest of a cost that is partly paid is when the shoot begins', () => {
    // 200 in all, 100 paid on 20 February; nothing says when the other 100 are due.
    const book = `${day}money: { other costs: [{ what: house, cost: 200, per: once, paid: 100, paid on: 2027-02-20 }] }\n`;
    expect(planOf(lamp, book).money.cash.map((one) => [one.date, one.out.minor])).toEqual([
      ['2027-02-20', 10000],
      ['2027-03-16', 20000],
    ]);
  });
});

describe('what is lent', () => {
  const helpers = 'helpers:\n  bo: { name: Bo, does: [props] }\n';
  const words = (owner: string, name = 'trunk', category: 'props' | 'vehicles' = 'props') =>
    planOf(
      { scenes: [{ things: { [name]: {} } }], categories: { [name]: category } },
      `${day}${helpers}elements:\n  ${name}: { get: borrow, owner: ${owner} }\n`,
    )
      .tasks.filter((one) => ['ask', 'fetch', 'return'].includes(one.kind))
      .map((one) => one.what);

  it('is asked for, fetched and given back', () => {
    expect(words('Ada')).toEqual([
      'ask to borrow trunk (Ada)',
      'fetch trunk (Ada), photograph its condition',
      'trunk: back with Ada today',
    ]);
  });

  it('is only brought by the helper whose own it is', () => {
    expect(words('Bo')).toEqual(['bring trunk, your own, photograph its condition']);
  });

  it('comes with its owner where nobody can carry it', () => {
    expect(words('Ada', 'tractor', 'vehicles')).toContain('see that tractor comes (Ada), photograph its condition');
  });
});
