import type { Script } from '../../script/types.js';
import type { Sentence, Token } from '../reading.js';
import { isPerson } from './word-list.js';

/** Someone who is under 18 in the script. */
export interface Minor {
  /** Canonical name, or the words that introduce the person. */
  readonly name: string;
  readonly age: string;
  /** Where the age stands. */
  readonly from: 'cast' | 'action';
}

/** An age under 18 that stands in a sentence of action. */
export interface AgeInWords {
  readonly minor: Minor;
  readonly sentence: Sentence;
  readonly start: number;
  readonly end: number;
}

const numberWords =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen'.split(
    ' ',
  );
const young =
  /\b(?:baby|infant|newborn|toddler|child|boy|girl|teen|teens|teenage|teenager|schoolboy|schoolgirl|months?|weeks?)\b/i;

/** True when an age as written means someone under 18: "9", "nine", "mid-teens", "18 months". */
export function isUnderAge(age: string): boolean {
  if (/\b(?:months?|weeks?)\b/i.test(age)) return true;
  const digits = age.match(/\d+/g);
  if (digits) return digits.some((one) => Number(one) < 18) && !/\d0s\b/.test(age);
  const words = age.toLowerCase().split(/[^a-z]+/);
  if (words.some((word) => /^(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)$/.test(word))) return false;
  return words.some((word) => numberWords.includes(word)) || young.test(age);
}

/** The people whom `cast:` gives an age under 18. */
export function listMinors(script: Script): Minor[] {
  return script.people.flatMap(({ name, age }) =>
    age !== null && isUnderAge(age) ? [{ name, age, from: 'cast' as const }] : [],
  );
}

const behindName =
  /(?<=[\p{L}’'])\s*(?:,\s*|\(\s*)(?:aged?\s+|about\s+|around\s+)?(\d{1,2})(?=\s*[,.;)]|\s+(?:and|in|years|months|with)\b|$)/gu;
const yearsOld = /\b(\d{1,2}|[a-z]+)(?:-|\s)(?:year|month|week)s?(?:-|\s)olds?\b/giu;
const aged = /\baged\s+(?:about\s+)?(\d{1,2}|[a-z]+)\b/giu;
const teens = /\b(?:in (?:his|her|their) (?:early |mid-|mid |late )?teens|(?:early|mid|late)[- ]teens|teenaged?)\b/giu;

/** Tried first, for speed. */
const mayHoldAge = /\d|\b(?:aged|olds?)\b|teen/i;

/** The ages under 18 that a sentence of action gives: "TOM (12)", "a boy, 9", "a six-year-old", "aged ten", "mid-teens". */
export function readAges(sentence: Sentence): AgeInWords[] {
  if (sentence.kind !== 'action' || !mayHoldAge.test(sentence.text)) return [];
  const ages: AgeInWords[] = [];
  for (const match of sentence.text.matchAll(behindName)) {
    const owner = sentence.tokens.findLast((token) => token.end <= match.index);
    if (owner && isIntroduced(owner) && Number(match[1]) < 18) {
      ages.push(
        asAge(
          sentence,
          owner,
          match[1] as string,
          owner.start,
          closeBracket(sentence.text, match.index + match[0].length),
        ),
      );
    }
  }
  for (const pattern of [yearsOld, aged, teens]) {
    for (const match of sentence.text.matchAll(pattern)) {
      const age = /month|week/i.test(match[0]) ? match[0] : (match[1] ?? match[0]);
      if (isUnderAge(age)) ages.push(asAge(sentence, null, match[0], match.index, match.index + match[0].length));
    }
  }
  return ages;
}

function closeBracket(text: string, end: number): number {
  return text[end] === ')' ? end + 1 : end;
}

function isIntroduced(token: Token): boolean {
  const shouted = token.text.length > 1 && token.text === token.text.toUpperCase() && token.lemma === token.lower;
  return shouted || (isPerson(token) && token.tag !== 'pronoun');
}

function asAge(sentence: Sentence, owner: Token | null, age: string, start: number, end: number): AgeInWords {
  const name = owner ? (owner.person ?? owner.text) : sentence.text.slice(start, end);
  return { minor: { name, age, from: 'action' }, sentence, start, end };
}
