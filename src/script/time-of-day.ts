import { editDistance } from '../base/nearest.js';
import { readNumber } from '../trade/number-words.js';
import { farTimes, timeModifiers, timeWords, weekdays } from '../trade/time-words.js';
import type { Light } from './types.js';

/** What a time in a heading means. */
export interface TimeMeaning {
  readonly light: Light | null;
  /** True for CONTINUOUS, LATER, SAME: the light of the scene before goes on; not for A YEAR LATER or MONDAY. */
  readonly goesOn: boolean;
}

const lights = new Map(timeWords.map((row) => [row.word, row.light]));
const modifiers = new Set(timeModifiers);
const far = new Set([...farTimes, ...weekdays]);

/** Reads a part of a heading as a time (`NIGHT`, `THE NEXT MORNING`, `DAY 2`, `3 AM`); null when it is none. */
export function readTime(part: string): TimeMeaning | null {
  const folded = foldTime(part);
  const words = folded.split(' ');
  if (words.length > 6) return null;
  let known = false;
  let isFar = false;
  let light: Light | null = null;
  for (let at = 0; at < words.length; at += 1) {
    const pair = `${words[at]} ${words[at + 1]}`;
    const isPair = lights.has(pair);
    const word = isPair ? pair : (words[at] as string);
    isFar ||= far.has(word);
    if (lights.has(word)) {
      known = true;
      light = lights.get(word) ?? light;
    } else if (!modifiers.has(word) && readNumber(word) === null) return readClock(folded);
    if (isPair) at += 1;
  }
  return known ? { light, goesOn: light === null && !isFar } : null;
}

/** `3 AM`, `10:30 PM`, `06:00`: a clock tells the light only where every season agrees. */
function readClock(folded: string): TimeMeaning | null {
  const found = /^(\d{1,2})(?:[:.](\d{2}))?\s?(A\.?M\.?|P\.?M\.?)?$/.exec(folded);
  if (!found || (found[2] === undefined && found[3] === undefined)) return null;
  const hour = (Number(found[1]) % (found[3] ? 12 : 24)) + (found[3]?.startsWith('P') ? 12 : 0);
  if (hour >= 9 && hour < 16) return { light: 'day', goesOn: false };
  return { light: hour >= 22 || hour < 4 ? 'night' : null, goesOn: false };
}

/** The light of a time, by its last word when the rest is unknown (FRIDAY NIGHT). */
export function lightIn(time: string): Light | null {
  const meaning = readTime(time);
  return meaning === null ? (lights.get(lastWord(time)) ?? null) : meaning.light;
}

/** True for a part that only ends in a word of light: CHRISTMAS MORNING, FRIDAY NIGHT. */
export function endsInLight(part: string): boolean {
  return (lights.get(lastWord(part)) ?? null) !== null;
}

function lastWord(part: string): string {
  return foldTime(part).split(' ').pop() as string;
}

/** The time word that a text of five letters or more is at most two letters from, a shorter one a single letter. */
export function nearestTime(part: string): string | null {
  const folded = foldTime(part);
  const tolerance = folded.length < 5 ? 1 : 2;
  return [...lights.keys()].find((word) => word[0] === folded[0] && editDistance(word, folded) <= tolerance) ?? null;
}

function foldTime(part: string): string {
  return part
    .trim()
    .replace(/^[-\u2010-\u2015\u2212]+\s*|[.,;:]+$/g, '')
    .replace(/\u2019/g, "'")
    .replace(/\s+/g, ' ')
    .toUpperCase();
}

/** How many characters at the end of a text are a time word that no dash parts from it; 0 when none. */
export function trailingTime(text: string): number {
  const words = [...text.matchAll(/[^\s.,;:]+[.,;:]*/g)];
  for (let count = Math.min(4, words.length - 1); count > 0; count -= 1) {
    const start = words[words.length - count]?.index ?? 0;
    const tail = text.slice(start);
    if (startsWithTime(tail) && isOfTheDay(tail)) return text.length - start;
  }
  const glued = /[-–](\p{L}+)[.]?$/u.exec(text);
  return glued && isOfTheDay(glued[1] as string) ? (glued[0] as string).length - 1 : 0;
}

/** True for a time that tells the light or takes it over: a place may well be called BLUE MONDAY. */
function isOfTheDay(text: string): boolean {
  const time = readTime(text);
  return time !== null && (time.light !== null || time.goesOn || /\d/.test(text));
}

/** A bare modifier at the front (`THE DAY`) belongs to the place, save where it speaks of time. */
function startsWithTime(tail: string): boolean {
  const first = foldTime(tail).split(' ')[0] as string;
  return (
    lights.has(first) || /^(?:EARLY|LATE|NEXT|SAME|MOMENTS|MINUTES|HOURS|MAGIC|GOLDEN|BLUE|FIRST|LAST)$/.test(first)
  );
}
