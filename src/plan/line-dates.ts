import { addDays, type CalendarDate, formatDate, formatShortDate } from '../base/calendar-date.js';
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
  const dated = need.uses.filter((use) => use.slot.date !== null);
  const first = dated[0] ?? null;
  const candidates = [
    ...(first
      ? [
          {
            date: first.slot.date as CalendarDate,
            words: `scene ${first.slot.label}${first.stateIn ? `, ${first.stateIn}` : ''}`,
          },
        ]
      : []),
    ...(element?.fitting ? [{ date: element.fitting, words: 'fitting' }] : []),
    ...(element?.test ? [{ date: element.test, words: 'camera test' }] : []),
    ...(element?.rehearsal ? [{ date: element.rehearsal, words: 'rehearsal' }] : []),
  ];
  candidates.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  return candidates[0] ?? { date: null, words: need.uses.length > 0 ? 'no shooting day yet' : 'no date' };
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
  const packed = addDays(needed, -1);
  const prepStarts = prep.days > 0 ? addDays(packed, -prep.days) : null;
  const wanted = prepStarts === null ? packed : addDays(prepStarts, -1);
  const isOrdered =
    element?.source === 'buy' || element?.source === 'make' || element?.source === null || element === null;
  const inHand = element?.collect ?? (isOrdered ? lastWorkingDay(wanted, calendar) : wanted);
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
