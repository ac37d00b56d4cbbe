import { addDays, dayNumber } from '../base/calendar-date.js';
import { type ClockMinutes, formatClockTime, formatMinutes } from '../base/clock-time.js';
import type { Book, BookDay, BookLocation } from '../book/types.js';
import type { BreakdownScene } from '../breakdown/types.js';
import { findHoursOfDay } from '../trade/hours-of-day.js';
import { shootingTimes } from '../trade/shooting-times.js';
import { findSunTimes } from './daylight.js';
import type { DaySun, LightWindow, SunTimes } from './daylight-types.js';
import type { Slot } from './slot-types.js';

/** A scene of the day with where it stands in it. */
export interface PlacedScene {
  readonly scene: BreakdownScene;
  readonly slot: Slot;
}

/** The Sun at one location on one shooting day, against every exterior scene that is shot there. */
export function lightDay(
  id: string,
  location: BookLocation | null,
  day: BookDay,
  scenes: readonly PlacedScene[],
  book: Book,
): DaySun {
  const name = location?.name ?? id;
  const zone = location?.zone ?? book.zone;
  const coordinates = location?.coordinates ?? null;
  if (coordinates === null || zone === null) {
    const missing = coordinates === null ? 'coordinates (55.61, 12.34)' : 'a time zone (Europe/Copenhagen)';
    return {
      location: id,
      name,
      times: null,
      words: `No sunrise or sunset: write ${missing} for "${id}" in the book.`,
      windows: [],
      clashes: [],
    };
  }
  const times = findSunTimes({ ...coordinates, zone }, day.date, book.goldenHour.value);
  const outside = scenes.filter(({ scene }) => scene.setting !== 'INT');
  // A day that runs past midnight has the light of the next morning too.
  const morning =
    day.wrap.value > 1440 ? findSunTimes({ ...coordinates, zone }, addDays(day.date, 1), book.goldenHour.value) : null;
  const windows = outside.flatMap((one) => windowOf(one, times, morning));
  return {
    location: id,
    name,
    times,
    words: describeSun(times, book.goldenHour.value),
    windows,
    clashes: [
      ...windows.flatMap((one) => judgeWindow(one, day)),
      ...judgeShared(windows, day),
      ...outside.flatMap(judgeHour),
    ],
  };
}

/** The printed line of a day's Sun, with golden hour between the two heights that the book sets. */
export function describeSun(times: SunTimes, golden: { readonly from: number; readonly to: number }): string {
  const at = (label: string, minutes: ClockMinutes | null) =>
    minutes === null ? [] : [`${label} ${formatClockTime(minutes)}`];
  const parts = [
    ...at('first light', times.firstLight),
    ...at('sunrise', times.sunrise),
    ...at('sunset', times.sunset),
    ...at('last light', times.lastLight),
  ];
  const span = (one: SunTimes['goldenMorning']) =>
    one === null ? [] : [`${formatClockTime(one.from)} to ${formatClockTime(one.to)}`];
  const spans = [...span(times.goldenMorning), ...span(times.goldenEvening)];
  const hour = spans.length > 0 ? [`golden (Sun ${golden.from}° to ${golden.to}°) ${spans.join(' and ')}`] : [];
  const remark = times.remark === null ? [] : [times.remark];
  return `${[...parts, ...hour, ...remark].join(', ')}. Level horizon: a ridge may take 20 to 60 minutes more.`;
}

function windowOf({ scene, slot }: PlacedScene, times: SunTimes, morning: SunTimes | null): LightWindow[] {
  if (scene.light === null) return [];
  const next = morning !== null && scene.light === 'dawn' ? stretches('dawn', morning) : [];
  const windows = [
    ...stretches(scene.light, times),
    ...next.map(({ from, to }) => ({ from: from + 1440, to: to + 1440 })),
  ];
  const printed = windows.map(({ from, to }) => `${formatClockTime(from)} to ${formatClockTime(to)}`).join(' or ');
  const words =
    windows.length > 0
      ? `scene ${slot.label} (${scene.light}): ${printed}`
      : `scene ${slot.label} (${scene.light}): ${missingWords(scene.light, times)}`;
  return [{ slot, light: scene.light, windows, words }];
}

/** Why a day has no such light, and what comes nearest. */
function missingWords(light: LightWindow['light'], { remark, sunset, lowest }: SunTimes): string {
  const darkest = `${formatClockTime(((lowest.after % 1440) + 1440) % 1440)}`;
  if (remark === 'the Sun stays up all day') return `the Sun does not set that day; it stands lowest at ${darkest}`;
  if (light === 'day' && remark === 'the Sun stays down all day') return 'the Sun does not rise that day';
  if (light === 'night' && sunset !== null)
    return `it does not get dark: civil twilight lasts all night, and ${darkest} is the darkest`;
  return 'the Sun gives no such light that day';
}

