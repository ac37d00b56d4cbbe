import { foldName } from '../base/slug.js';
import { cueExtensions, nameAbbreviations } from '../trade/cue-extensions.js';
import { neverCues } from '../trade/transitions.js';
import { readTime } from './time-of-day.js';
import type { VoiceKind } from './types.js';

/** A line that may be a speaker's name. */
export interface CueShape {
  readonly text: string;
  readonly name: string;
  readonly extensions: readonly string[];
  readonly voice: VoiceKind;
  /** True when a colon closed the line; true when an extension stood without its parentheses. */
  readonly colon: boolean;
  readonly bare: boolean;
  /** True when a parenthesis behind the name was left open. */
  readonly unclosed: boolean;
  /** True when two names stood side by side, over two columns of words. */
  readonly beside: boolean;
  /** The age behind the name, as in `NORA, 40`; null when none stands there. */
  readonly age: string | null;
}

/** At most this many characters (rule L7). */
const longestCue = 38;
const extensionNames = new Map(
  cueExtensions.flatMap((row) => [row.name, ...row.written].map((written) => [written, row] as const)),
);
const abbreviations = new Set(nameAbbreviations);
const never = new Set(neverCues.map((row) => row.written));

/** Reads a line as a cue (rule L7); null when it cannot be one. `isCastName` tells names that `cast:` holds, in any case. */
export function readCue(line: string, isCastName: (name: string) => boolean): CueShape | null {
  const text = line.trim();
  if (text.length > longestCue + 1 || text === '') return null;
  const colon = /[^:]:$/.test(text);
  const closed = colon ? text.slice(0, -1).trimEnd() : text;
  if (closed.length > longestCue) return null;
  const unclosed = /\S\s*\([^()]*$/.test(closed);
  const { name: full, extensions: bracketed, typed } = takeExtensions(unclosed ? `${closed})` : closed);
  const bareMatch = bracketed.length === 0 ? bareExtension(full) : null;
  const beside = besideNames(bareMatch ? bareMatch.name : full);
  const written = beside ?? (bareMatch ? bareMatch.name : full).replace(/\s+/g, ' ');
  const { name, age } = isCastName(written) ? { name: written, age: null } : takeAge(written);
  const extensions = bareMatch ? [bareMatch.extension] : bracketed;
  if (!(isCastName(name) || isCueName(name))) return null;
  return {
    text: printCue(written, bareMatch ? extensions : typed),
    name,
    extensions,
    voice: voiceOf(extensions),
    colon,
    bare: bareMatch !== null,
    unclosed,
    beside: beside !== null,
    age,
  };
}

/** `NORA      IVO`, two speeches side by side, are spoken by both; null for one name. */
function besideNames(text: string): string | null {
  const columns = text.split(/[ \t]{4,}/);
  return columns.length === 2 && columns.every(isCueName) ? columns.join(' & ') : null;
}

/** `NORA, 40` is NORA, with an age that belongs in the action. */
function takeAge(written: string): { name: string; age: string | null } {
  const found = /^(.*\p{L}.*?),\s*(\d{1,3})$/u.exec(written);
  return found ? { name: found[1] as string, age: found[2] as string } : { name: written, age: null };
}

/** The name and what stands in parentheses behind it, in capitals. */
function printCue(name: string, behind: readonly string[]): string {
  return [name.toUpperCase(), ...behind.map((one) => `(${one})`)].join(' ');
}

function isCueName(name: string): boolean {
  if (!/\p{L}/u.test(name) || /[:]/.test(name)) return false;
  if (/\p{Ll}/u.test(withoutSmallParts(name))) return false;
  if (/[!?,;…。！？、，；։؟।\-\u2010-\u2015)\]]$/.test(name)) return false;
  if (name.endsWith('.') && !endsInAbbreviation(name)) return false;
  if (/^["“'‘(].*["”'’)]$/.test(name)) return false;
  return !isNeverCue(name);
}

/** Small letters that capitals keep: McCLANE, 2nd MAN, ß. */
function withoutSmallParts(name: string): string {
  return name.replace(/\bM(?:a)?c(?=\p{Lu})|(?<=\d)(?:st|nd|rd|th)\b|ß/gu, '');
}

function endsInAbbreviation(name: string): boolean {
  const last = (name.split(/\s/).pop() as string).slice(0, -1);
  return abbreviations.has(last) || /^(?:\p{L}\.)*\p{L}$/u.test(last);
}

/** True for a line in capitals under which nobody speaks: MONTAGE, LATER, INSERT - THE LETTER. */
export function isNeverCue(text: string): boolean {
  const plain = text.trim().replace(/[:.]+$/, '');
  const head = plain.split(/\s+[-\u2010-\u2015]+\s+|:/)[0] as string;
  return never.has(plain) || never.has(head) || readTime(plain) !== null;
}

/** The name, its extensions under their usual names, and the insides of its parentheses as typed, in capitals. */
function takeExtensions(text: string): { name: string; extensions: string[]; typed: string[] } {
  let name = text;
  const extensions: string[] = [];
  const typed: string[] = [];
  for (let found = /\s*\(([^()]*)\)$/.exec(name); found && found.index > 0; found = /\s*\(([^()]*)\)$/.exec(name)) {
    const inside = found[1] as string;
    extensions.unshift(...splitExtensions(inside));
    if (inside.trim() !== '') typed.unshift(inside.trim().replace(/\s+/g, ' ').toUpperCase());
    name = name.slice(0, found.index).trimEnd();
  }
  return { name, extensions, typed };
}

/** `V.O., CONT'D` is two extensions; one that the table knows is never split. */
function splitExtensions(inside: string): string[] {
  const whole = foldExtension(inside);
  if (whole === '') return [];
  if (extensionNames.has(whole)) return [canonical(whole)];
  return whole
    .split(/\s*[,;/]\s*/)
    .filter((one) => one !== '')
    .map(canonical);
}

function foldExtension(text: string): string {
  const plain = text
    .trim()
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/\s+/g, ' ')
    .toUpperCase();
  // `V. O.` is V.O.
  return plain.replace(/(^|[\s.])(\p{L}\.) (?=\p{L}\.)/gu, '$1$2');
}

function canonical(extension: string): string {
  return extensionNames.get(extension)?.name ?? extension;
}

/** `NORA V.O.`, `NORA, O.S.` and `NORA CONT'D`: the extension without its parentheses. */
function bareExtension(text: string): { name: string; extension: string } | null {
  const found = /^(.+?),?\s+(V\.?\s?O\.?|O\.?\s?S\.?|V\/O|O\/S|CONT['\u2019]?D\.?|CONT\.)$/.exec(text);
  if (!found) return null;
  return {
    name: found[1] as string,
    extension: canonical(foldExtension((found[2] as string).replace(/\s/g, '').replace(/D\.$/, 'D'))),
  };
}

function voiceOf(extensions: readonly string[]): VoiceKind {
  for (const extension of extensions) {
    const voice = extensionNames.get(extension)?.voice;
    if (voice) return voice;
  }
  return 'on-screen';
}

/** A key for cues that are the same speaker. */
export function cueKey(cue: CueShape): string {
  return foldName(cue.name);
}
