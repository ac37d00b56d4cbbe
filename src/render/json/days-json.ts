import { formatClockTime } from '../../base/clock-time.js';
import type { DayFacts } from '../../compare/types.js';
import type { Production } from '../types.js';

/** The shooting days as plain data, so that a later draft can tell what moved; null without a production book. */
export function daysJson(production: Production | null): DayFacts[] | null {
  if (production === null) return null;
  const { book, plan } = production;
  const names = new Map(book.locations.map((location) => [location.id, location.name]));
  return plan.days.map((day) => ({
    number: day.number,
    date: day.date,
    call: formatClockTime(day.call.value),
    places: day.locations.map((id) => names.get(id) ?? id),
    scenes: day.scenes.map((slot) => slot.scene),
  }));
}
