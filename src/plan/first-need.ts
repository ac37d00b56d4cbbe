import { addDays, type CalendarDate } from '../base/calendar-date.js';
import type { BookElement } from '../book/types.js';
import { findPrepTime } from '../trade/prep-times.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import type { Need } from './need-types.js';

/** A day on which a thing must be there, and what for. */
export interface Occasion {
  readonly date: CalendarDate;
  readonly words: string;
}

/** The day of a fitting, and whether the book gave it. */
export interface FittingDay extends Occasion {
  readonly given: boolean;
}

/** What a thing is first needed for, and when: the state shot earliest, or a fitting, test or rehearsal before it. */
export function findFirstNeed(
  need: Need,
  use: Occasion | null,
  fitting: FittingDay | null,
): { date: CalendarDate | null; words: string } {
  if (fitting && (use === null || fitting.date < use.date)) return fitting;
  return use ?? { date: null, words: need.uses.length > 0 ? 'no shooting day yet' : 'no date' };
}

/** The first day on which it must be ready: a scene, a camera test, a rehearsal; null when none has a date. */
export function findFirstUse(
  need: Need,
  element: BookElement | null,
  others: readonly Occasion[] = [],
): Occasion | null {
  const scene = findFirstScene(need);
  const candidates = [...(scene ? [scene] : []), ...listTests(element, ''), ...others];
  return candidates.reduce<Occasion | null>((best, one) => (best === null || one.date < best.date ? one : best), null);
}

/** The camera test and the rehearsal that the book dates; `of` names the thing where another one goes with it. */
export function listTests(element: BookElement | null, of: string): Occasion[] {
  return [
    ...(element?.test ? [{ date: element.test, words: `camera test${of}` }] : []),
    ...(element?.rehearsal ? [{ date: element.rehearsal, words: `rehearsal${of}` }] : []),
  ];
}

/** The scene in which it is shot first; null when none of its scenes is in a day. */
export function findFirstScene(need: Need): (Occasion & { readonly label: string }) | null {
  const first = need.uses.find((use) => use.slot.date !== null);
  if (!first?.slot.date) return null;
  const label = `scene ${first.slot.label}`;
  return { date: first.slot.date, label, words: `${label}${first.stateIn ? `, ${first.stateIn}` : ''}` };
}

/**
 * The day by which a garment is fitted: as the book says, else the last day on which there is still time to change what
 * does not fit. What is fitted as part of its preparation, or fetched on a day that the book gives, has no other day.
 */
export function findFitting(
  need: Need,
  element: BookElement | null,
  firstShootingDate: CalendarDate | null,
): FittingDay | null {
  if (element?.fitting) return { date: element.fitting, words: 'fitting', given: true };
  const isFitted =
    element?.checked || element?.collect || element?.prep.some((one) => findPrepTime(one.task)?.task === 'fit');
  if (need.category !== 'costumes' || firstShootingDate === null || isFitted || findFirstScene(need) === null)
    return null;
  const date = addDays(firstShootingDate, -quantityDefaults.lastFitting.value);
  return { date, words: 'fitting, at the latest', given: false };
}
