import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findMoved } from '../../src/compare/moved.js';

/** All longest rising chains of a row, by trying every choice of places. */
function allLongest(order: readonly number[]): number[][] {
  const chains = Array.from({ length: 2 ** order.length }, (_, bits) =>
    order.flatMap((_, i) => ((bits >> i) & 1 ? [i] : [])),
  );
  const rising = chains.filter((chain) =>
    chain.every((place, i) => i === 0 || (order[chain[i - 1] as number] as number) < (order[place] as number)),
  );
  const most = Math.max(...rising.map((chain) => chain.length));
  return rising.filter((chain) => chain.length === most);
}

describe('what moved in a row', () => {
  it.each([
    ['nothing', [0, 1, 2, 3], []],
    ['one over many', [1, 2, 3, 0], [3]],
    ['two neighbours', [0, 2, 1, 3], [1, 2]],
    ['an empty row', [], []],
  ])('%s', (_, order, moved) => {
    expect([...findMoved(order)]).toEqual(moved);
  });

  it('is what some longest chain leaves out, by trying all chains', () => {
    const rows = fc.integer({ min: 0, max: 8 }).chain((size) => {
      const places = Array.from({ length: size }, (_, i) => i);
      return fc.shuffledSubarray(places, { minLength: size, maxLength: size });
    });
    fc.assert(
      fc.property(rows, (order) => {
        const longest = allLongest(order);
        const expected = order.flatMap((_, i) => (longest.every((chain) => chain.includes(i)) ? [] : [i]));
        expect([...findMoved(order)]).toEqual(expected);
      }),
    );
  });
});
