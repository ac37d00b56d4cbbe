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
