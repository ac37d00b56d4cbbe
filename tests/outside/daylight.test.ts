import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '../../src/base/calendar-date.js';
import { findSunTimes } from '../../src/plan/daylight.js';

/*
 * Sunrise, sunset and twilight as the US Naval Observatory publishes them, to the whole minute
 * (aa.usno.navy.mil/data/RS_OneYear; copies in public test data). The zones are fixed offsets, as in the tables.
 */
const golden = { from: -4, to: 6 };
const minutes = (text: string) => {
  const [, hours, rest, next] = /^(\d\d):(\d\d)( \+1)?$/.exec(text) as RegExpExecArray;
  return Number(hours) * 60 + Number(rest) + (next ? 1440 : 0);
};
const near = (found: number | null, expected: string) => {
  expect(found, expected).not.toBeNull();
  expect(Math.abs((found as number) - minutes(expected)), `${found} against ${expected}`).toBeLessThanOrEqual(1);
};
const sun = (latitude: number, longitude: number, date: string, zone: string) =>
  findSunTimes({ latitude, longitude, zone }, date as CalendarDate, golden);

describe('US Naval Observatory, sunrise and sunset', () => {
  it.each([
    ['Fredonia', 36.95, -112.52, '2023-01-01', 'Etc/GMT+7', '07:43', '17:24'],
    ['Fredonia', 36.95, -112.52, '2023-03-20', 'Etc/GMT+7', '06:34', '18:42'],
    ['Fredonia', 36.95, -112.52, '2023-06-21', 'Etc/GMT+7', '05:11', '19:53'],
    ['Fredonia', 36.95, -112.52, '2023-12-21', 'Etc/GMT+7', '07:39', '17:17'],
    ['San Francisco, leap day', 37 + 46 / 60, -(122 + 26 / 60), '2012-02-29', 'Etc/GMT+8', '06:42', '18:03'],
    ['San Francisco', 37 + 46 / 60, -(122 + 26 / 60), '2012-06-20', 'Etc/GMT+8', '04:48', '19:35'],
    ['San Francisco', 37 + 46 / 60, -(122 + 26 / 60), '2012-12-21', 'Etc/GMT+8', '07:22', '16:55'],
    ['Toronto', 43 + 40 / 60, -(79 + 25 / 60), '2001-04-01', 'Etc/GMT+4', '06:59', '19:45'],
    ['Toronto', 43 + 40 / 60, -(79 + 25 / 60), '2001-04-30', 'Etc/GMT+4', '06:11', '20:19'],
    ['60 N, 0 E', 60, 0, '2019-03-20', 'UTC', '06:03', '18:14'],
    ['60 N, 0 E', 60, 0, '2019-06-21', 'UTC', '02:36', '21:28'],
    ['60 N, 0 E', 60, 0, '2019-12-21', 'UTC', '09:02', '14:54'],
    ['29 N, 81 W', 29, -81, '2019-12-21', 'UTC', '12:13', '22:31'],
    ['60 S, 150 W', -60, -150, '2019-06-21', 'UTC', '19:06', '00:58 +1'],
    ['60 S, 150 W', -60, -150, '2019-12-21', 'UTC', '12:32', '07:24 +1'],
  ])('%s, %f, %f on %s', (_, latitude, longitude, date, zone, rise, set) => {
    const times = sun(latitude, longitude, date, zone);
    near(times.sunrise, rise);
    near(times.sunset, set);
  });

  it.each(['2022-01-01', '2022-01-15', '2022-01-31'])('at 88 S, 45 E the Sun is up all day on %s', (date) => {
    expect(sun(-88, 45, date, 'UTC')).toMatchObject({
      sunrise: null,
      sunset: null,
      remark: 'the Sun stays up all day',
    });
  });

  it.each(['2022-05-01', '2022-05-15', '2022-05-31'])('at 88 S, 45 E the Sun is down all day on %s', (date) => {
    expect(sun(-88, 45, date, 'UTC')).toMatchObject({
      sunrise: null,
      sunset: null,
      remark: 'the Sun stays down all day',
    });
  });
});

