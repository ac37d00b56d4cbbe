import { dayNumber } from '../base/calendar-date.js';
import { formatMinutes } from '../base/clock-time.js';
import { type Eighths, sumEighths } from '../base/eighths.js';
import type { Book, BookDay } from '../book/types.js';
import type { Breakdown, BreakdownScene } from '../breakdown/types.js';
import { dayLimits, shootingTimes } from '../trade/shooting-times.js';
import { findRushes } from './costume-rush.js';
import type { PlanDay } from './day-types.js';
import { lightDay, type PlacedScene } from './light-windows.js';
import { findMinors } from './minors.js';
import { createPlaceFinder, type PlaceFinder } from './scene-place.js';
import type { ShootingOrder } from './shooting-order.js';

/** The shooting days with their load, rest, moves, light and everything that speaks against them. */
export function planDays(breakdown: Breakdown, book: Book, order: ShootingOrder): PlanDay[] {
  const scenes = new Map(breakdown.scenes.map((scene) => [scene.id, scene]));
  const places = createPlaceFinder(breakdown, book);
  const placedDays = order.days.map(({ day, slots }) => ({
    day,
    slots,
    placed: slots.map((slot) => ({ slot, scene: scenes.get(slot.scene) as BreakdownScene })),
  }));
  return placedDays.map(({ day, slots, placed }, index) => {
    const sameDate = placedDays.filter((one) => one.day.date === day.date).map((one) => one.placed);
    const where = placed.map(({ scene }) => places.onDay(scene, day));
    const locations = [...new Set([...day.locations, ...where.filter((id) => id !== null)])];
    const moves = where.filter(
      (id, at) => at > 0 && id !== null && where[at - 1] !== null && id !== where[at - 1],
    ).length;
    const previous = order.days[index - 1]?.day ?? null;
    const load = {
      eighths: sumEighths(placed.map(({ scene }) => scene.eighths)),
      seconds: placed.reduce((sum, { scene }) => sum + scene.screenTime.seconds, 0),
      setups: slots.reduce((sum, slot) => sum + slot.setups.value, 0),
      shootingMinutes: countMinutes(placed, where, moves),
      // Two entries on one date are one day: a message says so.
      restHours: previous === null || previous.date === day.date ? null : restBetween(previous, day),
      moves,
    };
    const sun = locations.map((id) =>
      lightDay(
        id,
        places.location(id),
        day,
        placed.filter((_, at) => where[at] === id),
        book,
      ),
    );
    return {
      number: index + 1,
      of: order.days.length,
      date: day.date,
      call: day.call,
      wrap: day.wrap,
      meal: day.meal,
      shot: day.shot,
      note: day.note,
      locations,
      scenes: slots,
      ...load,
      changes: findRushes(placed, dayNumber(day.date) * 24 + day.call.value / 60),
      openPlaces: listOpenPlaces(placed, day, places),
      minors: findMinors(breakdown, book, placed, sameDate),
      warnings: judgeLoad(load, day, book, placed, places),
      sun,
    };
  });
}

/** Hours between the wrap of one day and the call of the next. */
export function restBetween(earlier: BookDay, later: BookDay): number {
  const minutes = (dayNumber(later.date) - dayNumber(earlier.date)) * 1440 + later.call.value - earlier.wrap.value;
  return Math.round((minutes / 60) * 100) / 100;
}

/** Minutes of work on a day: the scenes, the moves between locations, redressing one room as another, a meal. */
function countMinutes(placed: readonly PlacedScene[], where: readonly (string | null)[], moves: number): number {
  if (placed.length === 0) return 0;
  const redressed = placed.filter(({ scene }, at) => {
    const before = placed[at - 1]?.scene;
    return (
      before &&
      scene.setting === 'INT' &&
      before.placeId !== scene.placeId &&
      where[at] !== null &&
      where[at] === where[at - 1]
    );
  }).length;
  const scenes = placed.reduce((sum, { slot }) => sum + slot.minutes, 0);
  return scenes + moves * shootingTimes.companyMove + redressed * shootingTimes.redress + shootingTimes.meal;
}

function judgeLoad(
  load: { setups: number; shootingMinutes: number; restHours: number | null; eighths: Eighths },
  day: BookDay,
  book: Book,
  placed: readonly PlacedScene[],
  places: PlaceFinder,
): string[] {
  const length = day.wrap.value - day.call.value;
  const used = new Set(placed.map(({ scene }) => places.onDay(scene, day)).filter((id) => id !== null));
  const rest = book.restHours.value;
  return [
    ...(length > dayLimits.hours * 60
      ? [`call to wrap is ${formatMinutes(length)}, more than ${dayLimits.hours} h`]
      : []),
    ...(load.shootingMinutes > length
      ? [`the work is reckoned at ${formatMinutes(load.shootingMinutes)}, and call to wrap is ${formatMinutes(length)}`]
      : []),
    ...(load.setups > dayLimits.setups ? [`${load.setups} setups, more than ${dayLimits.setups}`] : []),
    ...(used.size > dayLimits.places ? [`${used.size} places, more than ${dayLimits.places}`] : []),
    ...(load.restHours !== null && load.restHours < rest
      ? [`only ${formatMinutes(load.restHours * 60)} between the last wrap and this call, less than ${rest} h`]
      : []),
  ];
}

function listOpenPlaces(placed: readonly PlacedScene[], day: BookDay, places: PlaceFinder): PlanDay['openPlaces'] {
  return placed.flatMap(({ scene }) => {
    const choices = places.playing(scene);
    const taken = places.onDay(scene, day);
    if (choices.length < 2 || taken === null || day.locations.length > 0) return [];
    return [{ scene: scene.id, place: scene.place, choices, taken }];
  });
}
