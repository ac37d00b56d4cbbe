import type { Diagnostic } from '../base/diagnostic.js';
import type { Range } from '../base/text-range.js';
import { sayScript } from '../messages/script.js';
import { type SettingRow, settings } from '../trade/settings.js';
import { headingLeads } from '../trade/story-day-words.js';
import { takeSceneNumber } from './scene-number.js';
import { type SplitHeading, splitHeading } from './split-heading.js';
import { nearestTime, readTime } from './time-of-day.js';
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
  /** What stands before the setting and tells when, as typed with its colon or dash: `FLASHBACK:`. Else empty. */
  readonly lead: string;
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
  const leadAt = number ? number.length : 0;
  const lead = leadPattern.exec(text.slice(leadAt))?.[0] ?? '';
  const settingAt = leadAt + lead.length;
  const found = settingPattern.exec(text.slice(settingAt));
  const start = found && makeStart(found, settingAt, number?.number ?? null);
  return start && { ...start, lead: lead.trim() };
}

const leadPattern = new RegExp(
  `^(?:${headingLeads.map((row) => row.words.source).join('|')})(?:\\s*:\\s*|\\s*[-\u2010-\u2015]+\\s*)`,
  'i',
);

/** The qualifier that the words before a setting stand for. */
function leadQualifiers(lead: string): string[] {
  const words = lead.replace(/[\s:\-\u2010-\u2015]+$/, '');
  return headingLeads
    .filter((row) => new RegExp(`^(?:${row.words.source})$`, 'i').test(words))
    .map((row) => row.qualifier);
}

function makeStart(found: RegExpExecArray, settingAt: number, number: string | null): Omit<SceneStart, 'lead'> | null {
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
  const typed = line.text.slice(start.settingAt, start.restAt).trim();
  // `INT.CAR` prints with the space it lacks.
  const text = `${start.lead}${start.lead === '' ? '' : ' '}${typed}${/^[:,]/.test(rest) ? '' : ' '}${rest}`.trim();
  const two = splitSecondSetting(rest);
  const split = two === null ? splitHeading(rest) : joinSplits(splitHeading(two.first), splitHeading(two.second));
  const setting = two === null ? start.row.setting : joinSettings(start.row.setting, two.setting);
  if (two !== null) messages.push(sayScript('heading-two-settings', { place: split.placeParts.join(' - ') }, line.at));
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
    setting,
    place: split.placeParts.join(' - '),
    placeParts: split.placeParts,
    time: split.time,
    light: split.light,
    inheritsLight: split.light === null && split.time !== null && goesOn(split.time),
    qualifiers: [...new Set([...leadQualifiers(start.lead), ...split.qualifiers])],
  };
}

const secondSetting = /(?:\/|&|\+|\s(?:AND|TO)\s)\s?((?:INT|EXT)(?:\.?\/(?:INT|EXT))?)(?:\.\s?|\s)(?=\S)/i;

/** `H - DAY / EXT. G - DAY`: a second setting behind the place of the first; null when there is none. */
function splitSecondSetting(written: string): { first: string; second: string; setting: string } | null {
  const rest = written.replace(/\s+/g, ' ').trim();
  const found = secondSetting.exec(rest);
  if (!found || found.index === 0) return null;
  const setting = (found[1] as string).replace('.', '').toUpperCase();
  return { first: rest.slice(0, found.index), second: rest.slice(found.index + found[0].length), setting };
}

/** One heading of two: the places beside each other, the time of the first, save that a night in either raises its cautions. */
function joinSplits(first: SplitHeading, second: SplitHeading): SplitHeading {
  const told = first.time === null || (second.light === 'night' && first.light !== 'night') ? second : first;
  const other = told === first ? second : first;
  const places = [first, second].map(({ placeParts }) => placeParts.join(' - ')).filter((place) => place !== '');
  const otherTime = other.time === null || other.time === told.time ? [] : [other.time];
  return {
    placeParts: [...new Set(places)].length > 0 ? [[...new Set(places)].join(' / ')] : [],
    time: told.time,
    light: told.light,
    qualifiers: [...new Set([...first.qualifiers, ...otherTime, ...second.qualifiers])],
    loose: told.loose,
  };
}

function joinSettings(first: Setting, second: string): Setting {
  return first === second ? first : 'INT/EXT';
}

function goesOn(time: string): boolean {
  return time.split(' - ').every((one) => readTime(one)?.goesOn === true);
}

function dropEqualNumber(rest: string, number: string): string {
  const trimmed = rest.trimEnd();
  const tail = new RegExp(`\\s${number}[.)]?$`).exec(trimmed);
  return tail ? trimmed.slice(0, tail.index).trimEnd() : trimmed;
}

/** The time word that the last part behind a dash is a letter or two from; null when none is near. */
function meantTime(parts: readonly string[]): string | null {
  return parts.length > 1 ? nearestTime(parts[parts.length - 1] as string) : null;
}
