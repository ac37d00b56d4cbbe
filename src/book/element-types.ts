import type { CalendarDate } from '../base/calendar-date.js';
import type { Money } from '../base/money.js';
import type { Ratio } from '../base/ratio.js';
import type { Range } from '../base/text-range.js';

/** Where a thing comes from. `cut` means that the film does without it. */
export type Source = 'own' | 'borrow' | 'make' | 'buy' | 'hire' | 'cut';

/** A length, a volume, or a plain count. */
export interface Quantity {
  readonly amount: Ratio;
  readonly unit: 'piece' | 'mm' | 'ml' | 'g';
  /** As the book writes it. */
  readonly text: string;
}

export interface PrepTask {
  readonly task: string;
  readonly who: string | null;
  readonly hours: number | null;
  readonly days: number | null;
  readonly waitDays: number | null;
}

/** Raw material of a thing that is made. */
export interface Material {
  readonly what: string;
  readonly from: string | null;
  readonly price: Money | null;
  readonly pieces: number;
  readonly deliveryDays: number | null;
  readonly ordered: CalendarDate | null;
  readonly received: CalendarDate | null;
  readonly paid: Money | null;
  readonly paidOn: CalendarDate | null;
}

/** How a state of an element is reached and left, where the usual figures are wrong. */
export interface BookState {
  readonly state: string;
  /** Hours to undo it; `never`; null when the book does not say. */
  readonly undo: number | 'never' | null;
  readonly makeHours: number | null;
  readonly onCamera: 'copy each take' | 'a pair' | 'reset' | null;
}

export interface BookWeapon {
  readonly kind: 'real' | 'replica' | 'soft' | null;
  readonly bluntedBy: string | null;
  readonly bluntedOn: CalendarDate | null;
  readonly keyHolder: string | null;
  readonly noticeGiven: boolean | null;
}

/** Decisions about one thing to get: an element of the script, or a thing of the kit. Null: the book does not say. */
export interface BookElement {
  readonly id: string;
  /** For things of the kit, which the script does not name. */
  readonly name: string | null;
  readonly need: number | null;
  readonly was: readonly string[];
  readonly source: Source | null;
  readonly from: string | null;
  readonly secondSource: string | null;
  readonly have: number;
  readonly copies: number | null;
  /** Copies beside the good ones: for rehearsals and throws, and for what is seen from afar. */
  readonly standIns: number | null;
  readonly backgroundCopies: number | null;
  readonly usedUp: boolean | null;
  /** The only scenes in which it is used up, by id or printed number; empty: in all it is in. */
  readonly usedUpIn: readonly string[];
  readonly perTake: Quantity | null;
  readonly takes: number | null;
  readonly setups: number | null;
  readonly rehearsals: number | null;
  readonly spare: Ratio | null;
  readonly together: number | null;
  readonly fragile: boolean | null;
  readonly material: string | null;
  readonly states: readonly BookState[];
  readonly piece: Quantity | null;
  readonly pack: Quantity | null;
  readonly pool: string | null;
  readonly batteries: { readonly count: number; readonly kind: string } | null;
  readonly price: Money | null;
  readonly roughPrice: Money | null;
  readonly per: 'piece' | 'pack' | 'day' | 'week' | 'hire';
  readonly taxIncluded: boolean | null;
  readonly tax: Ratio | null;
  readonly deposit: Money | null;
  readonly depositReturned: CalendarDate | null;
  readonly owner: string | null;
  readonly collect: CalendarDate | null;
  readonly back: CalendarDate | null;
  readonly deliveryDays: number | null;
  readonly prep: readonly PrepTask[];
  readonly materials: readonly Material[];
  readonly fitting: CalendarDate | null;
  readonly test: CalendarDate | null;
  readonly rehearsal: CalendarDate | null;
  readonly ordered: CalendarDate | null;
  readonly promised: CalendarDate | null;
  readonly received: CalendarDate | null;
  readonly checked: CalendarDate | null;
  readonly ready: CalendarDate | null;
  readonly paid: Money | null;
  /** What is still open of it, when the book says so. */
  readonly owed: Money | null;
  readonly paidOn: CalendarDate | null;
  readonly paidBy: string | null;
  readonly receipt: string | null;
  readonly refund: Money | null;
  readonly refundOn: CalendarDate | null;
  readonly problem: 'late' | 'wrong' | 'broken' | 'cancelled' | null;
  readonly replaces: string | null;
  readonly box: string | null;
  readonly label: string | null;
  readonly who: string | null;
  readonly pictures: readonly string[];
  readonly words: string | null;
  readonly weapon: BookWeapon | null;
  readonly note: string | null;
  readonly at: Range;
}
