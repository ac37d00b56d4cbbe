import { addDays, type CalendarDate, formatDate, latest } from '../base/calendar-date.js';
import { findSupplier } from '../book/to-entries.js';
import type { Book, BookElement, BookSupplier, Choice, Material } from '../book/types.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import { calendarOf } from './line-calendar.js';
import { isHere } from './line-status.js';
import type { MaterialDates } from './line-types.js';
import type { Need } from './need-types.js';
import { addWorkingDays, lastWorkingDay, subtractWorkingDays } from './working-days.js';

/**
 * The dates of all raw material of one thing, each counted backward by its own shop from `before`: the last day on which it
 * can come before the work begins. What is made and here already, or not needed, wants none.
 */
export function countMaterials(
  need: Need,
  element: BookElement | null,
  supplier: BookSupplier | null,
  before: CalendarDate,
  book: Book,
  today: CalendarDate,
): MaterialDates[] {
  if (element === null || element.source === 'cut') return [];
  if (element.source === 'make' && need.toGet === 0) return [];
  const isMade = isHere(element) || element.ready !== null;
  return element.materials.map((material) => countMaterial(material, element, supplier, before, book, today, isMade));
}

function countMaterial(
  material: Material,
  element: BookElement,
  ofThing: BookSupplier | null,
  before: CalendarDate,
  book: Book,
  today: CalendarDate,
  isMade: boolean,
): MaterialDates {
  const supplier = material.from === null ? ofThing : findSupplier(book.suppliers, material.from);
  const calendar = calendarOf(book, supplier);
  const deliveryDays = countDelivery(material, element, supplier);
  const inHand = lastWorkingDay(before, calendar);
  const orderBy = subtractWorkingDays(inHand, deliveryDays.value, calendar);
  const received = material.received !== null || isMade;
  const expected = material.ordered === null ? null : addWorkingDays(material.ordered, deliveryDays.value, calendar);
  return {
    what: material.what,
    pieces: material.pieces,
    from: supplier?.name ?? material.from ?? element.from,
    inHand,
    orderBy,
    recommended: subtractWorkingDays(addDays(orderBy, -1), 0, calendar),
    deliveryDays,
    ordered: material.ordered !== null || received,
    received,
    late: received ? null : judgeMaterial(orderBy, inHand, expected, today),
  };
}

function countDelivery(material: Material, element: BookElement, supplier: BookSupplier | null): Choice<number> {
  const ofThing = material.from === null ? element.deliveryDays : null;
  const given = material.deliveryDays ?? ofThing ?? supplier?.deliveryDays ?? null;
  return given === null ? { value: quantityDefaults.deliveryDays.value, given: false } : { value: given, given: true };
}

function judgeMaterial(
  orderBy: CalendarDate,
  inHand: CalendarDate,
  expected: CalendarDate | null,
  today: CalendarDate,
): string | null {
  if (expected === null) {
    if (orderBy >= today) return null;
    return `the last day to order it was ${formatDate(orderBy)}, and today is ${formatDate(today)}`;
  }
  if (latest(expected, today) <= inHand) return null;
  const when =
    expected < today ? `was to come on ${formatDate(expected)} and is not here` : `comes on ${formatDate(expected)}`;
  return `it ${when}, but the work on it begins after ${formatDate(inHand)}`;
}
