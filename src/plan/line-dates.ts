import { addDays, type CalendarDate, earliest, formatDate, formatShortDate } from '../base/calendar-date.js';
import type { Book, BookElement, BookSupplier, Choice } from '../book/types.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import type { LineDates } from './line-types.js';
import type { Need } from './need-types.js';
import { layPrep } from './prep-steps.js';
import { lastWorkingDay, subtractWorkingDays, type WorkCalendar } from './working-days.js';

/** The calendar of a supplier: its own days of the week, else the book's, and the book's holidays. */
export function calendarOf(book: Book, supplier: BookSupplier | null): WorkCalendar {
  return { weekdays: supplier?.deliversOn ?? book.workingDays.value, holidays: new Set(book.holidays) };
}

/** What a thing is first needed for, and when: the state shot earliest, or a fitting, test or rehearsal before it. */
export function findFirstNeed(need: Need, element: BookElement | null): { date: CalendarDate | null; words: string } {
  const use = findFirstUse(need, element);
  const fitting = element?.fitting ? { date: element.fitting, words: 'fitting' } : null;
  if (fitting && (use === null || fitting.date < use.date)) return fitting;
  return use ?? { date: null, words: need.uses.length > 0 ? 'no shooting day yet' : 'no date' };
}

/** The first day on which it must be ready: a scene, a camera test, a rehearsal; null when none has a date. */
function findFirstUse(need: Need, element: BookElement | null): { date: CalendarDate; words: string } | null {
  const first = need.uses.find((use) => use.slot.date !== null);
  const state = first?.stateIn ? `, ${first.stateIn}` : '';
  const candidates = [
    ...(first?.slot.date ? [{ date: first.slot.date, words: `scene ${first.slot.label}${state}` }] : []),
    ...(element?.test ? [{ date: element.test, words: 'camera test' }] : []),
    ...(element?.rehearsal ? [{ date: element.rehearsal, words: 'rehearsal' }] : []),
  ];
  return candidates.reduce<{ date: CalendarDate; words: string } | null>(
    (best, one) => (best === null || one.date < best.date ? one : best),
    null,
  );
}

/** True for what a supplier brings, and so only on days when it delivers; what is fetched or made here comes on any day. */
function isDelivered(element: BookElement | null): boolean {
  const source = element?.source ?? null;
  return source === null || source === 'buy' || source === 'make';
}

/** Counts the dates of one thing backward from the day it is first needed. */
export function countDates(
  need: Need,
  element: BookElement | null,
  supplier: BookSupplier | null,
  book: Book,
  today: CalendarDate,
  firstShootingDate: CalendarDate | null,
): LineDates {
  const first = findFirstNeed(need, element);
  const needed = first.date ?? (need.uses.length === 0 ? firstShootingDate : null);
  const delivery = countDelivery(element, supplier);
  const prep = layPrep(element?.prep ?? [], book.prepHoursADay.value);
  const empty = {
    packed: null,
    prepStarts: null,
    inHand: null,
    orderBy: null,
    recommended: null,
    latestHope: null,
    tooLate: null,
  };
  const base = {
    needed,
    neededFor: needed === null ? first.words : first.date === null ? 'first shooting day' : first.words,
    prepDays: prep.days,
    deliveryDays: delivery,
  };
  if (needed === null) return { ...base, ...empty };
  const calendar = calendarOf(book, supplier);
  const delivered = (date: CalendarDate) => (isDelivered(element) ? lastWorkingDay(date, calendar) : date);
  // A fitting comes before any dyeing or breaking down: it wants the thing in hand, not the work done.
  const worked = findFirstUse(need, element)?.date ?? needed;
  const packed = addDays(worked, -1);
  const prepStarts = prep.days > 0 ? addDays(packed, -prep.days) : null;
  const forWork = delivered(prepStarts === null ? packed : addDays(prepStarts, -1));
  const forFitting = element?.fitting ? delivered(addDays(element.fitting, -1)) : null;
  const inHand = element?.collect ?? (earliest(forWork, forFitting) as CalendarDate);
  const isGotHere = element?.source === 'own' || element?.source === 'cut' || need.toGet === 0;
  const orderBy = isGotHere ? null : subtractWorkingDays(inHand, delivery.value, calendar);
  const recommended = orderBy === null ? null : subtractWorkingDays(addDays(orderBy, -1), 0, calendar);
  const dates = { ...base, packed, prepStarts, inHand, orderBy, recommended, latestHope: isGotHere ? null : inHand };
  return { ...dates, tooLate: judgeTime(dates, need, element, today) };
}

/** Working days between order and arrival: of the line, of the supplier, else usual; nothing for what is one's own. */
function countDelivery(element: BookElement | null, supplier: BookSupplier | null): Choice<number> {
  const given = element?.deliveryDays ?? supplier?.deliveryDays ?? null;
  if (given !== null) return { value: given, given: true };
  switch (element?.source ?? null) {
    case 'own':
    case 'cut':
      return { value: 0, given: true };
    case 'borrow':
    case 'hire':
      return { value: quantityDefaults.collectDays.value, given: false };
    default:
      return { value: quantityDefaults.deliveryDays.value, given: false };
  }
}

function judgeTime(
  dates: Pick<LineDates, 'orderBy' | 'inHand' | 'needed' | 'neededFor'>,
  need: Need,
  element: BookElement | null,
  today: CalendarDate,
): string | null {
  const { orderBy, inHand, needed } = dates;
  if (orderBy === null || inHand === null || needed === null || element?.received) return null;
  const first = need.uses.find((use) => use.slot.date !== null);
  const move = first ? `, move scene ${first.slot.label} from ${formatShortDate(needed)}` : '';
  const ways = `pay for express delivery, buy it in town by ${formatShortDate(inHand)}, borrow one, play a simpler state${move}`;
  if (element?.ordered) {
    const promised = element.promised;
    if (promised === null || promised <= inHand) return null;
    return `promised for ${formatDate(promised)}, but it must be in hand on ${formatDate(inHand)}. Ways out: ${ways}.`;
  }
  if (orderBy >= today) return null;
  return `the last day to order it was ${formatDate(orderBy)}, and today is ${formatDate(today)}. Ways out: ${ways}.`;
}
