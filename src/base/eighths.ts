/** A page length in whole eighths of a page: never a fraction, never negative. */
export type Eighths = number & { readonly eighths: unique symbol };

/** Brands a whole number of eighths. Throws RangeError for anything else: that is a bug of ours, not of the user. */
export function eighths(count: number): Eighths {
  if (!Number.isInteger(count) || count < 0) throw new RangeError(`not a count of eighths: ${count}`);
  return count as Eighths;
}

/** Adds lengths in eighths. */
export function sumEighths(lengths: readonly Eighths[]): Eighths {
  return eighths(lengths.reduce((sum, one) => sum + one, 0));
}

/** Prints a length as whole pages and unreduced eighths: `3/8`, `1 4/8`, `2`. */
export function formatEighths(length: Eighths): string {
  const pages = Math.floor(length / 8);
  const rest = length % 8;
  if (rest === 0) return pages === 0 ? '0' : String(pages);
  return pages === 0 ? `${rest}/8` : `${pages} ${rest}/8`;
}
