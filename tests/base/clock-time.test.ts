import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '../../src/base/calendar-date.js';
import { formatClockTime, formatMinutes, parseClockTime } from '../../src/base/clock-time.js';
import { isTimeZone, toInstant, toWallClock, zoneOffset } from '../../src/base/time-zone.js';

describe('times of day', () => {
  it.each([
    ['7:30', 450],
    ['07:30', 450],
    ['19.15', 1155],
    ['7 am', 420],
    ['12 am', 0],
    ['12:05 pm', 725],
    ['0:00', 0],
  ])('%s', (text, minutes) => {
    expect(parseClockTime(text)).toBe(minutes);
  });

  it.each(['', '7', '24:00', '7:60', '13 pm', '0 am', 'noon'])('%j is none', (text) => {
    expect(parseClockTime(text)).toBeNull();
  });

  it('print, past midnight too', () => {
    expect([formatClockTime(450), formatClockTime(1510), formatClockTime(0)]).toEqual([
      '07:30',
      '01:10 (+1 day)',
      '00:00',
    ]);
    expect([formatMinutes(45), formatMinutes(125), formatMinutes(660)]).toEqual(['45 min', '2 h 05 min', '11 h']);
  });
});

/* Clock changes of the European Union and the United States in 2027, and zones of half hours (IANA time zone data). */
describe('time zones', () => {
  it('know summer time', () => {
    // Central Europe: UTC+1 in winter, +2 from 28 March 2027.
    expect(zoneOffset('Europe/Copenhagen', Date.UTC(2027, 2, 27, 12))).toBe(60);
    expect(zoneOffset('Europe/Copenhagen', Date.UTC(2027, 2, 29, 12))).toBe(120);
    expect(zoneOffset('Asia/Kolkata', 0)).toBe(330);
    expect(zoneOffset('America/New_York', Date.UTC(2027, 6, 1))).toBe(-240);
  });

  it('turn a wall clock into an instant and back', () => {
    for (const zone of ['Europe/Copenhagen', 'America/New_York', 'Asia/Kolkata', 'Pacific/Auckland', 'UTC']) {
      for (const date of ['2027-01-15', '2027-03-28', '2027-07-01', '2027-11-07'] as CalendarDate[]) {
        for (const minutes of [0, 450, 720, 1439])
          expect(toWallClock(zone, toInstant(zone, date, minutes))).toEqual({ date, minutes });
      }
    }
  });

  it('know a name that is none', () => {
    expect([isTimeZone('Europe/Berlin'), isTimeZone('Mars/Base')]).toEqual([true, false]);
  });
});
