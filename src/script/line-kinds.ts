import { transitions } from '../trade/transitions.js';
import type { RawLine } from './raw-line.js';
import { matchSceneStart, type SceneStart } from './scene-heading.js';
import { sceneNumber } from './scene-number.js';
import { hasTime } from './split-heading.js';

const known = new Set(transitions.map((row) => row.written));
const longestTransition = 60;

/** True for a transition: capitals, and ends in `TO:` or stands in the table (rule L6). */
export function isTransition(text: string): boolean {
  if (text.length > longestTransition || /\p{Ll}/u.test(text)) return false;
  if (/(?:^|\s)TO:$/.test(text) || lacksColon(text)) return true;
  return known.has(text.replace(/^\((.*)\)$/, '$1').replace(/[:.]+$/, ''));
}

/** True for `CUT TO` and its kin alone on a line, whose colon is missing. */
export function lacksColon(text: string): boolean {
  return /^(?:[A-Z]+ ){0,2}(?:CUT|FADE|DISSOLVE|WIPE|MIX) TO\.?$/.test(text);
}

const omitted = new RegExp(
  `^(?:SCENE\\s+)?(${sceneNumber}(?:\\s*[-–]\\s*${sceneNumber})?)[.):]?\\s*[-–—]?\\s*\\(?(?:SCENE\\s+)?OMITTED\\)?\\.?$`,
  'i',
);

/** The number of a line such as `14 OMITTED`; null when it is none (rule L4). */
export function readOmitted(line: RawLine): string | null {
  if (!/omitted/i.test(line.text) || line.text.length > 40) return null;
  return omitted.exec(fullText(line))?.[1] ?? null;
}

/** The text with a list number before it, as typed. */
function fullText(line: RawLine): string {
  const number = itemNumber(line);
  return number === null ? line.text : `${number} ${line.text}`;
}

/** The sign of a numbered list item (`12.`) as typed; null for bullets and for lines that are no item. */
export function itemSign(line: RawLine): string | null {
  if (line.kind !== 'item') return null;
  const sign = line.sign.split(/\s/).pop() as string;
  return /^\d+[.)]$/.test(sign) ? sign : null;
}

function itemNumber(line: RawLine): string | null {
  return itemSign(line)?.slice(0, -1) ?? null;
}

/** A scene line, with what makes it odd. */
export interface SceneLine {
  readonly start: SceneStart;
  /** True when `#` signs stand before it without a space. */
  readonly glued: boolean;
}

/** Reads a line as the start of a scene (rule L2); null when it is none. */
export function readSceneLine(line: RawLine): SceneLine | null {
  if (line.kind === 'note') return null;
  const signs = line.kind === 'heading' ? '' : (/^#+\s*/.exec(line.text)?.[0] ?? '');
  const found = matchSceneStart(line.text.slice(signs.length));
  if (!found) return null;
  const start = {
    ...found,
    number: found.number ?? itemNumber(line),
    settingAt: found.settingAt + signs.length,
    restAt: found.restAt + signs.length,
  };
  // INTERIOR MONOLOGUE is no scene: the words in full need a time with them.
  if (start.row.inFull && !hasTime(line.text.slice(start.restAt))) return null;
  const isHeading = line.kind === 'heading' || signs !== '';
  const typed = start.lead + start.written;
  if (!isHeading && typed !== typed.toUpperCase()) return null;
  return { start, glued: signs !== '' };
}

/** The setting as typed when a line of action looks like a scene line in small letters; null otherwise. */
export function smallLetterScene(line: RawLine): string | null {
  if (line.kind === 'heading') return null;
  const start = matchSceneStart(line.text);
  const typed = start === null ? '' : start.lead + start.written;
  if (!start || typed === typed.toUpperCase() || start.row.inFull) return null;
  const rest = line.text.slice(start.restAt);
  const stopped = line.text[start.settingAt + start.written.length] === '.';
  return (stopped || /\s[-\u2010-\u2015]+\s/.test(rest)) && hasTime(rest) ? start.written : null;
}
