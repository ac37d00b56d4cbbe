import { describe, expect, it } from 'vitest';
import { looksPlural } from '../../src/trade/plural-words.js';
import { planOf } from './fixture.js';

describe('a plural without a number', () => {
  const scenes = [{ things: { coins: {}, scissors: {}, candle: {}, plates: { count: 3 } } }];
  const uncounted = (book: string) =>
    planOf({ scenes }, book)
      .needs.filter((need) => need.uncounted)
      .map((need) => need.id);

  it('is a question, not a one', () => {
    expect(uncounted('')).toEqual(['coins']);
    const coins = planOf({ scenes }, '').needs.find((need) => need.id === 'coins');
    expect(coins?.questions[0]).toContain('how many "coins"?');
  });

  it('is settled by the book', () => {
    expect(uncounted('elements:\n  coins: { copies: 12 }\n')).toEqual([]);
  });

  it('costs nothing that anybody could know', () => {
    const { lines } = planOf({ scenes }, 'elements:\n  coins: { get: buy, price: 4 }\n');
    const line = lines.find((one) => one.id === 'coins');
    expect(line?.cost).toBeNull();
    expect(line?.remarks).toEqual(['no cost is counted until it is known how many']);
  });

  it('is told from what is one and ends in s', () => {
    for (const one of ['glass', 'compass', 'bus', 'scissors', 'iris', 'trousers', 'bottle of pills'])
      expect(looksPlural(one), one).toBe(false);
    for (const many of ['coins', 'wet towels', 'logbooks', 'cups of tea']) expect(looksPlural(many), many).toBe(true);
  });
});
