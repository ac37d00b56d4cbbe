import { describe, expect, it } from 'vitest';
import { listRoughCopies } from '../../src/plan/rough-copies.js';
import { lineOf, planOf } from './fixture.js';

const scenes = [{ things: { lantern: {} } }];
const day = 'days:\n  - { date: 2027-03-12, scenes: [1] }\n';

describe('copies for rehearsals and for the background', () => {
  it('stand beside the good ones, with labels of their own and a price of their own', () => {
    // One good lantern at 20.00; one stand-in and four for the background at 2.50: 5 × 2.50 = 12.50; together 32.50.
    const plan = planOf(
      { scenes },
      `${day}elements:\n  lantern: { get: buy, copies: 1, price: 20, label: LAMP, stand-ins: 1, background copies: 4, rough price: 2.50 }\n`,
    );
    const line = lineOf(plan, 'lantern');
    expect(listRoughCopies(line)).toMatchObject({
      standIns: ['LAMP-S1'],
      background: ['LAMP-B1', 'LAMP-B2', 'LAMP-B3', 'LAMP-B4'],
      words: '1 stand-in and 4 background copies',
    });
    expect([line.need.toGet, plan.money.stillToGet.minor]).toEqual([1, 3250]);
    expect(plan.tasks.find((task) => task.id === 'lantern/rough')?.what).toBe(
      'get 1 stand-in and 4 background copies of lantern: the same shape, they may be rough',
    );
  });

  it('are none where the book decides none', () => {
    expect(listRoughCopies(lineOf(planOf({ scenes }), 'lantern'))).toBeNull();
  });
});