describe('US Naval Observatory, civil twilight', () => {
  it('Boston, 21 June 2024: 08:33 to 00:59 UTC', () => {
    const times = sun(42.32, -71.09, '2024-06-21', 'UTC');
    near(times.firstLight, '08:33');
    near(times.lastLight, '00:59 +1');
  });
});

describe('National Renewable Energy Laboratory, Solar Position Algorithm, worked example', () => {
  it('39.742476 N, 105.1786 W, 17 October 2003, UTC-7: sunrise 06:12:43', () => {
    // Reda and Andreas 2004. Their sunset belongs to the UTC day and is not compared.
    near(sun(39.742476, -105.1786, '2003-10-17', 'Etc/GMT+7').sunrise, '06:13');
  });
});

describe('US Naval Observatory, Almanac for Computers 1990, worked example', () => {
  it('Wayne, New Jersey, 25 June 1990: sunrise 05:26 daylight time', () => {
    near(sun(40.9, -74.3, '1990-06-25', 'America/New_York').sunrise, '05:26');
  });
});

describe('bright nights of the north', () => {
  // The Sun stands lowest at latitude + declination − 90 (any textbook of spherical astronomy); the declination of the June
  // solstice is 23.44 (Astronomical Almanac).
  it('Fairbanks, 21 June: it sets, but sinks to 64.84 + 23.44 − 90 = −1.7 degrees only', () => {
    const times = sun(64.84, -147.72, '2027-06-21', 'America/Anchorage');
    // US Naval Observatory, Fairbanks, 21 June (from memory): 02:57 to 00:47.
    near(times.sunrise, '02:57');
    near(times.sunset, '00:47 +1');
    expect(times).toMatchObject({ firstLight: null, lastLight: null, remark: 'no dark: civil twilight all night' });
    // Never below −4: golden from the evening until the morning after, and since the midnight that begins the date.
    expect(times.goldenMorning?.from).toBe(0);
    expect(times.goldenEvening?.to).toBe((times.goldenMorning?.to ?? 0) + 1440);
    expect(times.goldenEvening?.from).toBeLessThan(times.sunset ?? 0);
    // Lowest half way between sunset and sunrise: (24:47 + 26:57) / 2 = 25:52.
    near(times.lowest.after, '01:52 +1');
  });

  it('Trondheim, 18 June: −3.2 degrees, golden all night', () => {
    // 63.43 + 23.40 − 90 = −3.2. Local noon: 12:00 + 1 min of the equation of time − 10.40 × 4 min + 2 h of the zone = 13:19; lowest 01:19.
    const times = sun(63.43, 10.4, '2027-06-18', 'Europe/Oslo');
    expect([times.lastLight, times.remark]).toEqual([null, 'no dark: civil twilight all night']);
    near(times.lowest.before, '01:19');
    expect(times.goldenEvening?.to).toBeGreaterThan(1440 + times.lowest.before);
  });

  it('North Cape, 20 June: up all day, and golden while it is lowest', () => {
    // 71.17 + 23.44 − 90 = 4.6: between −4 and 6. Local midnight: 00:00 + 1 min − 25.78 × 4 min + 2 h = 00:18.
    const times = sun(71.17, 25.78, '2027-06-20', 'Europe/Oslo');
    expect([times.sunset, times.remark]).toEqual([null, 'the Sun stays up all day']);
    near(times.lowest.before, '00:18');
    expect(times.goldenEvening?.from).toBeLessThan(1440);
    expect(times.goldenMorning?.to).toBeGreaterThan(times.lowest.before);
  });

  it('85 N, 20 June: too high to be golden at any hour', () => {
    // 85 + 23.44 − 90 = 18.4.
    expect(sun(85, 20, '2027-06-20', 'UTC')).toMatchObject({ goldenMorning: null, goldenEvening: null });
  });

  it('Oslo, 21 June: dark enough to end civil twilight, so nothing is unbroken', () => {
    // 59.91 + 23.44 − 90 = −6.65.
    const times = sun(59.91, 10.75, '2027-06-21', 'Europe/Oslo');
    expect(times.remark).toBeNull();
    expect(times.goldenEvening?.to).toBeLessThan(times.lastLight ?? 0);
  });
});
