import { addDays, type CalendarDate, daysBetween, formatDate, formatShortDate, latest } from '../base/calendar-date.js';
import type { BookElement } from '../book/types.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import { findFirstScene } from './first-need.js';
import { isHere, isOpenAgain, isOver, isOwnShort } from './line-status.js';
import type { LineDates, MaterialDates } from './line-types.js';
import type { Need } from './need-types.js';
import { counted } from './per-take.js';
import { addWorkingDays, type WorkCalendar } from './working-days.js';

/** The dates of a line before anything is judged. */
export interface Timing
  extends Pick<
    LineDates,
    'needed' | 'neededFor' | 'fittingAssumed' | 'inHand' | 'orderBy' | 'expected' | 'deliveryDays'
  > {
  /** The dates that its first scene alone would ask for, without any fitting. */
  readonly forScene: { readonly inHand: CalendarDate; readonly orderBy: CalendarDate };
}

/** When a thing comes that is on its way: as promised, on the day it is fetched, else after the usual days of delivery. */
export function findExpected(
  element: BookElement | null,
  deliveryDays: number,
  calendar: WorkCalendar,
): CalendarDate | null {
  if (element === null || isHere(element) || isOpenAgain(element)) return null;
  if (element.promised !== null) return element.promised;
  if (element.source === 'hire' || element.source === 'borrow') return element.collect;
  return element.ordered === null ? null : addWorkingDays(element.ordered, deliveryDays, calendar);
}

/** What comes too late, in words, with the ways out; null while there is time. */
export function judgeTime(
  timing: Timing,
  need: Need,
  element: BookElement | null,
  materials: readonly MaterialDates[],
  today: CalendarDate,
): string | null {
  const { orderBy, inHand, needed } = timing;
  if (inHand === null || needed === null || isHere(element) || isOver(need, today)) return null;
  // A spare beside one's own that comes too late stops no scene.
  if (isOwnShort(need, element) && need.have >= (need.decided ?? need.minimum)) return null;
  const isMade = element?.source === 'make' && materials.length > 0;
  const late = materials.find((one) => one.late !== null);
  const own = orderBy === null || isMade ? null : judgeOrder(timing, element, today);
  const words = own ?? (late ? `${late.what}: ${late.late}` : null);
  if (words === null) return null;
  const last = own === null && late ? late.inHand : inHand;
  const move = moveWords(timing, need);
  const again = isOpenAgain(element) ? `${troubleWords(element)}, and ` : '';
  const town = last >= today ? `buy it in town by ${formatShortDate(last)}` : 'buy it in town today';
  return `${again}${words}. Ways out: pay for express delivery, ${town}, borrow one, play a simpler state${move}.`;
}

/** The last way out: another day for what wants it first. */
function moveWords({ needed, neededFor, fittingAssumed }: Timing, need: Need): string {
  const first = need.uses.find((use) => use.slot.date !== null);
  if (!first?.slot.date || needed === null) return '';
  if (needed < first.slot.date && !fittingAssumed) return `, put off the ${neededFor} of ${formatShortDate(needed)}`;
  return `, move scene ${first.slot.label} from ${formatShortDate(first.slot.date)}`;
}

/** `it came wrong`. */
export function troubleWords(element: BookElement | null): string {
  return element?.problem === 'cancelled'
    ? 'the order was cancelled'
    : element?.problem === 'broken'
      ? 'it is broken'
      : 'it came wrong';
}

