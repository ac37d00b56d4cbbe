import {
  Body,
  Equator,
  Horizon,
  MakeTime,
  Observer,
  SearchAltitude,
  SearchHourAngle,
  SearchRiseSet,
} from 'astronomy-engine';
import type { CalendarDate } from '../base/calendar-date.js';
import { dayNumber } from '../base/calendar-date.js';
import { toInstant, zoneOffset } from '../base/time-zone.js';
import { sunHeights } from '../trade/sun-heights.js';
import type { SunTimes } from './daylight-types.js';

const day = 86_400_000;

/** Where and when the Sun is asked for. */
export interface SunPlace {
  readonly latitude: number;
  readonly longitude: number;
  readonly zone: string;
}

/**
 * First light, sunrise, sunset, last light and golden hours of one date at one place, on a level horizon at sea level, to the
 * minute. Sunrise is the first within the date; everything after it follows from it, and may fall past midnight.
 */
export function findSunTimes(place: SunPlace, date: CalendarDate, golden: { from: number; to: number }): SunTimes {
  const observer = new Observer(place.latitude, place.longitude, 0);
  const midnight = toInstant(place.zone, date, 0);
  const clock = (instant: number | null) => (instant === null ? null : toDayMinutes(place.zone, date, instant));
  const rise = search((start, limit) => SearchRiseSet(Body.Sun, observer, +1, start, limit), midnight, 1);
  const set = search((start, limit) => SearchRiseSet(Body.Sun, observer, -1, start, limit), rise ?? midnight, 1);
  const height = (direction: 1 | -1, altitude: number, from: number, days: number) =>
    search((start, limit) => SearchAltitude(Body.Sun, observer, direction, start, limit, altitude), from, days);
  const before = rise === null ? midnight : rise - day / 2;
  const dawn = height(+1, sunHeights.firstLight, before, rise === null ? 1 : 0.5);
  const dusk = height(-1, sunHeights.firstLight, set ?? dawn ?? midnight, set === null ? 1 : 0.5);
  const noon = middleOf(rise, set) ?? middleOf(dawn, dusk) ?? transit(observer, 0, midnight, +1);
  const low = { before: transit(observer, 12, noon, -1), after: transit(observer, 12, noon, +1) };
  const isDark = sunHeight(observer, low.after) < sunHeights.firstLight;
  return {
    date,
    zone: place.zone,
    firstLight: clock(dawn),
    sunrise: clock(rise),
    sunset: clock(set),
    lastLight: clock(dusk),
    lowest: { before: toDayMinutes(place.zone, date, low.before), after: toDayMinutes(place.zone, date, low.after) },
    ...goldenHours(golden, { noon, ...low }, (instant) => sunHeight(observer, instant), height, clock),
    remark:
      rise !== null || set !== null
        ? isDark
          ? null
          : 'no dark: civil twilight all night'
        : sunHeight(observer, midnight + day / 2) > sunHeights.rise
          ? 'the Sun stays up all day'
          : 'the Sun stays down all day',
  };
}

type HeightSearch = (direction: 1 | -1, altitude: number, from: number, days: number) => number | null;

/** The instant nearest to `from`, forward or backward, at which the Sun is so many hours past noon. */
function transit(observer: Observer, hours: number, from: number, direction: 1 | -1): number {
  return SearchHourAngle(Body.Sun, observer, hours, new Date(from), direction).time.date.getTime();
}

interface Turns {
  readonly noon: number;
  readonly before: number;
  readonly after: number;
}

/**
 * A low winter Sun that never climbs past the upper height is golden all day: the halves meet at noon. A summer Sun that never
 * sinks below the lower one is golden all night: the morning has begun on the evening before, the evening ends on the morning after.
 */
function goldenHours(
  golden: { from: number; to: number },
  { noon, before, after }: Turns,
  heightAt: (instant: number) => number,
  height: HeightSearch,
  clock: (instant: number | null) => number | null,
): Pick<SunTimes, 'goldenMorning' | 'goldenEvening'> {
  const half = day / 2;
  const top = heightAt(noon);
  const span = (from: number | null, to: number | null) => {
    const [a, b] = [clock(from), clock(to)];
    return a === null || b === null ? null : { from: Math.max(0, a), to: b };
  };
  const isGolden = (lowest: number) => top > golden.from && lowest < golden.to;
  const isUnbroken = (lowest: number) => lowest > golden.from;
  const [lowBefore, lowAfter] = [heightAt(before), heightAt(after)];
  const dayBefore = () => height(-1, golden.to, before - half, 0.5) ?? before - half;
  const dayAfter = () => height(+1, golden.to, after, 0.5) ?? after + half;
  return {
    goldenMorning: isGolden(lowBefore)
      ? span(
          isUnbroken(lowBefore) ? dayBefore() : height(+1, golden.from, before, 0.5),
          top < golden.to ? noon : height(+1, golden.to, before, 0.5),
        )
      : null,
    goldenEvening: isGolden(lowAfter)
      ? span(
          top < golden.to ? noon : height(-1, golden.to, noon, 0.5),
          isUnbroken(lowAfter) ? dayAfter() : height(-1, golden.from, noon, 0.5),
        )
      : null,
  };
}

function search(
  find: (start: Date, limit: number) => { date: Date } | null,
  from: number,
  days: number,
): number | null {
  return find(new Date(from), days)?.date.getTime() ?? null;
}

function middleOf(a: number | null, b: number | null): number | null {
  return a === null || b === null ? null : (a + b) / 2;
}

/** Height of the Sun's centre in degrees, without refraction. */
function sunHeight(observer: Observer, instant: number): number {
  const time = MakeTime(new Date(instant));
  const equator = Equator(Body.Sun, time, observer, true, true);
  return Horizon(time, observer, equator.ra, equator.dec).altitude;
}

/** Minutes from midnight of a date on the clocks of a zone, to the nearest whole minute. */
function toDayMinutes(zone: string, date: CalendarDate, instant: number): number {
  const local = instant + zoneOffset(zone, instant) * 60_000;
  return Math.floor((local - dayNumber(date) * day) / 60_000 + 0.5);
}
