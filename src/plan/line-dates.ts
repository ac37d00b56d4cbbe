import { addDays, type CalendarDate, earliest } from '../base/calendar-date.js';
import type { Book, BookElement, BookSupplier, Choice } from '../book/types.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import { findFirstNeed, findFirstUse, findFitting, type Occasion } from './first-need.js';
import { findExpected, judgeTime, judgeWork } from './judge-time.js';
import { calendarOf } from './line-calendar.js';
import { comesByItself, isOpenAgain, isOwnShort } from './line-status.js';
import type { LineDates, MaterialDates } from './line-types.js';
import { countMaterials } from './material-dates.js';
import type { Need } from './need-types.js';
import { dateWork } from './work-dates.js';
import { lastWorkingDay, subtractWorkingDays } from './working-days.js';

/** One thing whose dates are counted. */
export interface DatedThing {
  readonly need: Need;
  readonly element: BookElement | null;
  readonly supplier: BookSupplier | null;
  /** Days on which another thing needs this one: the camera test of a lamp needs its batteries. */
  readonly occasions: readonly Occasion[];
}

/** What all dates rest on. */
export interface DateGround {
  readonly book: Book;
  readonly today: CalendarDate;
  readonly firstShootingDate: CalendarDate | null;
}

/** Counts the dates of one thing backward from the day it is first needed. */
export function countDates(thing: DatedThing, ground: DateGround): LineDates {
  const { need, element } = thing;
  const use = findFirstUse(need, element, thing.occasions);
  const fitting = findFitting(need, element, ground.firstShootingDate);
  const first = findFirstNeed(need, use, fitting);
  const needed = first.date ?? (need.uses.length === 0 ? ground.firstShootingDate : null);
  // Packed the day before it is used.
  const packed = addDays(use?.date ?? needed ?? ground.today, -1);
  const work = dateWork(element, ground.book.prepHoursADay.value, packed, fitting?.date ?? null);
  const base = {
    needed,
    fittingAssumed: first === fitting && fitting !== null && !fitting.given,
    neededFor: needed !== null && first.date === null ? 'first shooting day' : first.words,
    prepDays: work.prepDays,
    makingTasks: work.makingTasks,
    deliveryDays: countDelivery(thing),
  };
  if (needed === null) return { ...base, ...undated };
  const { prepStarts, finishStarts } = work;
  const forWork = prepStarts === null ? packed : addDays(prepStarts, -1);
  const forScene = work.makingTasks > 0 ? addDays(packed, -work.prepDays - 1) : forWork;
  // Before a fitting it must be in hand; what is made for it is made by then.
  const forFitting = fitting && work.makingTasks === 0 ? addDays(fitting.date, -1) : null;
  const days = { packed, prepStarts, finishStarts, forWork, forScene, forFitting };
  return { ...base, ...countBackward(thing, ground, base, days) };
}

const undated = {
  packed: null,
  prepStarts: null,
  finishStarts: null,
  inHand: null,
  orderBy: null,
  recommended: null,
  latestHope: null,
  expected: null,
  tooLate: null,
  workShort: null,
  materials: [],
} as const;

interface Milestones {
  readonly packed: CalendarDate;
  readonly prepStarts: CalendarDate | null;
  readonly finishStarts: CalendarDate | null;
  /** The last day it could come if there were no fitting. */
  readonly forScene: CalendarDate;
  /** The last day it can come before the work on it, and before its fitting. */
  readonly forWork: CalendarDate;
  readonly forFitting: CalendarDate | null;
}

type BaseDates = 'needed' | 'neededFor' | 'fittingAssumed' | 'prepDays' | 'makingTasks';

