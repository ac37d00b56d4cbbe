import type { CalendarDate } from '../base/calendar-date.js';
import type { Money } from '../base/money.js';
import type { BookElement, Choice, Source } from '../book/types.js';
import type { Known } from '../breakdown/types.js';
import type { Need } from './need-types.js';

/** The dates of one thing, counted backward from the day it is needed. */
export interface LineDates {
  /** The first day it must be there, and what for. */
  readonly needed: CalendarDate | null;
  readonly neededFor: string;
  /** True when it is a fitting that nobody gave a day, and so stands on the last one that leaves time. */
  readonly fittingAssumed: boolean;
  readonly packed: CalendarDate | null;
  readonly prepStarts: CalendarDate | null;
  readonly prepDays: number;
  /** How many tasks of preparation, from the first, must be done before the fitting. */
  readonly makingTasks: number;
  /** First day of the work that may follow a fitting; null when there is none. */
  readonly finishStarts: CalendarDate | null;
  readonly inHand: CalendarDate | null;
  readonly orderBy: CalendarDate | null;
  readonly recommended: CalendarDate | null;
  /** Working days of delivery that were counted. */
  readonly deliveryDays: Choice<number>;
  /** The last hope: the day to go and buy it in town, or to pay for express. */
  readonly latestHope: CalendarDate | null;
  /** When it comes, once it is ordered: as promised, else by the days of delivery; null when nobody can say. */
  readonly expected: CalendarDate | null;
  /** Null when there is time; otherwise says so, with the ways out. */
  readonly tooLate: string | null;
  /** Null when the work on it still fits before it is packed; otherwise says what does not. */
  readonly workShort: string | null;
  /** The raw material that is still wanted or was got for it, in the order of the book. */
  readonly materials: readonly MaterialDates[];
}

/** The dates of one raw material: in hand the day before the work begins. */
export interface MaterialDates {
  readonly what: string;
  readonly pieces: number;
  /** The shop, as it prints. */
  readonly from: string | null;
  readonly inHand: CalendarDate;
  readonly orderBy: CalendarDate;
  readonly recommended: CalendarDate;
  readonly deliveryDays: Choice<number>;
  readonly ordered: boolean;
  readonly received: boolean;
  /** Null when there is time; otherwise what is late, without the ways out. */
  readonly late: string | null;
}

export type LineStatus =
  | 'needed'
  | 'decided'
  | 'ordered'
  | 'late'
  | 'wrong'
  | 'broken'
  | 'cancelled'
  | 'replaced'
  | 'received'
  | 'checked'
  | 'ready'
  | 'returned'
  | 'not needed'
  | 'here already'
  | 'done without';

/** Exact money of one line: in the currency of its price, and in that of the budget. */
export interface LineCost {
  readonly net: Money;
  readonly tax: Money;
  readonly gross: Money;
  readonly home: Money;
  /** What was multiplied: packs, pieces, periods of hire. */
  readonly units: number;
  readonly words: string;
}

/** One line of the purchase list with everything the book says of it. */
export interface PlanLine {
  readonly id: string;
  readonly need: Need;
  /** What the book says of it; null when it says nothing. */
  readonly element: BookElement | null;
  /** Id of the supplier, when `from` names one of the book. */
  readonly supplierId: string | null;
  readonly name: string;
  readonly description: string | null;
  /** How the script knows it; null for a thing of the kit. */
  readonly known: Known | null;
  readonly department: string;
  readonly scenes: readonly string[];
  readonly usedBy: readonly string[];
  readonly source: Choice<Source | null>;
  readonly from: string | null;
  readonly secondSource: string | null;
  readonly packText: string | null;
  readonly packs: number;
  /** The line whose packs this one shares; null when it buys its own. */
  readonly pooledWith: string | null;
  /** True when it has come, or the packs that it shares. */
  readonly isHere: boolean;
  readonly unitPrice: Money | null;
  readonly per: string;
  readonly cost: LineCost | null;
  /** The deposit of all pieces together. */
  readonly deposit: Money | null;
  readonly dates: LineDates;
  readonly status: LineStatus;
  readonly ordered: CalendarDate | null;
  readonly promised: CalendarDate | null;
  readonly received: CalendarDate | null;
  readonly collect: CalendarDate | null;
  readonly back: CalendarDate | null;
  readonly owner: string | null;
  readonly paid: Money | null;
  readonly paidBy: string | null;
  readonly receipt: string | null;
  readonly who: string | null;
  readonly box: string | null;
  readonly note: string | null;
  /** What must be known of the line: more here than needed, what it stands in for. */
  readonly remarks: readonly string[];
}
