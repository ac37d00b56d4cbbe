/**
 * Of a row that was put in another order, the places that moved: those that are not in every longest chain of what kept
 * its order. When two neighbours change places, both have moved; when one leaps over many, it alone has.
 */
export function findMoved(order: readonly number[]): ReadonlySet<number> {
  const ending = chainsEnding(order);
  const starting = chainsEnding([...order].reverse().map((place) => -place)).reverse();
  const longest = ending.reduce((most, length) => Math.max(most, length), 0);
  const inOne = order.map((_, i) => (ending[i] as number) + (starting[i] as number) - 1 === longest);
  const alike = new Map<number, number>();
  for (const [i, length] of ending.entries()) if (inOne[i]) alike.set(length, (alike.get(length) ?? 0) + 1);
  const moved = order.flatMap((_, i) => (inOne[i] && alike.get(ending[i] as number) === 1 ? [] : [i]));
  return new Set(moved);
}

/** The length of the longest rising chain that ends at each place. */
function chainsEnding(order: readonly number[]): number[] {
  const lengths: number[] = [];
  for (const [i, place] of order.entries()) {
    let longest = 0;
    for (let j = 0; j < i; j++) if ((order[j] as number) < place) longest = Math.max(longest, lengths[j] as number);
    lengths.push(longest + 1);
  }
  return lengths;
}
