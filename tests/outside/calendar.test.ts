import Holidays from 'date-holidays';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  type CalendarDate,
  dayNumber,
  daysBetween,
  formatDate,
  fromDayNumber,
  parseCalendarDate,
  weekdayOf,
} from '../../src/base/calendar-date.js';
import { isWorkingDay, lastWorkingDay, subtractWorkingDays } from '../../src/plan/working-days.js';

const weekdays = [1, 2, 3, 4, 5];

/* US federal holidays of 2027 as the Office of Personnel Management publishes them (opm.gov, from memory). */
const opm2027 = [
  '2027-01-01',
  '2027-01-18',
  '2027-02-15',
  '2027-05-31',
  '2027-06-18',
  '2027-07-05',
  '2027-09-06',
  '2027-10-11',
  '2027-11-11',
  '2027-11-25',
  '2027-12-24',
  // New Year's Day of 2028 falls on a Saturday and is observed on the Friday before.
  '2027-12-31',
] as CalendarDate[];

describe('working days against the calendar of the US Office of Personnel Management', () => {
  const calendar = { weekdays, holidays: new Set(opm2027) };

  it('gives the 249 working days of 2027', () => {
    // 365 days from a Friday: 52 weeks and that Friday: 261 weekdays; 12 days off, all of them weekdays: 249.
    const days = Array.from({ length: 365 }, (_, index) => addDays('2027-01-01' as CalendarDate, index));
    expect(days.filter((day) => isWorkingDay(day, calendar))).toHaveLength(249);
  });

  it('counts back over Thanksgiving', () => {
    // From Mon 29 November 2027: Fri 26 (1), Wed 24 (2), for Thu 25 is Thanksgiving.
    expect(subtractWorkingDays('2027-11-29' as CalendarDate, 2, calendar)).toBe('2027-11-24');
  });

  it('counts back over Independence Day, observed on Mon 5 July', () => {
    expect(subtractWorkingDays('2027-07-06' as CalendarDate, 1, calendar)).toBe('2027-07-02');
  });
});

describe('working days against the date-holidays library, England and Denmark', () => {
  it.each([
    ['GB', 'ENG'],
    ['DK', undefined],
  ])('%s %s, 2026 to 2029', (country, state) => {
    const library = state ? new Holidays(country, state) : new Holidays(country);
    const dates = [2026, 2027, 2028, 2029].flatMap((year) =>
      library
        .getHolidays(year)
        .filter((one) => one.type === 'public')
        .map((one) => one.date.slice(0, 10) as CalendarDate),
    );
    const calendar = { weekdays, holidays: new Set(dates) };
    const isOff = (date: CalendarDate) =>
      [0, 6].includes(new Date(`${date}T12:00:00Z`).getUTCDay()) || dates.includes(date);
    for (let day = '2026-01-05' as CalendarDate; day < '2029-12-20'; day = addDays(day, 1)) {
      expect(isWorkingDay(day, calendar), day).toBe(!isOff(day));
      const back = subtractWorkingDays(day, 3, calendar);
      const last = lastWorkingDay(day, calendar);
      let between = 0;
      for (let one = back; one < last; one = addDays(one, 1)) if (!isOff(one)) between++;
      expect(between, `${back} to ${last}`).toBe(3);
    }
  });
});

describe('calendar dates against the platform', () => {
  it('adds days, and knows the day of the week', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 300_000 }), fc.integer({ min: -4000, max: 4000 }), (start, days) => {
        const date = fromDayNumber(start);
        const later = addDays(date, days);
        expect(daysBetween(date, later)).toBe(days);
        expect(dayNumber(later)).toBe(start + days);
        expect(weekdayOf(date)).toBe(
          new Intl.DateTimeFormat('en', { weekday: 'short', timeZone: 'UTC' }).format(start * 86_400_000),
        );
      }),
    );
  });

  it.each(['2027-02-29', '2027-13-01', '2027-04-31', '27-01-01', '2027-1-1', '1899-12-31', 'soon'])(
    '%s is no date',
    (text) => {
      expect(parseCalendarDate(text)).toBeNull();
    },
  );

  it('prints a date for a sheet', () => {
    expect(formatDate('2027-03-12' as CalendarDate)).toBe('Fri 12 March 2027');
    expect(parseCalendarDate('2028-02-29')).toBe('2028-02-29');
  });
});
