import { keepAnswers } from '../base/keep-answers.js';
import type { Entry, Lexicon } from './lexicon.js';
import type { Tag } from './reading.js';
import { nounBases, type VerbForm, verbBases } from './word-forms.js';

/** What a word as typed can be, before its neighbours decide. */
export interface WordUses {
  /** A class that needs no context, or null. */
  readonly closed: Tag | null;
  readonly noun: { readonly lemma: string; readonly plural: boolean; readonly entry: Entry } | null;
  readonly verb: { readonly lemma: string; readonly form: VerbForm; readonly share: number } | null;
  /** How much of its use is as an adjective, 0 to 9; -1 when it is none. */
  readonly adjective: number;
  readonly adverb: boolean;
  readonly particle: boolean;
  readonly preposition: boolean;
  /** A given name. */
  readonly given: boolean;
  /** What it is by its first signs: a word, a tail ("'s"), or a sign. */
  readonly shape: 'word' | 'tail' | 'sign';
}

const closedClasses: readonly (readonly [string, Tag])[] = [
  ['auxiliaries', 'auxiliary'],
  ['possessives', 'possessive'],
  ['determiners', 'determiner'],
  ['pronouns', 'pronoun'],
  ['conjunctions', 'conjunction'],
  ['numbers', 'number'],
  ['prepositions', 'preposition'],
  ['adverbs', 'adverb'],
];

const opened = new WeakMap<Lexicon, (word: string) => WordUses>();

/** Makes the function that tells what a word in lower case can be; answers are kept with the lexicon. */
export function wordUses(lexicon: Lexicon): (word: string) => WordUses {
  const before = opened.get(lexicon);
  if (before) return before;
  const uses = keepAnswers((word) => analyse(word, lexicon));
  opened.set(lexicon, uses);
  return uses;
}

function analyse(word: string, lexicon: Lexicon): WordUses {
  const entry = lexicon.find(word);
  const classes = entry?.classes ?? [];
  const closed = closedClasses.find(([name]) => classes.includes(name))?.[1] ?? null;
  return {
    closed: closed ?? (isNumber(word, lexicon) ? 'number' : null),
    noun: asNoun(word, lexicon),
    verb: asVerb(word, lexicon),
    adjective: entry && entry.adjective >= 0 ? entry.adjective : compoundAdjective(word),
    adverb: (word.endsWith('ly') && !entry?.core && !entry?.wordnet) || classes.includes('adverbs'),
    particle: classes.includes('particles'),
    preposition: classes.includes('prepositions'),
    given: classes.includes('men') || classes.includes('women'),
    shape: /^'[a-z]+$/.test(word) ? 'tail' : /^[^\p{L}\p{N}]/u.test(word) ? 'sign' : 'word',
  };
}

/** "40", "twenty-two". */
function isNumber(word: string, lexicon: Lexicon): boolean {
  if (/^\d/.test(word)) return true;
  return word.includes('-') && word.split('-').every((part) => lexicon.find(part)?.classes.includes('numbers'));
}

/** A hyphenated word that ends like a participle or an adjective is one: half-eaten, blood-red. */
function compoundAdjective(word: string): number {
  return /-(?:\w+ed|\w+en|\w+ing|red|blue|white|black|green|grey|old|long|deep|high|free|worn|made|lit|up)$/.test(word)
    ? 9
    : -1;
}

function asNoun(word: string, lexicon: Lexicon): WordUses['noun'] {
  for (const lemma of nounBases(word)) {
    const entry = lexicon.find(lemma);
    if (entry?.noun) return { lemma, plural: lemma !== word || word === 'people', entry };
  }
  const hyphen = word.lastIndexOf('-');
  if (hyphen < 1 || hyphen === word.length - 1) return null;
  const head = asNoun(word.slice(hyphen + 1), lexicon);
  return head && { ...head, lemma: word.slice(0, hyphen + 1) + head.lemma };
}

function asVerb(word: string, lexicon: Lexicon): WordUses['verb'] {
  for (const [lemma, form] of verbBases(word)) {
    const entry = lexicon.find(lemma);
    if (entry && entry.verb >= 0) return { lemma, form, share: entry.verb };
  }
  return null;
}
