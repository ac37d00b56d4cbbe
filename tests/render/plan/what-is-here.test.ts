import { describe, expect, it } from 'vitest';
import { noRenames } from '../../../src/compare/read-renames.js';
import { planPurchaseRows } from '../../../src/render/plan/plan-purchases.js';
import { getWords } from '../../../src/render/plan/plan-words.js';
import { bookOf, lineOf, planOf } from '../../plan/fixture.js';

describe('the purchase list of what has come', () => {
  const text = (more: string) =>
    `days:\n  - { date: 2027-03-16, scenes: [1] }\nelements:\n  letter: { get: buy, copies: 12${more} }\n`;
  const listed = (more: string) => {
    const plan = planOf({ scenes: [{ things: { letter: {} } }] }, text(more));
    const [head = [], row = []] = planPurchaseRows({ plan, book: bookOf(text(more)), renames: noRenames });
    return [getWords(lineOf(plan, 'letter')), row[head.indexOf('to get')]];
  };

  it.each([
    ['', '12', 12],
    [', ordered: 2027-02-01', '12', 12],
    [', received: 2027-02-10', 'here', 0],
    // Come, but wrong: all of it is to be got again.
    [', received: 2027-02-10, problem: wrong', '12', 12],
    [', received: 2027-02-10, problem: wrong, checked: 2027-02-12', 'here', 0],
  ])('with "%s" is to get %s', (more, words, count) => {
    expect(listed(more)).toEqual([words, count]);
  });
});
