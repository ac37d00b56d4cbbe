import type { Clauses, Deed } from './clause-types.js';
import type { Kind } from './kinds.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';
import { quotes } from './written-words.js';

/** What kind of subject does it. */
export type Doer = 'person' | 'vehicle' | 'animal' | 'thing' | 'nobody';

/** All that the rules of events ask of one verb. */
export interface DeedFacts {
  readonly deed: Deed;
  readonly doer: Doer;
  /** What the subject is, when it is a noun phrase. */
  readonly subject: Kind | null;
  /** What it is done to. */
  readonly hit: 'person' | 'thing' | null;
  readonly object: Kind | null;
  /** "tosses him a blanket": the person only gets it. */
  readonly gives: boolean;
  /** The next words of the clause, up to seven. */
  readonly rest: readonly string[];
  /** True when the words after the verb are given as they are written. */
  readonly isQuoted: () => boolean;
  /** True when the verb stands in a word list. */
  readonly named: (list: string) => boolean;
  /** True when the subject's head stands in a word list. */
  readonly subjectIn: (list: string) => boolean;
}

/** Collects the facts of a verb. */
export function readDeed(deed: Deed, clauses: Clauses, lexicon: Lexicon): DeedFacts {
  const { tokens } = clauses.sentence;
  const subject = deed.subject?.phrase ? clauses.kindOf(deed.subject.phrase) : null;
  const classes = lexicon.find(deed.lemma)?.classes ?? [];
  const { hit, object } = readObject(deed, clauses);
  return {
    deed,
    doer: doerOf(deed, subject),
    subject,
    hit,
    object,
    gives: gives(deed, tokens),
    rest: restOf(deed, tokens),
    isQuoted: () => quotes(tokens, deed.at + 1),
    named: (list) => classes.includes(list),
    subjectIn: (list) => subject !== null && (lexicon.find(subject.head)?.classes.includes(list) ?? false),
  };
}

/** True for words that name people. */
export function isPersonKind(kind: Kind): boolean {
  return (
    (kind.letters.startsWith('x') && (kind.source !== 'wordnet' || kind.share >= 6)) ||
    kind.classes.includes('person-nouns') ||
    kind.classes.includes('groups')
  );
}

function doerOf(deed: Deed, kind: Kind | null): Doer {
  const { subject } = deed;
  if (!subject) return 'nobody';
  if (subject.person) return 'person';
  if (subject.pronoun)
    return /^(?:it|this|that|something|nothing|everything)$/.test(subject.pronoun) ? 'thing' : 'person';
  if (!kind) return 'nobody';
  if (isPersonKind(kind)) return 'person';
  if (kind.letters.startsWith('v')) return 'vehicle';
  return kind.letters.startsWith('a') ? 'animal' : 'thing';
}

function readObject(deed: Deed, clauses: Clauses): Pick<DeedFacts, 'hit' | 'object'> {
  const { tokens } = clauses.sentence;
  for (let at = deed.at + 1; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    if (token.tag === 'adverb') continue;
    const part = clauses.parts.find((one) => one.phrase.start === at && one.role === 'object');
    if (part) {
      const kind = clauses.kindOf(part.phrase);
      return { hit: isPersonKind(kind) || kind.classes.includes('body') ? 'person' : 'thing', object: kind };
    }
    if (token.tag === 'name') return { hit: 'person', object: null };
    if (token.tag !== 'pronoun') return { hit: null, object: null };
    const person = /^(?:him|her|them|you|me|us|each)$/.test(token.lower);
    return {
      hit: person ? 'person' : token.lower.endsWith('self') || token.lower.endsWith('selves') ? null : 'thing',
      object: null,
    };
  }
  return { hit: null, object: null };
}

function gives(deed: Deed, tokens: readonly Token[]): boolean {
  const person = tokens[deed.at + 1];
  const next = tokens[deed.at + 2];
  if (person?.tag !== 'pronoun' && person?.tag !== 'name') return false;
  return (
    next?.tag === 'determiner' || next?.tag === 'number' || (next?.tag === 'possessive' && !/^['’]/.test(next.lower))
  );
}

function restOf(deed: Deed, tokens: readonly Token[]): string[] {
  const rest: string[] = [];
  for (const token of tokens.slice(deed.at + 1, deed.at + 8)) {
    if (/^[.;,!?]/.test(token.text)) break;
    rest.push(token.lower);
  }
  return rest;
}
