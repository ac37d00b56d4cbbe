/** An exact fraction; the denominator is positive. Money is multiplied by these, never by floating numbers. */
export interface Ratio {
  readonly over: bigint;
  readonly under: bigint;
}

export const one: Ratio = { over: 1n, under: 1n };

/** Reads a plain decimal (`0.92`, `12`, `-3.5`, a decimal comma too) exactly; null when it is no such number. */
export function parseDecimal(text: string): Ratio | null {
  const parts = /^\s*([-+\u2212]?)(\d{1,15})(?:[.,](\d{1,12}))?\s*$/.exec(text);
  if (!parts) return null;
  const fraction = parts[3] ?? '';
  const digits = BigInt(`${parts[2]}${fraction}`);
  return { over: parts[1] === '-' || parts[1] === '\u2212' ? -digits : digits, under: 10n ** BigInt(fraction.length) };
}

/** Reads `20%` or `20 %` (a bare number is per cent too) as a fraction of one; null when it is none. */
export function parsePercent(text: string): Ratio | null {
  const number = parseDecimal(text.replace(/%\s*$/, ''));
  return number && number.over >= 0n ? { over: number.over, under: number.under * 100n } : null;
}

/** Multiplies a whole number by a fraction and rounds to the nearest whole, halves away from zero. */
export function multiplyRounded(whole: number, ratio: Ratio): number {
  const product = BigInt(whole) * ratio.over;
  const positive = product < 0n ? -product : product;
  const rounded = (positive * 2n + ratio.under) / (ratio.under * 2n);
  return Number(product < 0n ? -rounded : rounded);
}

/** The product of two fractions. */
export function multiply(a: Ratio, b: Ratio): Ratio {
  return { over: a.over * b.over, under: a.under * b.under };
}

/** The sum of two fractions. */
export function add(a: Ratio, b: Ratio): Ratio {
  return { over: a.over * b.under + b.over * a.under, under: a.under * b.under };
}

/** The larger of two fractions. */
export function larger(a: Ratio, b: Ratio): Ratio {
  return a.over * b.under >= b.over * a.under ? a : b;
}

/** A whole number as a fraction. */
export function ratio(whole: number): Ratio {
  return { over: BigInt(whole), under: 1n };
}

/** The smallest whole number that is not less than a fraction. */
export function ceiling(value: Ratio): number {
  const quotient = value.over / value.under;
  return Number(value.over > 0n && quotient * value.under !== value.over ? quotient + 1n : quotient);
}

/** Prints a fraction as a decimal without trailing zeros, at most `places` of them: `10.8`. */
export function formatRatio(value: Ratio, places = 4): string {
  const scaled = multiplyRounded(1, { over: value.over * 10n ** BigInt(places), under: value.under });
  return String(Number(`${scaled}e-${places}`));
}

/** Prints a fraction of one as per cent: `20 %`. */
export function formatPercent(value: Ratio): string {
  return `${formatRatio({ over: value.over * 100n, under: value.under })} %`;
}
