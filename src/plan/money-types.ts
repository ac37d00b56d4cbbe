import type { CalendarDate } from '../base/calendar-date.js';
import type { Money } from '../base/money.js';
import type { Ratio } from '../base/ratio.js';
import type { Choice } from '../book/types.js';

/** One printed line of the forecast. Totals are sums of these and of nothing else. */
export interface MoneyLine {
  readonly id: string;
  readonly words: string;
  readonly kind: 'thing' | 'material' | 'shipping' | 'other' | 'refund';
  readonly amount: Money;
  readonly paid: Money;
  /** Ordered, so that it must be paid. */
  readonly committed: boolean;
  /** What of it falls on each shooting day, in order, in minor units; left out where the days have no part in it. */
  readonly byDay?: readonly number[];
}

/** What moves on one day of the cash book; outgoing is positive. */
export interface CashMove {
  readonly date: CalendarDate;
  readonly words: string;
  readonly amount: Money;
  /** True for money that comes back. */
  readonly deposit: boolean;
}

/** The cash that is out at the end of a day. */
export interface CashDay {
  readonly date: CalendarDate;
  readonly moves: readonly CashMove[];
  readonly out: Money;
}

export interface MoneyPlan {
  readonly currency: string;
  readonly currencyGiven: boolean;
  readonly budget: Money | null;
  readonly lines: readonly MoneyLine[];
  readonly paid: Money;
  readonly orderedUnpaid: Money;
  readonly stillToGet: Money;
  readonly contingencyRate: Choice<Ratio>;
  readonly contingencyReason: string;
  readonly contingency: Money;
  readonly forecast: Money;
  readonly headroom: Money | null;
  /** Lines with no price yet: the forecast lacks them. */
  readonly withoutPrice: readonly string[];
  readonly depositsOutstanding: Money;
  readonly cash: readonly CashDay[];
  /** The most that is out at one time, and when. */
  readonly peak: { readonly date: CalendarDate; readonly out: Money } | null;
}
