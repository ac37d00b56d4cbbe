/** A calendar date as ISO 8601 writes it, `2027-03-12`: no time, no zone. Text order is time order. */
export type CalendarDate = string & { readonly brand: 'calendar date' };

const msPerDay = 86_400_000;
const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;
const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** A day of the week, in English, shortened. */
export type Weekday = (typeof weekdays)[number];

/** Reads `2027-03-12`; null when it is no date of the calendar (30 February) or written otherwise. Years 1900 to 2999. */
export function parseCalendarDate(text: string): CalendarDate | null {
  const parts = /^([12]\d{3})-(\d{2})-(\d{2})$/.exec(text.trim());
  if (!parts) return null;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  if (year < 1900) return null;
  const date = new Date(Date.UTC(year, month - 1, day));
  const same = date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return same ? (text.trim() as CalendarDate) : null;
}

/** The date `days` calendar days later (earlier when negative). */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  return fromDayNumber(dayNumber(date) + days);
}

/** Calendar days from `from` to `to`: negative when `to` is earlier. */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return dayNumber(to) - dayNumber(from);
}

/** The day of the week of a date. */
export function weekdayOf(date: CalendarDate): Weekday {
  return weekdays[(((dayNumber(date) + 4) % 7) + 7) % 7] as Weekday;
}

/** Days since 1 January 1970. */
export function dayNumber(date: CalendarDate): number {
  return Math.round(
    Date.UTC(Number(date.slice(0, 4)), Number(date.slice(5, 7)) - 1, Number(date.slice(8, 10))) / msPerDay,
  );
}

/** The date so many days after 1 January 1970. */
export function fromDayNumber(days: number): CalendarDate {
  return new Date(days * msPerDay).toISOString().slice(0, 10) as CalendarDate;
}

/** Prints a date for a sheet: `Fri 12 March 2027`. */
export function formatDate(date: CalendarDate): string {
  return `${formatShortDate(date)} ${date.slice(0, 4)}`;
}

/** Prints a date without its year: `Fri 12 March`. */
export function formatShortDate(date: CalendarDate): string {
  return `${weekdayOf(date)} ${Number(date.slice(8, 10))} ${months[Number(date.slice(5, 7)) - 1]}`;
}

/** The earlier of two dates, null counting as "no date". */
export function earliest(a: CalendarDate | null, b: CalendarDate | null): CalendarDate | null {
  if (a === null) return b;
  if (b === null) return a;
  return a < b ? a : b;
}

/** The later of two dates. */
export function latest(a: CalendarDate, b: CalendarDate): CalendarDate {
  return a > b ? a : b;
}
