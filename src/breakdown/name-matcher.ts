import { foldName } from '../base/slug.js';
import { noShortNames } from '../trade/presence-words.js';
import type { ActionText } from './action-text.js';
import { pushTo } from './grouping.js';
import type { KnownPerson, PeopleIndex } from './people-index.js';

/** A name met in the action. `start` and `end` count in the paragraph's text, a possessive `'s` excluded. */
export interface NameMatch {
  readonly person: KnownPerson;
  readonly text: ActionText;
  readonly start: number;
  readonly end: number;
  readonly possessive: boolean;
}

interface Word {
  readonly start: number;
  readonly end: number;
  /** Folded, without a possessive `'s`. */
  readonly bare: string;
  readonly folded: string;
}

interface NamePattern {
  readonly words: readonly string[];
  readonly person: KnownPerson;
  /** A short form that the writer never listed: only with a capital, never after an article. */
  readonly short: boolean;
}

/** Finds people's names in a paragraph. */
export type NameMatcher = (text: ActionText) => NameMatch[];

const wordSign = /[\p{L}\p{N}]+(?:['\u2019][\p{L}]+)*/gu;

/** Splits a text into words with their places. */
export function splitWords(text: string): Word[] {
  const words: Word[] = [];
  for (const match of text.matchAll(wordSign)) {
    const folded = foldWord(match[0]);
    const bare = folded.endsWith("'s") ? folded.slice(0, -2) : folded;
    words.push({ start: match.index, end: match.index + match[0].length, folded, bare });
  }
  return words;
}

/** As `foldName`, without its cost for the plain letters that nearly every word is made of. */
function foldWord(word: string): string {
  return plainWord.test(word) ? word.toLowerCase() : foldName(word);
}

const plainWord = /^[A-Za-z0-9']+$/;

/** Prepares a matcher for the people of a script; the actions tell which names are proper names (`Rose`, never `the rose`). */
export function makeNameMatcher(people: PeopleIndex, actions: readonly ActionText[]): NameMatcher {
  const split = actions.map(({ text }) => splitWords(text));
  const patterns = listPatterns(people, lowerCaseWords(actions, split));
  const raw = actions.map((text, index) => matchPatterns(text, split[index] ?? [], patterns));
  const proper = new Set<KnownPerson>();
  for (const match of raw.flat()) if (isProperUse(match)) proper.add(match.person);
  const isMeant = (match: NameMatch) => !isCommonWord(match, proper.has(match.person)) && !isQuoted(match);
  const matches = new Map(actions.map((text, index) => [text, (raw[index] ?? []).filter(isMeant)] as const));
  return (text) => matches.get(text) ?? matchPatterns(text, splitWords(text.text), patterns).filter(isMeant);
}

function lowerCaseWords(actions: readonly ActionText[], split: readonly Word[][]): Set<string> {
  const lower = new Set<string>();
  split.forEach((words, index) => {
    const { text } = actions[index] as ActionText;
    for (const { start, bare } of words) if (!isCapital(text.charAt(start))) lower.add(bare);
  });
  return lower;
}

function isCapital(letter: string): boolean {
  return letter !== letter.toLowerCase();
}

/** Full names first, the longest first; then short forms that can mean one person only. */
function listPatterns(people: PeopleIndex, lower: ReadonlySet<string>): Map<string, NamePattern[]> {
  const patterns: NamePattern[] = [];
  const owners = new Map<string, Set<KnownPerson>>();
  for (const person of people.all) {
    for (const name of person.names) {
      const words = splitWords(name).map((word) => word.folded);
      if (words.length > 0) patterns.push({ words, person, short: false });
      for (const word of words) owners.set(word, (owners.get(word) ?? new Set()).add(person));
    }
  }
  for (const { words, person } of [...patterns]) {
    if (words.length < 2) continue;
    for (const word of words) {
      const own = owners.get(word)?.size === 1 && word.length > 2 && !/\d/.test(word);
      if (own && !noShortNames.has(word) && !lower.has(word)) patterns.push({ words: [word], person, short: true });
    }
  }
  patterns.sort((a, b) => b.words.length - a.words.length || Number(a.short) - Number(b.short));
  const byFirstWord = new Map<string, NamePattern[]>();
  for (const pattern of patterns) pushTo(byFirstWord, pattern.words[0] as string, pattern);
  return byFirstWord;
}

function matchPatterns(text: ActionText, words: readonly Word[], patterns: Map<string, NamePattern[]>): NameMatch[] {
  const matches: NameMatch[] = [];
  for (let index = 0; index < words.length; index++) {
    const word = words[index] as Word;
    const fitting = (candidate: NamePattern) => fits(candidate, words, index);
    const pattern = patterns.get(word.folded)?.find(fitting) ?? patterns.get(word.bare)?.find(fitting);
    if (!pattern) continue;
    const last = words[index + pattern.words.length - 1] as Word;
    const possessive = last.folded !== last.bare && pattern.words.at(-1) === last.bare;
    const plural = /^['\u2019](?!\p{L})/u.test(text.text.slice(last.end)) && last.folded.endsWith('s');
    const end = possessive ? last.end - 2 : last.end;
    const match = { person: pattern.person, text, start: word.start, end, possessive: possessive || plural };
    if (!pattern.short || isShortUse(match)) matches.push(match);
    index += pattern.words.length - 1;
  }
  return matches;
}

function fits({ words }: NamePattern, text: readonly Word[], from: number): boolean {
  return words.every((word, offset) => {
    const candidate = text[from + offset];
    if (!candidate) return false;
    return candidate.folded === word || (offset === words.length - 1 && candidate.bare === word);
  });
}

/** The word right before a match, in lower case; empty at the start of a sentence. */
export function wordBefore({ text, start }: Pick<NameMatch, 'text' | 'start'>): string {
  return (
    /([\p{L}\p{N}'\u2019-]+)[\s"\u201c(]*$/u
      .exec(text.text.slice(Math.max(0, start - 40), start))?.[1]
      ?.toLowerCase() ?? ''
  );
}

function startsSentence({ text, start }: NameMatch): boolean {
  return /(?:^|[.!?:\u2026]["\u201d)]*)\s*$/.test(text.text.slice(Math.max(0, start - 4), start));
}

/** The words of a match without an article: `The Hammer` and `young Nora` have a capital, `The hammer` has none. */
function writtenName({ text, start, end }: NameMatch): string {
  return text.text.slice(start, end).replace(/^(?:the|a|an) /i, '');
}

function hasCapital(match: NameMatch): boolean {
  return writtenName(match)
    .split(' ')
    .some((word) => /^(?:\p{Lu}|[^\p{Ll}]*$)/u.test(word));
}

function isShortUse(match: NameMatch): boolean {
  return hasCapital(match) && !/^(?:a|an|the)$/.test(wordBefore(match));
}

/** A name with one capital in mid-sentence and no article before it is a proper name. */
function isProperUse(match: NameMatch): boolean {
  const title = /^\p{Lu}\p{Ll}/u.test(writtenName(match));
  return title && !startsSentence(match) && !/^(?:a|an|the|this|that|her|his|their)$/.test(wordBefore(match));
}

/** Without a capital only a part that is no proper name can be meant, and only with a definite word: `the driver`. */
function isCommonWord(match: NameMatch, proper: boolean): boolean {
  if (hasCapital(match))
    return /^(?:a|an)$/.test(wordBefore(match)) && /^\p{Lu}\p{Ll}/u.test(match.text.text.slice(match.start));
  const definite = /^(?:the|this|that|her|his|their|our|old|young)$|['\u2019]s$/;
  return proper || !(definite.test(wordBefore(match)) || /^the /i.test(match.text.text.slice(match.start)));
}

/** Quoted words are read or heard, as on a sign. */
function isQuoted({ text, start }: NameMatch): boolean {
  if (!/["\u201c]/.test(text.text)) return false;
  const before = text.text.slice(0, start);
  const straight = before.split('"').length - 1;
  return straight % 2 === 1 || before.lastIndexOf('\u201c') > before.lastIndexOf('\u201d');
}
