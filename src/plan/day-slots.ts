import type { BookDay } from '../book/types.js';
import type { BreakdownScene } from '../breakdown/types.js';
import { dressingMinutes, minutesBetween } from './dressing-time.js';

/** A scene of a day with the shooting minutes reckoned for it. */
export interface WantedScene {
  readonly scene: BreakdownScene;
  readonly minutes: number;
}

/** When a scene is shot, in clock minutes from midnight of its day. */
export interface SceneTime {
  readonly start: number;
  readonly end: number;
}

/** Scenes between two times that are fixed: by the book, by the call or by the wrap. */
interface Stretch {
  readonly first: number;
  /** One past the last. */
  readonly stop: number;
  readonly from: number;
  readonly until: number;
}

/**
 * Gives each scene of a day its time: one that has a beginning in the book begins then; the scenes between two such times,
 * and from call to wrap, share the time by the minutes each one needs. The people of the first scene are dressed before it, and
 * between two scenes there is time for whoever changes clothes, as far as the day has it.
 */
export function shareDay(
  scenes: readonly WantedScene[],
  begins: readonly (number | null)[],
  day: BookDay,
): { readonly times: readonly SceneTime[]; readonly dressedFrom: number } {
  const dressing = Math.max(0, ...(scenes[0]?.scene.wears ?? []).map(dressingMinutes));
  // A first time that the book gives is its own; the wrap is never overrun by dressing.
  let at = Math.min(day.call.value + dressing, begins.find((one) => one !== null) ?? day.wrap.value);
  const times: SceneTime[] = [];
  while (times.length < scenes.length) {
    const first = times.length;
    const next = begins.findIndex((one, place) => place > first && one !== null);
    const stop = next < 0 ? scenes.length : next;
    const until = next < 0 ? day.wrap.value : (begins[next] as number);
    times.push(...shareStretch(scenes, { first, stop, from: begins[first] ?? at, until }));
    at = times.at(-1)?.end ?? at;
  }
  const start = times[0]?.start ?? at;
  return { times, dressedFrom: Math.max(day.call.value, start - dressing) };
}

function shareStretch(scenes: readonly WantedScene[], { first, stop, from, until }: Stretch): SceneTime[] {
  const here = scenes.slice(first, stop);
  const wanted = here.reduce((sum, one) => sum + one.minutes, 0);
  const there = Math.max(0, until - from);
  const gaps = listGaps(scenes, { first, stop, from, until }, wanted > 0 ? there / wanted : 0);
  const changing = gaps.reduce((sum, gap) => sum + gap, 0);
  const factor = wanted > 0 ? (there - changing) / wanted : 0;
  let at = from;
  return here.map(({ minutes }, index) => {
    const start = at + (gaps[index] ?? 0);
    const end = start + minutes * factor;
    at = end;
    return { start, end };
  });
}

/**
 * Minutes before each scene of a stretch, and before the one that ends it, in which clothes are changed: none where the time that
 * the day has to spare is enough, and none where the day has no time at all.
 */
function listGaps(scenes: readonly WantedScene[], { first, stop, from, until }: Stretch, factor: number): number[] {
  const pace = Math.min(1, factor);
  const places = Array.from({ length: stop - first + 1 }, (_, index) => first + index);
  const gaps = places.map((at) => (at === first || at >= scenes.length ? 0 : changeBefore(scenes, at, pace)));
  const isSpare = (gap: number, index: number) =>
    gap <= Math.max(0, factor - 1) * (scenes[first + index - 1]?.minutes ?? 0);
  const sum = gaps.reduce((all, gap) => all + gap, 0);
  return gaps.every(isSpare) || sum >= until - from ? gaps.map(() => 0) : gaps;
}

/** Minutes that must lie between a scene of the day and the one before it, for whoever wears other clothes. */
function changeBefore(scenes: readonly WantedScene[], at: number, pace: number): number {
  const wears = scenes[at]?.scene.wears ?? [];
  const minutes = wears.map((later) => {
    const before = scenes.findLastIndex(
      ({ scene }, place) => place < at && scene.wears.some((one) => one.person === later.person),
    );
    const earlier = scenes[before]?.scene.wears.find((one) => one.person === later.person);
    if (!earlier) return 0;
    const between = scenes.slice(before + 1, at).reduce((sum, one) => sum + one.minutes * pace, 0);
    return minutesBetween(earlier, later) - between;
  });
  return Math.max(0, ...minutes);
}
