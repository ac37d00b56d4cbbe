import { keepAnswers } from '../base/keep-answers.js';
import type { Script } from '../script/types.js';
import { beginsWithAge } from './implied/age-words.js';
import type { Lexicon } from './lexicon.js';
import { learnNames } from './people-names.js';
import type { WordUses } from './word-uses.js';

/** A name as the action types it, with what stands before and behind. */
interface Named {
  readonly words: readonly string[];
  readonly before: string;
  readonly after: string;
  readonly text: string;
}

/** What the judges of a name may look at. */
interface Ground {
  readonly lexicon: Lexicon;
  readonly uses: (word: string) => WordUses;
  /** Names in small and capital letters that the action uses like names, with how often they do something. */
  readonly deeds: ReadonlyMap<string, number>;
  /** True for a word that stands in a heading, or anywhere in small letters. */
  readonly isCommon: (word: string) => boolean;
}

const nameSign =
  /(?<![\p{L}\p{N}'’-])(?:(?:M[Rr][Ss]?|M[Ss]|D[Rr]|S[Gg][Tt]|C[Aa][Pp][Tt]|P[Rr][Oo][Ff]|R[Ee][Vv])\. )?\p{Lu}[\p{L}’'-]*\p{L}(?: \p{Lu}[\p{L}’'-]*\p{L}){0,2}(?![\p{L}\p{N}-])/gu;
const titles =
  /^(?:mr|mrs|ms|miss|dr|old|young|little|big|uncle|aunt|sister|brother|father|mother|sergeant|sir|lady|madam|madame)$/;
/** Before a name they make a person of it, whatever else its word means: "Miss Bell", "Sergeant Pike". */
const callings =
  /^(?:mr|mrs|ms|miss|dr|doctor|uncle|aunt|sister|brother|father|mother|sergeant|sgt|captain|capt|inspector|professor|prof|reverend|rev|sir|lady|lord|madam|madame|colonel|constable|officer|nurse)$/;
const calendar =
  /^(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|january|february|april|june|july|august|(?:septem|octo|novem|decem)ber)$/;

/** Titles that say nothing of whose name follows: young Danny is not Danny. */
const addresses = /^(?:mr|mrs|ms|miss|dr|doctor|sir|lady|madam|sergeant|captain|inspector|professor)$/;
const courtesy = /^(?:mr|mrs|ms|miss)$/;

/** People whom no cue and no `cast:` knows, under one name each: those of notes, and those whom the action introduces. */
export function listUnlisted(
  script: Script,
  lexicon: Lexicon,
  uses: Ground['uses'],
  pets: ReadonlyMap<string, string>,
): { name: string; names: string[] }[] {
  const known = learnNames(script.people);
  const told = new Set<string>(pets.keys());
  const whole = new Map(script.people.flatMap(({ name, names }) => names.map((one) => [one.toLowerCase(), name])));
  /** Names without a title. */
  const bare = new Set<string>();
  const isKnown = keepAnswers((name) => {
    const plain = name.split(' ').map(withoutStop);
    const lowers = plain.map((word) => word.toLowerCase());
    const texts = plain.map((text) => ({ text }));
    return known.match(texts, lowers, 0) !== null;
  });
  const introduced = listIntroduced(script, isKnown, lexicon, uses);
  return [...listNoted(script), ...introduced].flatMap((name) => {
    const words = name.split(' ');
    const lowers = words.map((word) => withoutStop(word).toLowerCase());
    const [title = '', ...surname] = lowers;
    // DR. PRIYA RAO is the PRIYA of the cues.
    const speaker = addresses.test(title)
      ? surname.map((word) => whole.get(word)).find((one) => one !== undefined)
      : undefined;
    if (speaker !== undefined && !isKnown(name)) return [{ name: speaker, names: [name] }];
    // Mr. Wu and Mrs. Wu are two; Mrs. Wu and Wu are one.
    const isTitled = courtesy.test(title) && !bare.has(surname.join(' '));
    const own = isTitled ? [lowers.join(' ')] : lowers;
    if (isKnown(name) || own.every((word) => told.has(word) || titles.test(word))) return [];
    if (!courtesy.test(title)) bare.add(lowers.join(' '));
    for (const word of [...own, ...lowers]) told.add(word);
    return [{ name, names: [name] }];
  });
}

/** Whom notes dress or put into a scene. */
function listNoted({ scenes }: Script): string[] {
  return scenes.flatMap(({ notes }) =>
    notes.flatMap((note) => {
      if (note.kind === 'costume') return [note.person];
      return note.kind === 'items' && note.category === 'cast' ? note.items.map(({ name }) => name) : [];
    }),
  );
}

/**
 * Names of people whom only the action introduces: with an age, in capitals at their first deed, or by a name that does
 * things again and again. In small and capital letters, in the order of the text.
 */
function listIntroduced(
  script: Script,
  isKnown: (name: string) => boolean,
  lexicon: Lexicon,
  uses: Ground['uses'],
): string[] {
  const strangers: Named[] = [];
  for (const { blocks } of script.scenes) {
    for (const block of blocks) {
      if (block.kind === 'action') addNames(block.lines.map(({ text }) => text).join(' '), isKnown, strangers);
    }
  }
  const ground: Ground = {
    lexicon,
    uses,
    deeds: countDeeds(strangers, uses),
    isCommon: keepAnswers(commonWords(script)),
  };
  return [
    ...new Set(strangers.filter((one) => isIntroduced(one, ground)).map(({ words }) => words.map(asTitle).join(' '))),
  ];
}

function addNames(text: string, isKnown: (name: string) => boolean, strangers: Named[]): void {
  for (const { 0: typed, index } of text.matchAll(nameSign)) {
    const name = /[’']s$/i.test(typed) ? typed.slice(0, -2) : typed;
    if (isKnown(name)) continue;
    const behind = index + typed.length;
    strangers.push({
      words: name.split(' '),
      before: text.slice(Math.max(0, index - 40), index),
      after: (name === typed ? '' : '’s') + text.slice(behind, behind + 80),
      text: typed,
    });
  }
}

function isIntroduced(named: Named, ground: Ground): boolean {
  const { words, before, after, text } = named;
  const { uses, deeds } = ground;
  const last = /([\p{L}\p{N}’'-]+) $/u.exec(before)?.[1]?.toLowerCase();
  if (last !== undefined && /^(?:determiner|possessive|number)$/.test(uses(last).closed ?? '')) return false;
  const own = words.slice(words.findIndex((word) => !isTitle(word, ground)));
  if (isTitle(own[0] as string, ground)) return false;
  const called = callings.test(withoutStop(words[0] as string).toLowerCase()) && own.length < words.length;
  const civil = text === text.toUpperCase() || /^(?:mrs?|ms|miss|dr|sgt|capt|prof|rev)\.? /i.test(text);
  if (called && own.every((word) => mayBeCalled(word, ground, civil)))
    return beginsWithAge(after) || doesSomething(after, uses);
  if (beginsWithAge(after)) return own.every((word) => mayBeName(word, ground));
  if (!own.every((word) => isGiven(word, ground) || isSeldom(word, ground))) return false;
  if (text === text.toUpperCase() && isNamedBehindKin(before, after, ground)) return true;
  if (!doesSomething(after, uses)) return false;
  const isUnheard = own.every((word) => isGiven(word, ground) || isUnknown(word, ground));
  const again = (deeds.get(words.map(asTitle).join(' ')) ?? 0) > 1;
  return text === text.toUpperCase() ? again || isUnheard : again && isUnheard;
}

/** "Her son, PIOTR, waits." */
function isNamedBehindKin(before: string, after: string, { lexicon }: Ground): boolean {
  const noun = /(?:^|[ (])(\p{Ll}+), $/u.exec(before)?.[1];
  if (noun === undefined || !/^[,.]/.test(after)) return false;
  const entry = lexicon.find(noun);
  return entry !== null && (entry.core.startsWith('x') || entry.classes.includes('person-nouns'));
}

/** DETECTIVE Krause, OLD Tom. */
function isTitle(word: string, { lexicon }: Ground): boolean {
  const lower = withoutStop(word).toLowerCase();
  return titles.test(lower) || callings.test(lower) || (lexicon.find(lower)?.core.startsWith('x') ?? false);
}

function isGiven(word: string, { lexicon }: Ground): boolean {
  const entry = lexicon.find(word.toLowerCase());
  return !entry?.core.startsWith('x') && (entry?.classes.some((one) => one === 'women' || one === 'men') ?? false);
}

/** With an age behind it, any word is a name that is no thing, place or day. */
function mayBeName(word: string, ground: Ground): boolean {
  const lower = word.toLowerCase();
  const entry = ground.lexicon.find(lower);
  const { noun, closed } = ground.uses(lower);
  const isPlace = entry?.classes.some((one) => one === 'places' || one === 'numbers') ?? false;
  const isThing = Boolean(noun?.entry.core) && !isShort(word);
  return isGiven(word, ground) || (!isThing && closed === null && !isPlace && !calendar.test(lower));
}

/** KIT, ART, REX: in capitals with an age behind it, a short word for one thing is a name. */
const isShort = (word: string) => /^\p{Lu}{2,4}$/u.test(word) && !/S$/.test(word);

/** Behind a title any word is a name, save those that make sentences; "Mother Nature" needs more than small letters. */
function mayBeCalled(word: string, ground: Ground, civil: boolean): boolean {
  const { uses } = ground;
  const lower = word.toLowerCase();
  return uses(lower).closed === null && !calendar.test(lower) && (civil || isGiven(word, ground));
}

const withoutStop = (word: string) => word.replace(/\.$/, '');

/** A word that no list of ours has, that is no verb, and that the script never writes small. */
function isSeldom(word: string, { uses, isCommon }: Ground): boolean {
  const lower = word.toLowerCase();
  const { noun, verb, adverb, closed } = uses(lower);
  const isOrdinary = noun?.entry.core || verb || adverb || closed !== null || calendar.test(lower);
  return !isOrdinary && !isCommon(lower) && /[aeiouyà-ÿ]/iu.test(word);
}

/** No English word, and long enough to be no abbreviation. */
function isUnknown(word: string, { uses }: Ground): boolean {
  const { noun, verb, adjective } = uses(word.toLowerCase());
  return !noun && !verb && adjective < 0 && word.length > 3 && !/(.)\1\1/iu.test(word);
}

/** How often each name stands before a verb or a possessive. */
function countDeeds(named: readonly Named[], uses: Ground['uses']): Map<string, number> {
  const deeds = new Map<string, number>();
  for (const { words, after } of named) {
    const name = words.map(asTitle).join(' ');
    if (doesSomething(after, uses)) deeds.set(name, (deeds.get(name) ?? 0) + 1);
  }
  return deeds;
}

/** True before a verb of the third person, a possessive, or a comma that sets a description apart. */
function doesSomething(after: string, uses: Ground['uses']): boolean {
  if (/^(?:’s |, (?:an?|in|with|his|her|who|the|\p{Ll}+ing)[ ,])/u.test(after)) return true;
  const next = /^(?:,? (?:\p{L}+ly|and \p{Lu}\p{L}+))? (\p{Ll}+)/u.exec(after)?.[1];
  return next !== undefined && uses(next).verb?.form === 's' && !/^(?:is|was|has|does)$/.test(next);
}

/** Looks words up in the text itself, which is quicker than to gather them all for the few that are asked for. */
function commonWords({ scenes }: Script): (word: string) => boolean {
  const headings = scenes.map(({ heading }) => heading.text.toLowerCase()).join('\n');
  const action = scenes
    .flatMap(({ blocks }) => blocks.flatMap((block) => (block.kind === 'action' ? block.lines : [])))
    .map(({ text }) => text)
    .join('\n');
  return (word) => standsIn(headings, word, letter, letter) || standsIn(action, word, partOfWord, smallLetter);
}

const letter = /\p{L}/u;
const partOfWord = /[\p{L}’'-]/u;
const smallLetter = /\p{Ll}/u;

/** True when a word stands in a text with none of the signs that would make it part of a longer one. */
function standsIn(text: string, word: string, before: RegExp, behind: RegExp): boolean {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    if (!before.test(text[at - 1] ?? '') && !behind.test(text[at + word.length] ?? '')) return true;
  }
  return false;
}

function asTitle(word: string): string {
  return /\p{Ll}/u.test(word) ? word : word.toLowerCase().replace(/(^|[-’'])\p{L}/gu, (start) => start.toUpperCase());
}
