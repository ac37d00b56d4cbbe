import { flashbackSpan, wholeTimePart } from '../trade/story-day-words.js';
import { endsInLight, lightIn, readTime, trailingTime } from './time-of-day.js';
import type { Light } from './types.js';

/** What stands behind the setting of a heading. */
export interface SplitHeading {
  readonly placeParts: readonly string[];
  readonly time: string | null;
  readonly light: Light | null;
  readonly qualifiers: readonly string[];
  /** True when no dash stood before the time. */
  readonly loose: boolean;
}

/** Splits what stands behind the setting (rule L3): places, time, qualifiers. */
export function splitHeading(rest: string): SplitHeading {
  const { body, inside } = takeParentheses(rest.replace(/\s+/g, ' '));
  const parts = body
    .split(/\s+(?:[-\u2010-\u2015\u2212]+\s+)+|\s*\u2014\s*|^[-:,\u2010-\u2015\u2212]+\s*|\s+[-\u2010-\u2015\u2212]+$/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const last = timePart(parts);
  if (last === -1) return withoutTimePart(parts, inside);
  const first = firstOfTimes(parts, last);
  const times = parts.slice(first, last + 1);
  return {
    placeParts: parts.slice(0, first),
    time: times.map(plainTime).join(' - '),
    light: times.map(lightIn).find((light) => light !== null) ?? null,
    qualifiers: [...parts.slice(last + 1), ...inside],
    loose: false,
  };
}

/** The last part that is a time; else the last one if it ends in a word of light (FRIDAY NIGHT). -1 when there is none. */
function timePart(parts: readonly string[]): number {
  const known = parts.findLastIndex((part) => readTime(part) !== null);
  const last = parts.length - 1;
  return known === -1 && last > 0 && endsInLight(parts[last] as string) ? last : known;
}

/** `NIGHT - CONTINUOUS` is one time in two words: the light, and how it follows. */
function firstOfTimes(parts: readonly string[], last: number): number {
  let first = last;
  while (first > 0 && readTime(parts[first] as string)?.goesOn && readTime(parts[first - 1] as string)) first -= 1;
  return first;
}

/** A time word without the signs that hang on to it. */
function plainTime(time: string): string {
  return time.replace(/^[-\u2010-\u2015\u2212]+\s*|[.,;:]+$/g, '');
}

/** True when a text holds a time word where a heading would. */
export function hasTime(rest: string): boolean {
  return splitHeading(rest).time !== null;
}

/** No part is a time: look for one at the end of the place, or in the parenthesis. */
function withoutTimePart(written: readonly string[], brackets: readonly string[]): SplitHeading {
  const { parts, inside } = takeQualifiers(written, brackets);
  const tail = parts[parts.length - 1];
  const length = tail === undefined ? 0 : trailingTime(tail);
  if (tail !== undefined && length > 0) {
    const time = plainTime(tail.slice(tail.length - length));
    const placePart = tail.slice(0, tail.length - length).replace(/[\s.,;:\-\u2010-\u2015\u2212]+$/, '');
    const placeParts = [...parts.slice(0, -1), placePart].filter((part) => part !== '');
    return { placeParts, time, light: lightIn(time), qualifiers: inside, loose: true };
  }
  const bracketed = inside.find((one) => readTime(one) !== null) ?? null;
  return {
    placeParts: parts,
    time: bracketed,
    light: bracketed === null ? null : lightIn(bracketed),
    qualifiers: inside.filter((one) => one !== bracketed),
    loose: bracketed !== null,
  };
}

/** `INT. ATTIC - FLASHBACK`: without a time, what only tells when is a qualifier all the same, and no area of the place. */
function takeQualifiers(parts: readonly string[], inside: readonly string[]) {
  const place = parts.findLastIndex((part, index) => index === 0 || !isWhen(part));
  return { parts: parts.slice(0, place + 1), inside: [...parts.slice(place + 1), ...inside] };
}

function isWhen(part: string): boolean {
  return wholeTimePart.test(part) || flashbackSpan.test(part);
}

/** Takes trailing parentheses off; what is inside them is split at commas, save a list of scenes to intercut with. */
function takeParentheses(text: string): { body: string; inside: string[] } {
  let body = text.trim();
  const inside: string[] = [];
  for (let open = trailingParenthesis(body); open !== -1; open = trailingParenthesis(body)) {
    const content = body.slice(open + 1, -1).trim();
    const pieces = /^INTERCUT/i.test(content) ? [content] : content.split(/[,;]/);
    inside.unshift(...pieces.map((piece) => piece.trim()).filter((piece) => piece !== ''));
    body = body.slice(0, open).trim();
  }
  return { body, inside };
}

/** Where the parenthesis that ends a text opens; -1 when none ends it. */
function trailingParenthesis(text: string): number {
  const open = text.endsWith(')') ? text.lastIndexOf('(') : -1;
  return text.indexOf(')', open) === text.length - 1 ? open : -1;
}