function countBackward(
  thing: DatedThing,
  ground: DateGround,
  base: Pick<LineDates, BaseDates | 'deliveryDays'>,
  days: Milestones,
): Omit<LineDates, BaseDates> {
  const { need, element, supplier } = thing;
  const { book, today } = ground;
  const { packed, prepStarts, finishStarts } = days;
  const calendar = calendarOf(book, supplier);
  const delivered = (date: CalendarDate) => (isDelivered(thing) ? lastWorkingDay(date, calendar) : date);
  const forWork = delivered(days.forWork);
  const must = earliest(forWork, days.forFitting === null ? null : delivered(days.forFitting)) as CalendarDate;
  const before = earliest(days.forWork, days.forFitting) as CalendarDate;
  const materials = countMaterials(need, element, supplier, before, book, today);
  const inHand = element?.source === 'make' ? inHandOf(materials, must) : collectedBy(thing, must, addDays(packed, 1));
  const back = (date: CalendarDate) => subtractWorkingDays(date, base.deliveryDays.value, calendar);
  const orderBy = isGotHere(thing) ? null : (orderByOf(thing, materials) ?? back(inHand));
  const recommended = orderBy === null ? null : subtractWorkingDays(addDays(orderBy, -1), 0, calendar);
  const dates = { ...base, packed, prepStarts, finishStarts, inHand, orderBy, recommended };
  const expected = findExpected(element, base.deliveryDays.value, calendar);
  const forScene = delivered(days.forScene);
  const timing = { ...dates, expected, forScene: { inHand: forScene, orderBy: back(forScene) } };
  // What is made is delivered as the first of its raw material is.
  const deliveryDays = element?.source === 'make' ? (firstMaterial(materials)?.deliveryDays ?? null) : null;
  return {
    ...dates,
    deliveryDays: deliveryDays ?? base.deliveryDays,
    latestHope: orderBy === null ? null : inHand,
    expected,
    tooLate: judgeTime(timing, need, element, materials, today),
    workShort: judgeWork(dates, need, element, book.prepStarts, today),
    materials,
  };
}

/** The day it is fetched, as the book says and as far as that is in time: in a box the day before, by itself on the day. */
function collectedBy({ need, element }: DatedThing, must: CalendarDate, used: CalendarDate): CalendarDate {
  const collect = element?.collect ?? null;
  if (collect !== null && (collect < must || (collect <= used && comesByItself(need, element)))) return collect;
  return must;
}

/** True for what a supplier brings, and so only on days when it delivers; what is fetched or made here comes on any day. */
function isDelivered({ need, element }: DatedThing): boolean {
  const source = element?.source ?? null;
  return source === null || source === 'buy' || source === 'make' || isOwnShort(need, element);
}

/** True for what nobody must order: it is here, one's own, or done without. */
function isGotHere({ need, element }: DatedThing): boolean {
  if (element?.source === 'cut' || need.toGet === 0) return !isOpenAgain(element) || element?.source === 'cut';
  return element?.source === 'own' && !isOwnShort(need, element) && !isOpenAgain(element);
}

/** What is made is ordered with the first of its raw material that is still to be ordered, else with the first of all. */
function firstMaterial(materials: readonly MaterialDates[]): MaterialDates | null {
  const open = materials.filter((one) => !one.ordered);
  const list = open.length > 0 ? open : materials;
  return list.reduce<MaterialDates | null>(
    (best, one) => (best === null || one.orderBy < best.orderBy ? one : best),
    null,
  );
}

function inHandOf(materials: readonly MaterialDates[], otherwise: CalendarDate): CalendarDate {
  return firstMaterial(materials)?.inHand ?? otherwise;
}

function orderByOf({ element }: DatedThing, materials: readonly MaterialDates[]): CalendarDate | null {
  return element?.source === 'make' ? (firstMaterial(materials)?.orderBy ?? null) : null;
}

/** Working days between order and arrival: of the line, of the supplier, else usual; nothing for what is one's own. */
function countDelivery({ need, element, supplier }: DatedThing): Choice<number> {
  const given = element?.deliveryDays ?? supplier?.deliveryDays ?? null;
  if (given !== null) return { value: given, given: true };
  const usual = { value: quantityDefaults.deliveryDays.value, given: false };
  switch (element?.source ?? null) {
    case 'own':
      return isOwnShort(need, element) ? usual : { value: 0, given: true };
    case 'cut':
      return { value: 0, given: true };
    case 'borrow':
    case 'hire':
      return { value: quantityDefaults.collectDays.value, given: false };
    default:
      return usual;
  }
}
