import type { Script } from '../../script/types.js';
import { ageWords } from '../../trade/age-words.js';
import type { Sentence, Token } from '../reading.js';
import { isToldAdult, isUnderAge, readAgeAtStart, readToldAges, type ToldAge } from './age-words.js';
import type { Evidence } from './evidence.js';
import { isPerson, openWordList } from './word-list.js';

/** Someone who is under 18 in the script. */
export interface Minor {
  /** Canonical name, or the words that introduce the person. */
  readonly name: string;
  readonly age: string;
  /** Where the age stands. */
  readonly from: 'cast' | 'action' | 'cue';
}

/** An age under 18 that stands in a sentence of action. */
export interface AgeInWords {
  readonly minor: Minor;
  /** False when only "a boy of nine" stands there. */
  readonly named: boolean;
  readonly sentence: Sentence;
  readonly start: number;
  readonly end: number;
}

/** True when the word that raised something is told to be grown up: a boy of nineteen is no child and needs no chaperone. */
export function meansAdult({ sentence, token }: Pick<Evidence<unknown>, 'sentence' | 'token'>): boolean {
  return (
    sentence !== null && token !== null && isToldAdult(sentence.text, token.start, token.end, toldAgesOf(sentence))
  );
}

const told = new WeakMap<Sentence, readonly ToldAge[]>();

/** The ages that a sentence tells, read once. */
function toldAgesOf(sentence: Sentence): readonly ToldAge[] {
  const before = told.get(sentence);
  if (before !== undefined) return before;
  const ages = sentence.tokens.some(mayBeAge) ? readToldAges(sentence.text) : [];
  told.set(sentence, ages);
  return ages;
}

/** The people whom `cast:` or a cue gives an age under 18. */
export function listMinors(script: Script): Minor[] {
  const listed = script.people.flatMap(({ name, age }): Minor[] =>
    age !== null && isUnderAge(age) ? [{ name, age, from: 'cast' }] : [],
  );
  const told = script.scenes.flatMap(({ blocks }) =>
    blocks.flatMap((block): Minor[] => {
      const age = block.kind === 'speech' ? readAgeOfCue(block.cue.extensions) : null;
      return block.kind === 'speech' && age !== null && isUnderAge(age)
        ? [{ name: block.cue.name, age, from: 'cue' }]
        : [];
    }),
  );
  return [...listed, ...told];
}

/** The age that a cue carries behind a name, `PIP (9)` or `PIP (aged nine)`, or null. */
export function readAgeOfCue(extensions: readonly string[]): string | null {
  for (const extension of extensions) {
    const [told] = readToldAges(`X (${extension.toLowerCase()})`);
    if (told?.name === 'X') return told.age;
  }
  return null;
}

/** The ages under 18 that a sentence of action gives: "TOM (12)", "a boy, 9", "a six-year-old", "aged ten", "mid-teens". */
export function readAges(sentence: Sentence): AgeInWords[] {
  if (sentence.kind !== 'action' || !sentence.tokens.some(mayBeAge)) return [];
  const told = toldAgesOf(sentence);
  return [...told, ...readOthers(sentence, told)].flatMap((one) => {
    if (!isUnderAge(one.age) || !isSomeone(one, sentence)) return [];
    const name = one.name === null ? sentence.text.slice(one.start, one.end) : nameIn(one, sentence);
    const minor: Minor = { name, age: one.age, from: 'action' };
    return [{ minor, named: one.name !== null, sentence, start: one.start, end: one.end }];
  });
}

/** Ages behind words that only the sentence knows for people: "felix, 7", "the waiter, sixteen". */
function readOthers({ text, tokens }: Sentence, told: readonly ToldAge[]): ToldAge[] {
  return tokens.flatMap((token): ToldAge[] => {
    const { start, end, tag } = token;
    if (tag === 'pronoun' || !isPerson(token) || told.some((one) => start < one.end && one.start < end)) return [];
    const behind = readAgeAtStart(text.slice(end, end + 80));
    return behind ? [{ name: token.text, age: behind.age, start, end: end + behind.end }] : [];
  });
}

const wordsOfAge = openWordList(
  [ageWords.small, ageWords.tens, ageWords.decades, ageWords.young, 'aged age teens twins'].join(' '),
);

/** Tried first, for speed. */
function mayBeAge({ lower }: Token): boolean {
  if (lower.length < 2) return isDigit(lower);
  return (
    wordsOfAge.words.has(lower) || isDigit(lower) || (lower.includes('-') && /teen|old|^[a-z]+ty-|ish$/.test(lower))
  );
}

function isDigit(word: string): boolean {
  const code = word.charCodeAt(0);
  return code >= 48 && code <= 57;
}

/** The canonical name of whom the words name, else the words without an article. */
function nameIn({ name, start, end }: ToldAge, { tokens }: Sentence): string {
  const written = (name ?? '').replace(/^(?:The|A|An|His|Her|Their) /, '');
  const last = written.split(' ').at(-1);
  const token = tokens.find((one) => one.start >= start && one.end <= end && one.text === last);
  return token?.person ?? written;
}

/** A ten-year-old car and cheese aged nine months are nobody. */
function isSomeone({ name, start, end }: ToldAge, { tokens }: Sentence): boolean {
  if (name !== null) {
    const owner = tokens.find((one) => one.start >= start && one.text === name.split(' ').at(-1));
    return owner === undefined || owner.tag !== 'noun' || isPerson(owner) || isShouted(owner) || isKin(owner);
  }
  const inside = tokens.filter((one) => one.start < end && one.end > start);
  if (inside.some(isPerson)) return true;
  const after = tokens.find((one) => one.start >= end && one.tag !== 'adjective');
  // A verb may have been taken for a noun in "-s": when in doubt it is someone.
  if (after?.tag === 'noun' && after.lower === after.lemma) return isPerson(after);
  const noun = tokens.findLast((one) => one.end <= start && one.tag === 'noun');
  return noun === undefined || isPerson(noun) || after?.tag !== 'punctuation' || isShouted(noun);
}

function isShouted({ text }: Token): boolean {
  return text.length > 1 && text === text.toUpperCase();
}

function isKin({ lower }: Token): boolean {
  return /^(?:grand)?(?:son|daughter|niece|nephew|cousin|twins)$/.test(lower);
}
