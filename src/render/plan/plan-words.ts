import { type CalendarDate, formatShortDate } from '../../base/calendar-date.js';
import { formatClockTime } from '../../base/clock-time.js';
import { formatMoney, type Money } from '../../base/money.js';
import { matchEntries } from '../../book/match-entries.js';
import type { Book, BookLocation, BookPerson, Choice } from '../../book/types.js';
import type { Breakdown } from '../../breakdown/types.js';
import type { PlanDay } from '../../plan/day-types.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { Need } from '../../plan/need-types.js';
import type { Slot } from '../../plan/slot-types.js';

/** `Fri 12 March`; a dash when there is no date. */
export function dateWords(date: CalendarDate | null): string {
  return date === null ? '–' : formatShortDate(date);
}

/** `Fri 12 Mar`, for narrow columns; a dash when there is no date. */
export function narrowDate(date: CalendarDate | null): string {
  return date === null ? '–' : formatShortDate(date).replace(/(\p{L}{3})\p{L}*$/u, '$1');
}

/** `EUR 12.50`; an empty text for no amount. */
export function moneyWords(amount: Money | null): string {
  return amount === null ? '' : formatMoney(amount);
}

/** `08:00`, with a word when nobody gave it. */
export function clockWords(time: Choice<number>): string {
  return `${formatClockTime(time.value)}${time.given ? '' : ' (assumed)'}`;
}

/** `scene 7, shooting day 2`, or `scene 7, no day yet`. */
export function slotWords(slot: Slot): string {
  return slot.day === null ? `sc ${slot.label} (no day yet)` : `sc ${slot.label} (day ${slot.day})`;
}

/** `11`, `176 ml`, `200 g`: a count with its unit. */
export function amountWords(count: number, unit: Need['unit']): string {
  if (unit === 'piece') return String(count);
  return unit === 'mm' ? `${count / 1000} m` : `${count} ${unit}`;
}

/** How many are needed: a question mark where nobody says how many. */
export function needWords(need: Need, count: number): string {
  return need.uncounted ? '?' : amountWords(count, need.unit);
}

/** How many are still to be got: none of what has come, a question mark where nobody says how many, unless some are here. */
export function getWords({ need, isHere }: PlanLine): string {
  if (need.toGet > 0 && isHere) return 'here';
  return need.uncounted && need.have === 0 ? '?' : amountWords(need.toGet, need.unit);
}

/** The helper's name by the id that the book uses; nobody named prints as a blank word. */
export function helperWords(id: string | null, book: Book): string {
  if (id === null) return 'nobody yet';
  return book.helpers.find((one) => one.id === id)?.name ?? id;
}

/** A real location as paper names it. */
export function locationWords(id: string, book: Book): string {
  return book.locations.find((one) => one.id === id)?.name ?? id;
}

/** The book's entry of a location, or null. */
export function locationOf(id: string, book: Book): BookLocation | null {
  return book.locations.find((one) => one.id === id) ?? null;
}

/** The book's entry of each person, by the id of the part. */
export function peopleOf(breakdown: Breakdown, book: Book): ReadonlyMap<string, BookPerson> {
  return matchEntries(book.people, breakdown.cast).byThing;
}

/** True for a person under age, by the book, else by the script. */
export function isMinor(id: string, breakdown: Breakdown, book: Book): boolean {
  const entry = peopleOf(breakdown, book).get(id);
  return entry?.minor ?? breakdown.cast.find((person) => person.id === id)?.minor ?? false;
}

/** `Shooting day 2 of 4, Sat 24 April`. */
export function dayHead(day: PlanDay): string {
  return `Shooting day ${day.number} of ${day.of}, ${formatShortDate(day.date)}`;
}

/** `own`, `borrow` …, or what is to be decided. */
export function sourceWords(source: string | null): string {
  return source ?? 'not decided';
}

/** Minutes before a scene by which its people are called, when the call of the day is earlier. */
const calledBefore = 45;

/** When those of a scene are called, in minutes since the midnight before the call of the day, by quarters of an hour. */
export function calledAt(slot: Slot, day: PlanDay): number {
  const { value: call } = day.call;
  const minutes = slot.start === null ? call : (slot.start % 24) * 60;
  const start = minutes < call ? minutes + 1440 : minutes;
  return Math.max(call, Math.floor((start - calledBefore) / 15) * 15);
}
