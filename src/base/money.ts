import { multiplyRounded, parseDecimal, type Ratio } from './ratio.js';

/** An amount in the minor units of a currency (cents; whole yen; fils), with its ISO 4217 code. Never a fraction. */
export interface Money {
  readonly minor: number;
  readonly currency: string;
}

/** How many decimals a currency has (EUR 2, JPY 0, KWD 3), as `Intl` knows ISO 4217; null for a code that is none. */
export function currencyDecimals(currency: string): number | null {
  if (!isCurrency(currency)) return null;
  const format = new Intl.NumberFormat('en', { style: 'currency', currency });
  return format.resolvedOptions().maximumFractionDigits ?? null;
}

/** True for a currency code that `Intl` knows, in capitals. */
export function isCurrency(currency: string): boolean {
  return /^[A-Z]{3}$/.test(currency) && knownCurrencies().has(currency);
}

/**
 * Reads a plain amount (`12.50`, `12,5`) in the minor units of a currency.
 * Null when it is no number, or has more decimals than the currency, or is too large to be kept exactly.
 */
export function parseAmount(text: string, currency: string): Money | null {
  const decimals = currencyDecimals(currency);
  const value = parseDecimal(text);
  if (decimals === null || value === null) return null;
  const scaled = value.over * 10n ** BigInt(decimals);
  if (scaled % value.under !== 0n) return null;
  const minor = Number(scaled / value.under);
  return Math.abs(minor) > 1e13 ? null : { minor: minor === 0 ? 0 : minor, currency };
}

/** Converts an amount: `rate` is what one unit of its currency is worth in the other. Rounded once, halves away from zero. */
export function convertMoney(amount: Money, rate: Ratio, currency: string): Money {
  const shift = (currencyDecimals(currency) ?? 2) - (currencyDecimals(amount.currency) ?? 2);
  const scaled =
    shift >= 0
      ? { over: rate.over * 10n ** BigInt(shift), under: rate.under }
      : { over: rate.over, under: rate.under * 10n ** BigInt(-shift) };
  return { minor: multiplyRounded(amount.minor, scaled), currency };
}

/** Prints an amount with its code: `EUR 12.50`, `JPY 1,200`. */
export function formatMoney(amount: Money): string {
  return `${amount.currency} ${formatAmount(amount)}`;
}

/** Prints an amount without its code, with the decimals of its currency: `1,200.50`. */
export function formatAmount(amount: Money): string {
  const decimals = currencyDecimals(amount.currency) ?? 2;
  const format = new Intl.NumberFormat('en', { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  return format.format(plainAmount(amount) as unknown as number);
}

/** An amount as a plain decimal without grouping, for files that programs read: `1200.50`. */
export function plainAmount(amount: Money): string {
  const decimals = currencyDecimals(amount.currency) ?? 2;
  const digits = String(Math.abs(amount.minor)).padStart(decimals + 1, '0');
  const sign = amount.minor < 0 ? '-' : '';
  return decimals === 0 ? `${sign}${digits}` : `${sign}${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
}

let currencies: ReadonlySet<string> | null = null;

function knownCurrencies(): ReadonlySet<string> {
  currencies ??= new Set(Intl.supportedValuesOf('currency'));
  return currencies;
}
