import { type CalendarDate, dayNumber, fromDayNumber } from './calendar-date.js';
import type { ClockMinutes } from './clock-time.js';

const formats = new Map<string, Intl.DateTimeFormat>();

/** True when the name is a zone of the IANA data that this machine has. */
export function isTimeZone(zone: string): boolean {
  try {
    zoneFormat(zone);
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/** Minutes that clocks in the zone are ahead of UTC at an instant (milliseconds since 1970). The zone must exist. */
export function zoneOffset(zone: string, instant: number): number {
  const part = Object.fromEntries(
    zoneFormat(zone)
      .formatToParts(instant)
      .map((one) => [one.type, Number(one.value)]),
  );
  const local = Date.UTC(
    part.year as number,
    (part.month as number) - 1,
    part.day as number,
    part.hour as number,
    part.minute as number,
    part.second as number,
  );
  return Math.round((local - Math.floor(instant / 1000) * 1000) / 60_000);
}

/** The instant of a time of day in a zone. In the hour that a clock change skips or repeats, the earlier reading. */
export function toInstant(zone: string, date: CalendarDate, minutes: ClockMinutes): number {
  const wall = dayNumber(date) * 86_400_000 + minutes * 60_000;
  const guess = wall - zoneOffset(zone, wall) * 60_000;
  return wall - zoneOffset(zone, guess) * 60_000;
}

/** The date in a zone and the minutes since its midnight, rounded to the nearest minute, halves up. */
export function toWallClock(zone: string, instant: number): { date: CalendarDate; minutes: ClockMinutes } {
  const local = Math.floor((instant + zoneOffset(zone, instant) * 60_000) / 60_000 + 0.5);
  const day = Math.floor(local / 1440);
  return { date: fromDayNumber(day), minutes: local - day * 1440 };
}

function zoneFormat(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known) return known;
  const made = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  formats.set(zone, made);
  return made;
}