type Stretch = { readonly from: ClockMinutes; readonly to: ClockMinutes };

function stretches(light: LightWindow['light'], times: SunTimes): Stretch[] {
  const { sunrise, sunset, firstLight, lastLight, lowest, goldenMorning, goldenEvening } = times;
  const span = (from: ClockMinutes | null, to: ClockMinutes | null) =>
    from === null || to === null || to <= from ? [] : [{ from, to }];
  switch (light) {
    case 'day':
      return times.remark === 'the Sun stays up all day' ? [{ from: 0, to: 1440 }] : span(sunrise, sunset);
    // Where twilight lasts all night, dusk goes over into dawn when the Sun stands lowest.
    case 'dawn':
      return span(firstLight ?? (sunrise === null ? null : Math.max(0, lowest.before)), goldenMorning?.to ?? sunrise);
    case 'dusk':
      return span(goldenEvening?.from ?? sunset, lastLight ?? (sunset === null ? null : lowest.after));
    case 'night':
      return nightStretches(times);
  }
}

/** The dark before the day and after it; on the edge of the bright nights only one of them is dark. */
function nightStretches({ firstLight, lastLight, lowest, remark }: SunTimes): Stretch[] {
  if (firstLight === null && lastLight === null)
    return remark === 'the Sun stays down all day' ? [{ from: 0, to: 2880 }] : [];
  const before = lastLight === null ? 2 * lowest.before - (firstLight as number) : lastLight - 1440;
  const after = firstLight === null ? 2 * lowest.after - (lastLight as number) : firstLight + 1440;
  return [
    ...(firstLight === null ? [] : [{ from: Math.max(0, before), to: firstLight }]),
    ...(lastLight === null ? [] : [{ from: lastLight, to: after }]),
  ].filter(({ from, to }) => to > from);
}

/** The part of a window between call and wrap. */
function inDay(window: LightWindow, day: BookDay): { from: number; to: number }[] {
  return window.windows
    .map(({ from, to }) => ({ from: Math.max(from, day.call.value), to: Math.min(to, day.wrap.value) }))
    .filter(({ from, to }) => to > from);
}

function judgeWindow(window: LightWindow, day: BookDay): string[] {
  const { slot, light } = window;
  if (window.windows.length === 0) return [`${window.words}.`];
  const usable = inDay(window, day);
  const called = `${formatClockTime(day.call.value)} to ${formatClockTime(day.wrap.value)}`;
  if (usable.length === 0) return [`${window.words}; the day is called ${called}.`];
  const longest = Math.max(...usable.map(({ from, to }) => to - from));
  if (longest < slot.minutes) {
    return [
      `${window.words}; between call and wrap that leaves ${formatMinutes(longest)}, and the scene needs about ${formatMinutes(slot.minutes)}.`,
    ];
  }
  const start = slot.start === null || slot.date === null ? null : (slot.start - dayNumber(slot.date) * 24) * 60;
  if (start === null || light === 'day') return [];
  // Lights and camera are set up before the light comes.
  const fits = usable.some(({ from, to }) => start >= from - shootingTimes.firstSetup && start < to);
  return fits ? [] : [`${window.words}; in this order it would begin about ${formatClockTime(Math.round(start))}.`];
}

/** A heading that names a part of the day, shot at another: the Sun stands on the other side. */
function judgeHour({ scene, slot }: PlacedScene): string[] {
  const hours = scene.light === 'day' && scene.time !== null ? findHoursOfDay(scene.time) : null;
  if (hours === null || slot.start === null || slot.date === null) return [];
  const start = Math.round((slot.start - dayNumber(slot.date) * 24) * 60);
  if (start >= hours.from && start < hours.to) return [];
  return [
    `scene ${slot.label} says ${scene.time} and would begin about ${formatClockTime(start % 1440)}: the light comes from another side. Does it matter?`,
  ];
}

/** Two scenes that want the same short light on one day. */
function judgeShared(windows: readonly LightWindow[], day: BookDay): string[] {
  return (['dawn', 'dusk'] as const).flatMap((light) => {
    const same = windows.filter((window) => window.light === light && window.windows.length > 0);
    if (same.length < 2) return [];
    const wanted = same.reduce((sum, window) => sum + window.slot.minutes, 0);
    const there = Math.max(0, ...inDay(same[0] as LightWindow, day).map(({ from, to }) => to - from));
    if (wanted <= there) return [];
    const names = same.map((window) => window.slot.label).join(' and ');
    return [
      `scenes ${names} want the same ${light}: ${formatMinutes(there)} there, about ${formatMinutes(wanted)} wanted.`,
    ];
  });
}
