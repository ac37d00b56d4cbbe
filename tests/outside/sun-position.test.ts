import { describe, expect, it } from 'vitest';
import { parseCalendarDate } from '../../src/base/calendar-date.js';
import { findSunPosition } from '../../src/plan/sun-position.js';

const date = (text: string) => {
  const parsed = parseCalendarDate(text);
  if (parsed === null) throw new Error(text);
  return parsed;
};

describe('where the Sun stands', () => {
  /*
   * Reda and Andreas, Solar Position Algorithm for Solar Radiation Applications, NREL/TP-560-34302, worked example of the
   * appendix: 17 October 2003, 12:30:30, seven hours behind UTC, 39.742476 N, 105.1786 W: zenith 50.11162°, azimuth 194.34024°.
   */
  it('is as in the worked example of the Solar Position Algorithm', () => {
    const place = { latitude: 39.742476, longitude: -105.1786, zone: 'Etc/GMT+7' };
    const { azimuth, height } = findSunPosition(place, date('2003-10-17'), 12 * 60 + 30.5);
    expect(azimuth).toBeCloseTo(194.34, 1);
    expect(height).toBeCloseTo(90 - 50.11162, 1);
  });

  /* At noon of local solar time the Sun is due south in the north and due north in the south; a day's turn runs opposite ways. */
  it('is south at noon in Denmark and north at noon in New Zealand', () => {
    const noon = findSunPosition({ latitude: 55.6, longitude: 15, zone: 'Etc/GMT-1' }, date('2027-04-15'), 720);
    expect(noon.azimuth).toBeGreaterThan(178);
    expect(noon.azimuth).toBeLessThan(182);
    const south = findSunPosition({ latitude: -41.3, longitude: 180, zone: 'Etc/GMT-12' }, date('2027-04-15'), 720);
    expect(Math.min(south.azimuth, 360 - south.azimuth)).toBeLessThan(2);
  });
});
