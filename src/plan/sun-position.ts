import { Body, Equator, Horizon, MakeTime, Observer } from 'astronomy-engine';
import type { CalendarDate } from '../base/calendar-date.js';
import { toInstant } from '../base/time-zone.js';
import type { SunPlace } from './daylight.js';

/** Where the Sun stands: degrees from true north over east, and degrees above a level horizon, refraction counted. */
export interface SunPosition {
  readonly azimuth: number;
  readonly height: number;
}

/** The Sun at minutes after a date's midnight on the clocks of the place; a fraction of a minute counts. */
export function findSunPosition(place: SunPlace, date: CalendarDate, minutes: number): SunPosition {
  const observer = new Observer(place.latitude, place.longitude, 0);
  const time = MakeTime(new Date(toInstant(place.zone, date, minutes)));
  const equator = Equator(Body.Sun, time, observer, true, true);
  const { azimuth, altitude } = Horizon(time, observer, equator.ra, equator.dec, 'normal');
  return { azimuth, height: altitude };
}

const winds = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const;

/** The nearest of eight directions in words: each reaches 22.5 degrees to both sides. */
export function compassWords(azimuth: number): (typeof winds)[number] {
  const turn = ((azimuth % 360) + 360) % 360;
  return winds[Math.round(turn / 45) % winds.length] as (typeof winds)[number];
}
