import type { Diagnostic } from '../base/diagnostic.js';
import type { Range } from '../base/text-range.js';
import { sayScript } from '../messages/script.js';
import { type SettingRow, settings } from '../trade/settings.js';
import { takeSceneNumber } from './scene-number.js';
import { endsInLight, lightIn, nearestTime, readTime, trailingTime } from './time-of-day.js';
import type { Light, Line, Setting } from './types.js';

/** A heading taken apart, before the light is carried from the scene above. */
export interface HeadingParts {
  readonly text: string;
  readonly number: string | null;
  readonly setting: Setting;
  readonly place: string;
  readonly placeParts: readonly string[];
  readonly time: string | null;
  readonly light: Light | null;
  /** True when the light of the scene before goes on: CONTINUOUS, LATER, SAME. */
  readonly inheritsLight: boolean;
  readonly qualifiers: readonly string[];
}

/** The start of a scene line: its number and setting, and where the rest begins. */
export interface SceneStart {
  readonly number: string | null;
  readonly row: SettingRow;
  /** The setting as typed. */
  readonly written: string;
  /** Where the setting and the rest begin in the text. */
  readonly settingAt: number;
  readonly restAt: number;
}

const settingPattern = new RegExp(
  `^(${settings.map((row) => row.written.split('/').join('\\.?\\s?/\\s?')).join('|')})(?:\\.\\s*|(?=[\\s:,\\-–—])|$)`,
  'i',
);

/** Reads the number and setting at the start of a line; null when the line is no scene. Case is left to the caller. */
export function matchSceneStart(text: string): SceneStart | null {
  const number = takeSceneNumber(text);
  const settingAt = number ? number.length : 0;
  const found = settingPattern.exec(text.slice(settingAt));
  return found && makeStart(found, settingAt, number?.number ?? null);
}

function makeStart(found: RegExpExecArray, settingAt: number, number: string | null): SceneStart | null {
  const written = found[1] as string;
  const key = written.replace(/[\s.]/g, '').toUpperCase();
  const row = settings.find((one) => one.written === key);
  if (!row) return null;
  return { number, row, written, settingAt, restAt: settingAt + found[0].length };
}

/** Takes the heading line of a scene apart (rules L3 and L4). */
export function readHeading(
  line: Line,
  start: SceneStart,
  placeOf: (from: number, to: number) => Range,
  messages: Diagnostic[],
): HeadingParts {
  let rest = line.text.slice(start.restAt);
  if (start.number) rest = dropEqualNumber(rest, start.number);
  const text = line.text.slice(start.settingAt, start.restAt + rest.length).trim();
  const split = splitHeading(rest);
  if (split.loose) messages.push(sayScript('heading-no-dash', { time: split.time ?? '' }, line.at));
  if (start.row.inFull) {
    const short = { written: start.written, short: start.row.setting };
    messages.push(
      sayScript('heading-setting-in-full', short, placeOf(start.settingAt, start.settingAt + start.written.length)),
    );
  }
  if (split.placeParts.length === 0) messages.push(sayScript('heading-no-place', undefined, line.at));
  if (split.time === null) messages.push(sayScript('heading-no-time', { meant: meantTime(split.placeParts) }, line.at));
  return {
    text: text.replace(/\s+/g, ' ').toUpperCase(),
    number: start.number,
    setting: start.row.setting,
    place: split.placeParts.join(' - '),
    placeParts: split.placeParts,
    time: split.time,
    light: split.light,
    inheritsLight: split.light === null && split.time !== null && goesOn(split.time),
    qualifiers: split.qualifiers,
  };
}

function goesOn(time: string): boolean {
  return time.split(' - ').every((one) => readTime(one)?.goesOn === true);
}

/** True when a text holds a time word where a heading would. */
export function hasTime(rest: string): boolean {
  return splitHeading(rest).time !== null;
}

function dropEqualNumber(rest: string, number: string): string {
  const trimmed = rest.trimEnd();
  const tail = new RegExp(`\\s${number}[.)]?$`).exec(trimmed);
  return tail ? trimmed.slice(0, tail.index).trimEnd() : trimmed;
}

interface SplitHeading {
  readonly placeParts: readonly string[];
  readonly time: string | null;
  readonly light: Light | null;
  readonly qualifiers: readonly string[];
  /** True when no dash stood before the time. */
  readonly loose: boolean;
}

function splitHeading(rest: string): SplitHeading {
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

/** The time word that the last part behind a dash is a letter or two from; null when none is near. */
function meantTime(parts: readonly string[]): string | null {
  return parts.length > 1 ? nearestTime(parts[parts.length - 1] as string) : null;
}

/** No part is a time: look for one at the end of the place, or in the parenthesis. */
function withoutTimePart(parts: readonly string[], inside: readonly string[]): SplitHeading {
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

/** Takes trailing parentheses off; what is inside them is split at commas, save a list of scenes to intercut with. */
function takeParentheses(text: string): { body: string; inside: string[] } {
  let body = text.trim();
  const inside: string[] = [];
  for (let found = trailingParenthesis(body); found; found = trailingParenthesis(body)) {
    const content = (found[1] as string).trim();
    const pieces = /^INTERCUT/i.test(content) ? [content] : content.split(/[,;]/);
    inside.unshift(...pieces.map((piece) => piece.trim()).filter((piece) => piece !== ''));
    body = body.slice(0, found.index).trim();
  }
  return { body, inside };
}

function trailingParenthesis(text: string): RegExpExecArray | null {
  const open = text.endsWith(')') ? text.lastIndexOf('(') : -1;
  if (open === -1) return null;
  const found = /^\(([^()]*)\)$/.exec(text.slice(open));
  if (found) found.index = open;
  return found;
}
