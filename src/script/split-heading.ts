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

/** Splits what stands behind the setting (rule L3): places, time, qualifiers. Words that tell when are never places. */
export function splitHeading(rest: string): SplitHeading {
  const { body, inside } = takeParentheses(rest.replace(/\s+/g, ' '));
  const { parts, asides } = takeAsides(body.split(dashes).map((part) => part.trim()));
  const brackets = [...asides, ...inside];
  const last = timePart(parts);
  if (last === -1) return withoutTimePart(parts, brackets);
  const whens = parts.map((part, index) => (index > 0 && index < last && isWhen(part) ? part : null));
  const isTime = parts.map((part, index) => index === last || (index > 0 && index < last && readTime(part) !== null));
  // `INT. NIGHT - CONTINUOUS`: the first part is a time too, where the next only says how it follows.
  if (isTime[1] && readTime(parts[1] as string)?.goesOn && readTime(parts[0] as string)) isTime[0] = true;
  const times = parts.filter((_, index) => isTime[index]);
  return {
    placeParts: parts.filter((_, index) => index < last && !isTime[index] && whens[index] === null),
    time: times.map(plainTime).join(' - '),
    light: times.map(lightIn).findLast((light) => light !== null) ?? null,
    qualifiers: [...whens.filter((part) => part !== null), ...parts.slice(last + 1), ...brackets],
    loose: false,
  };
}

const dashes =
  /\s+(?:[-\u2010-\u2015\u2212]+\s+)+|\s*\u2014\s*|^[-:,\u2010-\u2015\u2212]+\s*|\s+[-\u2010-\u2015\u2212]+$/;

/** `DAY (FLASHBACK) - 1985`: a parenthesis behind a time, or one that tells when, is a qualifier wherever it stands. */
function takeAsides(written: readonly string[]): { parts: string[]; asides: string[] } {
  const asides: string[] = [];
  const parts = written.map((part) => {
    const { body, inside } = takeParentheses(part);
    if (inside.length === 0 || (readTime(body) === null && !inside.every(isWhen))) return part;
    asides.push(...inside);
    return body;
  });
  return { parts: parts.filter((part) => part !== ''), asides };
}

/** The last part that is a time; else the last one if it ends in a word of light (FRIDAY NIGHT). -1 when there is none. */
function timePart(parts: readonly string[]): number {
  const known = parts.findLastIndex((part) => readTime(part) !== null);
  const last = parts.length - 1;
  return known === -1 && last > 0 && endsInLight(parts[last] as string) ? last : known;
}

/** A time word without the signs that hang on to it; the stop of P.M. is part of it. */
function plainTime(time: string): string {
  if (/\b[AP]\.M\.$/i.test(time)) return time;
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
  const isQualifier = (part: string, index: number) => index > 0 && isWhen(part);
  return {
    parts: parts.filter((part, index) => !isQualifier(part, index)),
    inside: [...parts.filter(isQualifier), ...inside],
  };
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
