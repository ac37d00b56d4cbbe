import { dayNumber } from '../base/calendar-date.js';
import { type ClockMinutes, formatClockTime } from '../base/clock-time.js';
import type { Book } from '../book/types.js';
import type { Breakdown } from '../breakdown/types.js';
import type { PlanDay } from './day-types.js';
import type { DaySun } from './daylight-types.js';
import type { Plan } from './plan-types.js';
import { createPlaceFinder } from './scene-place.js';
import type { Slot } from './slot-types.js';
import { compassWords, findSunPosition } from './sun-position.js';

/** One shooting day at one real location. */
export interface PlaceDay {
  readonly day: PlanDay;
  readonly slots: readonly Slot[];
  /** Where the Sun stands when work begins and when it ends there, or why nobody knows. */
  readonly sun: readonly string[];
}

/** The real location of each scene by id: on its shooting day, else the first that the book gives its place; null when nobody says. */
export function locateScenes(breakdown: Breakdown, book: Book, plan: Plan): ReadonlyMap<string, string | null> {
  const finder = createPlaceFinder(breakdown, book);
  const days = new Map(plan.slots.map((slot) => [slot.scene, slot.day]));
  return new Map(
    breakdown.scenes.map((scene) => {
      const number = days.get(scene.id) ?? null;
      const day = number === null ? undefined : book.days[number - 1];
      return [scene.id, day ? finder.onDay(scene, day) : (finder.playing(scene)[0] ?? null)];
    }),
  );
}

/** The shooting days with scenes at a location, with where the Sun stands at both ends of the work there. */
export function listPlaceDays(
  location: string,
  where: ReadonlyMap<string, string | null>,
  book: Book,
  plan: Plan,
): PlaceDay[] {
  return plan.days.flatMap((day) => {
    const slots = day.scenes.filter((slot) => where.get(slot.scene) === location);
    if (slots.length === 0) return [];
    const sun = day.sun.find((one) => one.location === location) ?? null;
    return [{ day, slots, sun: sun === null ? [] : sunLines(day, slots, sun, book) }];
  });
}

function sunLines(day: PlanDay, slots: readonly Slot[], sun: DaySun, book: Book): string[] {
  const location = book.locations.find((one) => one.id === sun.location) ?? null;
  if (sun.times === null || location === null || location.coordinates === null) return [sun.words];
  const place = { ...location.coordinates, zone: sun.times.zone };
  const from = minutesOf(slots[0]?.start ?? null, day) ?? day.call.value;
  const to = minutesOf(slots.at(-1)?.end ?? null, day) ?? day.wrap.value;
  const span = `${formatClockTime(from % 1440)} to ${formatClockTime(to % 1440)}`;
  const lit = litSpan(from, to, sun.times);
  if (lit === null) return [`${span}: the Sun is down.`];
  return [lit.from, lit.to].map((minutes) => {
    const { azimuth, height } = findSunPosition(place, day.date, minutes);
    const clock = formatClockTime(minutes % 1440);
    const high = Math.round(height);
    return `${clock}: in the ${compassWords(azimuth)} (${Math.round(azimuth) % 360}°), ${high < 1 ? 'on the horizon' : `${high}° high`}.`;
  });
}

/** The part of the work while the Sun is up; null when it is down all through. */
function litSpan(from: ClockMinutes, to: ClockMinutes, times: NonNullable<DaySun['times']>) {
  if (times.remark === 'the Sun stays up all day') return { from, to };
  if (times.remark === 'the Sun stays down all day') return null;
  const lit = { from: Math.max(from, times.sunrise ?? from), to: Math.min(to, times.sunset ?? to) };
  return lit.to > lit.from ? lit : null;
}

/** Clock minutes from hours since 1970, to five minutes, as the call sheet has them. */
function minutesOf(hours: number | null, day: PlanDay): ClockMinutes | null {
  return hours === null ? null : Math.round((hours - dayNumber(day.date) * 24) * 12) * 5;
}