function judgeOrder(timing: Timing, element: BookElement | null, today: CalendarDate): string | null {
  const { orderBy, inHand, expected, forScene } = timing;
  if (orderBy === null || inHand === null) return null;
  const isFetched = element?.source === 'hire' || element?.source === 'borrow';
  if (expected !== null && (element?.promised || !isFetched)) {
    if (latest(expected, today) <= inHand) return null;
    return `${expectedWords(timing, element, expected, today)}, but it must be in hand on ${formatDate(inHand)}${forFitting(timing)}`;
  }
  // A hire that is booked, with no day named on which it is fetched, can be fetched in time.
  if ((element?.ordered ?? null) !== null && !isOpenAgain(element)) return null;
  if (orderBy >= today) return null;
  const gone = `the last day to order it${forFitting(timing)} was ${formatDate(orderBy)}, and today is ${formatDate(today)}`;
  if (!timing.fittingAssumed || forScene.orderBy < today) return gone;
  return `${gone}; ordered by ${formatShortDate(forScene.orderBy)} it still comes before it is played, but what does not fit can then hardly be changed`;
}

/** Why the date lies before the scene, when nobody gave the fitting a day. */
function forFitting({ fittingAssumed, forScene, inHand }: Timing): string {
  if (!fittingAssumed || inHand === null || inHand >= forScene.inHand) return '';
  const days = counted(quantityDefaults.lastFitting.value, 'day');
  return ` for a fitting ${days} before the first shooting day`;
}

function expectedWords(
  { deliveryDays }: Timing,
  element: BookElement | null,
  expected: CalendarDate,
  today: CalendarDate,
): string {
  const overdue = expected < today ? ' and not here yet' : '';
  if (element?.promised) return `promised for ${formatDate(expected)}${overdue}`;
  const ordered = element?.ordered ? `ordered on ${formatDate(element.ordered)}` : 'ordered';
  const usual = deliveryDays.given ? '' : ' (assumed)';
  return `${ordered}, with ${counted(deliveryDays.value, 'working day')} of delivery${usual} it comes on ${formatDate(expected)}${overdue}`;
}

/** Work that no longer fits before the thing is packed, in words; null while it fits, or is done. What is still to come is judged by its order. */
export function judgeWork(
  dates: Pick<
    LineDates,
    'packed' | 'prepStarts' | 'finishStarts' | 'makingTasks' | 'prepDays' | 'needed' | 'neededFor'
  >,
  need: Need,
  element: BookElement | null,
  prepBegins: CalendarDate | null,
  today: CalendarDate,
): string | null {
  const { packed, prepStarts, prepDays, makingTasks } = dates;
  if (packed === null || prepStarts === null || element === null || element.ready || element.source === 'cut')
    return null;
  // What was shot yesterday needs no work today.
  const scene = findFirstScene(need);
  if (scene !== null && scene.date < today) return null;
  const work = `work of ${counted(prepDays, 'day')}`;
  const move = scene === null ? '' : `, move ${scene.label} from ${formatShortDate(scene.date)}`;
  const ways = `Ways out: more hands, fewer hours of it, one that needs no work${move}`;
  const isThere = isHere(element) || (!isOpenAgain(element) && (need.toGet === 0 || isOwnOnly(need, element)));
  // What is here is made already.
  const starts = makingTasks > 0 ? dates.finishStarts : prepStarts;
  if (isThere && starts === null) return null;
  if (isThere && starts !== null && starts < today) {
    const days = daysBetween(starts, packed);
    const ends = formatDate(addDays(today, days - 1));
    return `work of ${counted(days, 'day')} was to begin on ${formatDate(starts)}; begun today it ends on ${ends}, and it is packed on ${formatDate(packed)}. ${ways}.`;
  }
  if (prepBegins !== null && prepStarts < prepBegins) {
    const begins = `begin on ${formatDate(prepStarts)}, and preparation begins on ${formatDate(prepBegins)}`;
    const fitted =
      makingTasks > 0 && dates.neededFor.startsWith('fitting') && dates.needed !== null
        ? `, made for the fitting on ${formatDate(dates.needed)},`
        : '';
    return `${work}${fitted} would have to ${begins}. ${ways}, begin to prepare earlier.`;
  }
  return null;
}

function isOwnOnly(need: Need, element: BookElement): boolean {
  return element.source === 'own' && !isOwnShort(need, element);
}
