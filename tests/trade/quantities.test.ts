import { describe, expect, it } from 'vitest';
import { readLeadingCount, readQuantity, saysNothing } from '../../src/trade/quantities.js';

/** Quantities as English writes them; a dozen is twelve by any dictionary. */
describe('a quantity', () => {
  it.each([
    ['2 crates', 2, 'crates'],
    ['three crates', 3, 'crates'],
    ['a dozen eggs', 12, 'eggs'],
    ['half a dozen of the eggs', 6, 'eggs'],
    ['twenty-five chairs', 25, 'chairs'],
    ['a hundred chairs', 100, 'chairs'],
    ['1,000 leaflets', 1000, 'leaflets'],
    ['x3 cups', 3, 'cups'],
    ['3x cups', 3, 'cups'],
    ['cups x3', 3, 'cups'],
    ['both keys', 2, 'keys'],
    ['a crowd of fifty', 50, 'crowd'],
    ['a few coins', null, 'coins'],
    ['a pair of gloves', null, 'a pair of gloves'],
    ['box', null, 'box'],
    ['x', null, 'x'],
    ['six', null, 'six'],
  ])('%s', (written, count, rest) => {
    expect(readQuantity(written)).toEqual({ count, measure: null, rest });
  });

  it.each([
    ['5 m of rope', '5 m', 'rope'],
    ['2 1/2 pies', '2 1/2', 'pies'],
    ['3kg flour', '3kg', 'flour'],
    ['½ pie', '½', 'pie'],
  ])('%s is an amount, no count', (written, measure, rest) => {
    expect(readQuantity(written)).toEqual({ count: null, measure, rest });
    expect(readLeadingCount(written)).toEqual({ count: null, rest: written });
  });

  it.each(['2 mugs', '3 gloves', '4 lanterns', '5 files'])('%s is counted, no unit', (written) => {
    expect(readQuantity(written).count).toBe(Number(written[0]));
  });

  it('nothing is said by none, nothing and n/a, never by a name', () => {
    expect(['none', 'Nothing.', 'n/a', '-'].every(saysNothing)).toBe(true);
    expect(['nonesuch', 'no parking sign', 'notebook'].some(saysNothing)).toBe(false);
  });
});
