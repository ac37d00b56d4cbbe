import { type CalendarDate, parseCalendarDate } from '../base/calendar-date.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { currencyDecimals, isCurrency, type Money, parseAmount } from '../base/money.js';
import { parseDecimal, type Ratio } from '../base/ratio.js';
import { sayBook } from '../messages/book.js';
import type { Path, PlacedDocument } from './book-places.js';
import type { ExchangeRate } from './types.js';
import { splitRate } from './written-values.js';

/** The currency that stands until the book names one: an amount must have some. */
export const fallbackCurrency = 'EUR';

/** Reads amounts in the currency of the book, or in another one that has a rate; mistakes go to `messages`. */
export interface AmountReader {
  readonly read: (text: string | null | undefined, path: Path) => Money | null;
}

/** Makes the reader of amounts for one book. */
export function createAmountReader(
  home: string,
  rates: readonly ExchangeRate[],
  placed: PlacedDocument,
  messages: Diagnostic[],
): AmountReader {
  const read = (text: string | null | undefined, path: Path): Money | null => {
    if (text === null || text === undefined) return null;
    const [, number = '', code = home] = /^\s*(-?[\d.,]+)\s*([A-Za-z]{3})?\s*$/.exec(text) ?? [];
    const currency = code.toUpperCase();
    const at = placed.at(path);
    if (!isCurrency(currency)) {
      messages.push(
        sayBook('book-value', { expected: 'a currency code such as EUR, USD or JPY', found: `"${code}"` }, at),
      );
      return null;
    }
    const money = parseAmount(number, currency);
    const decimals = currencyDecimals(currency) ?? 2;
    if (money === null) {
      messages.push(sayBook('book-amount', { text: number, currency, decimals }, at));
      return null;
    }
    const written = placed.text.slice(at.start.offset, at.end.offset);
    if (decimals < 3 && saysThousands(written)) {
      const expected = 'an amount without a sign between its thousands, such as 1200 or 1200.50';
      messages.push(sayBook('book-value', { expected, found: `"${written}"` }, at));
      return null;
    }
    if (currency !== home && !rates.some((rate) => rate.currency === currency)) {
      messages.push(sayBook('book-currency-rate', { currency, home }, at));
      return null;
    }
    return money;
  };
  return { read };
}

/** True for `1,200` and `1.200`: twelve hundred to one reader, and to YAML one and a fifth. */
function saysThousands(written: string): boolean {
  return /^["']?\s*[1-9]\d{0,2}[.,]\d{3}\s*(?:[A-Za-z]{3}\s*)?["']?$/.test(written);
}

/** Reads the rates of a book: `USD: 0.92 on 2027-02-01`. */
export function readRates(
  written: Record<string, string | number> | null | undefined,
  placed: PlacedDocument,
  messages: Diagnostic[],
): ExchangeRate[] {
  return Object.entries(written ?? {}).flatMap(([code, value]) => {
    const parts = splitRate(String(value));
    const rate = parts ? parseDecimal(parts.rate) : null;
    const on = parts?.on ? parseCalendarDate(parts.on) : null;
    const currency = code.trim().toUpperCase();
    if (isRate(rate) && isCurrency(currency) && (parts?.on === null || on !== null))
      return [{ currency, rate, on: on as CalendarDate | null }];
    const expected = isCurrency(currency) ? 'a rate such as 0.92 on 2027-02-01' : 'a currency code such as USD';
    const found = isCurrency(currency) ? `"${value}"` : `"${code}"`;
    messages.push(sayBook('book-value', { expected, found }, placed.at(['money', 'rates', code])));
    return [];
  });
}

function isRate(rate: Ratio | null): rate is Ratio {
  return rate !== null && rate.over > 0n;
}
