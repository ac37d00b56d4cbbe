import { type CalendarDate, daysBetween, formatDate } from '../base/calendar-date.js';
import { convertMoney, formatMoney, type Money } from '../base/money.js';
import { formatRatio, multiplyRounded, one, ratio } from '../base/ratio.js';
import type { Book, BookElement } from '../book/types.js';
import type { LineCost } from './line-types.js';

/** An amount in the currency of the budget. The book has a rate for every currency it uses: the reader saw to that. */
export function toHome(amount: Money, book: Book): Money {
  const home = book.money.currency.value;
  if (amount.currency === home) return amount;
  const rate = book.money.rates.find((row) => row.currency === amount.currency);
  if (!rate) throw new Error(`no rate for ${amount.currency}`);
  return convertMoney(amount, rate.rate, home);
}

/** ` at 0.92 (2 January 2027)` for an amount in another currency; an empty text in that of the budget. */
export function rateWords(amount: Money, book: Book): string {
  const rate = book.money.rates.find((row) => row.currency === amount.currency);
  if (!rate || amount.currency === book.money.currency.value) return '';
  return ` at ${formatRatio(rate.rate, 6)} (${rate.on === null ? 'of no date' : formatDate(rate.on)})`;
}

/** Units that the price is multiplied by: pieces, packs, or periods of hire times pieces. */
export function countUnits(
  element: BookElement,
  pieces: number,
  packs: number,
  collect: CalendarDate | null,
  back: CalendarDate | null,
): { units: number; words: string } {
  if (element.per === 'pack' || (isMeasured(element) && element.per === 'piece'))
    return { units: packs, words: `${packs} ${packs === 1 ? 'pack' : 'packs'}` };
  if (element.per === 'day' || element.per === 'week') {
    const days = collect && back ? Math.max(1, daysBetween(collect, back)) : 1;
    const periods = element.per === 'day' ? days : Math.ceil(days / 7);
    const word = periods === 1 ? element.per : `${element.per}s`;
    return { units: periods * pieces, words: `${periods} ${word}${pieces === 1 ? '' : ` × ${pieces}`}` };
  }
  return { units: pieces, words: `${pieces}` };
}

/** True for what a take uses by volume, weight or length: its price is that of a bottle, a bag or a roll, never of a millilitre. */
function isMeasured({ perTake }: BookElement): boolean {
  return perTake !== null && perTake.unit !== 'piece';
}

/** True when a price is known but not what it buys: how much a bottle, bag or roll holds. */
export function lacksPack(element: BookElement): boolean {
  const isBought = element.per === 'piece' || element.per === 'pack';
  return element.price !== null && isMeasured(element) && isBought && element.pack === null;
}

/** The cost of one line: units times price, tax on it when the price is without, then, once, the other currency; null while it cannot be known. */
export function costLine(element: BookElement, units: number, words: string, book: Book): LineCost | null {
  const price = element.price;
  if (price === null || lacksPack(element)) return null;
  const currency = price.currency;
  const net = { minor: multiplyRounded(price.minor, ratio(units)), currency };
  const isIncluded = element.taxIncluded ?? book.money.pricesIncludeTax.value;
  const rate = element.tax ?? book.money.tax ?? { over: 0n, under: one.under };
  const tax = { minor: isIncluded ? 0 : multiplyRounded(net.minor, rate), currency };
  const gross = { minor: net.minor + tax.minor, currency };
  return {
    net,
    tax,
    gross,
    home: toHome(gross, book),
    units,
    words: `${words} × ${formatMoney(price)}${rateWords(price, book)}`,
  };
}
