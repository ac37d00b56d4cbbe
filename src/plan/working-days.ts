import { addDays, type CalendarDate, weekdayOf } from '../base/calendar-date.js';

const order = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;

/** The days on which a supplier works and delivers: days of the week (0 = Sunday) less a list of holidays. */
export interface WorkCalendar {
  readonly weekdays: readonly number[];
  readonly holidays: ReadonlySet<CalendarDate>;
}

/** True when the supplier works on a date. */
export function isWorkingDay(date: CalendarDate, calendar: WorkCalendar): boolean {
  return calendar.weekdays.includes(order.indexOf(weekdayOf(date))) && !calendar.holidays.has(date);
}

/** The date itself when it is a working day, else the last one before it. */
export function lastWorkingDay(date: CalendarDate, calendar: WorkCalendar): CalendarDate {
  let day = date;
  // A calendar that never works would search for ever: after ten years the date stands as it is.
  for (let tries = 0; tries < 3660; tries++) {
    if (isWorkingDay(day, calendar)) return day;
    day = addDays(day, -1);
  }
  return date;
}

/** The working day from which `count` working days pass until `date`: of Friday and 4, the Monday of that week. */
export function subtractWorkingDays(date: CalendarDate, count: number, calendar: WorkCalendar): CalendarDate {
  let day = lastWorkingDay(date, calendar);
  for (let left = count; left > 0; left--) day = lastWorkingDay(addDays(day, -1), calendar);
  return day;
}

/** The working day on which something ordered on `date` is there after `count` working days: ordered on a day off, it goes out on the next working day. */
export function addWorkingDays(date: CalendarDate, count: number, calendar: WorkCalendar): CalendarDate {
  let day = nextWorkingDay(date, calendar);
  for (let left = count; left > 0; left--) day = nextWorkingDay(addDays(day, 1), calendar);
  return day;
}

/** The date itself when it is a working day, else the first one after it. */
export function nextWorkingDay(date: CalendarDate, calendar: WorkCalendar): CalendarDate {
  let day = date;
  for (let tries = 0; tries < 3660; tries++) {
    if (isWorkingDay(day, calendar)) return day;
    day = addDays(day, 1);
  }
  return date;
}
