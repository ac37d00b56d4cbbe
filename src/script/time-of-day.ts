import { timeModifiers, timeWords } from '../trade/time-words.js';
import type { Light } from './types.js';

/** What a time word means: its light, or null when the light of the scene before goes on. */
export interface TimeMeaning {
  readonly light: Light | null;
}

const lights = new Map(timeWords.map((row) => [row.word, row.light]));
const modifiers = new Set(timeModifiers);

/** Reads a part of a heading as a time (`NIGHT`, `THE NEXT MORNING`, `DAY 2`); null when it is none. */
export function readTime(part: string): TimeMeaning | null {
  const words = foldTime(part).split(' ');
  if (words.length > 6) return null;
  let known = false;
  let light: Light | null = null;
  for (let at = 0; at < words.length; at += 1) {
    const pair = `${words[at]} ${words[at + 1]}`;
    const isPair = lights.has(pair);
    const word = isPair ? pair : (words[at] as string);
    if (lights.has(word)) {
      known = true;
      light = lights.get(word) ?? light;
    } else if (!modifiers.has(word) && !/^\d{1,4}$/.test(word)) return null;
    if (isPair) at += 1;
  }
  return known ? { light } : null;
}

function foldTime(part: string): string {
  return part
    .trim()
    .replace(/[.,;:]+$/, '')
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
    if (startsWithTime(tail) && readTime(tail)) return text.length - start;
  }
  const glued = /[-–](\p{L}+)[.]?$/u.exec(text);
  return glued && readTime(glued[1] as string) ? (glued[0] as string).length - 1 : 0;
}

/** A bare modifier at the front (`THE DAY`) belongs to the place, save where it speaks of time. */
function startsWithTime(tail: string): boolean {
  const first = foldTime(tail).split(' ')[0] as string;
  return (
    lights.has(first) || /^(?:EARLY|LATE|NEXT|SAME|MOMENTS|MINUTES|HOURS|MAGIC|GOLDEN|BLUE|FIRST|LAST)$/.test(first)
  );
}
