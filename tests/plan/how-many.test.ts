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

describe('several of which one is spoilt', () => {
  const scenes = [
    { things: { envelope: { count: 2, out: 'torn' }, candle: {} } },
    { things: { candle: { count: 8 } } },
  ];
  const needOfEnvelope = (book: string) => planOf({ scenes }, book).needs.find((need) => need.id === 'envelope');

  it('are asked about, for (4 × 2 + 1) takes spoil 18 if it is both, and 9 if it is one', () => {
    const asked = needOfEnvelope('');
    expect([asked?.minimum, asked?.questions]).toEqual([18, [expect.stringMatching(/all 2 torn.*"together: 1"/)]]);
    const said = needOfEnvelope('elements:\n  envelope: { together: 1 }\n');
    expect([said?.minimum, said?.questions]).toEqual([9, []]);
  });

  it('stand in the scene that counts them, not in the first one', () => {
    const candle = planOf({ scenes }).needs.find((need) => need.id === 'candle');
    expect(candle?.uses.map((use) => use.count)).toEqual([1, 8]);
  });
});
