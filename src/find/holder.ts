import type { Clauses, Subject } from './clause-types.js';
import type { Lexicon } from './lexicon.js';
import type { Phrase } from './phrases.js';
import type { Token } from './reading.js';

/** Who has a thing: somebody of a name, or the head word of nameless people; both null when nobody has it. */
export interface Holder {
  readonly person: string | null;
  readonly stranger: Token | null;
}

export const nobody: Holder = { person: null, stranger: null };

export const isSomebody = ({ person, stranger }: Holder): boolean => person !== null || stranger !== null;

/** Somebody of a name, or nobody. */
export const named = (person: string | null): Holder => ({ person, stranger: null });

/** The head word of the nameless people who are a subject, or whom its pronoun means. */
export function strangerIn({ phrase, stranger }: Subject, clauses: Clauses): Token | null {
  return phrase ? strangerOf(phrase, clauses) : (stranger ?? null);
}

/** The head word of a phrase that names people without a name; null for any other. */
export function strangerOf(phrase: Phrase, clauses: Clauses): Token | null {
  const { letters, classes, source, share } = clauses.kindOf(phrase);
  // WordNet knows a person of almost every word.
  const isKnown = letters.startsWith('x') && (source !== 'wordnet' || share > 3);
  const isPeople = isKnown || (classes.includes('person-nouns') && source !== 'unknown');
  return isPeople ? (clauses.sentence.tokens[phrase.head] as Token) : null;
}

/** Who does what a subject does: itself, or the owner of the hand that does it ("Nora's fingers fly over the keys"). */
export function doerIn(subject: Subject, clauses: Clauses, lexicon: Lexicon): Holder {
  if (subject.person !== null) return named(subject.person);
  const { phrase } = subject;
  const hand = phrase?.owner && isBody(phrase, clauses, lexicon) ? ownerOfPhrase(phrase, clauses) : nobody;
  return isSomebody(hand) ? hand : { person: null, stranger: strangerIn(subject, clauses) };
}

/** True for a phrase that names a part of the body. */
export function isBody({ head }: Phrase, { sentence }: Clauses, lexicon: Lexicon): boolean {
  return lexicon.find((sentence.tokens[head] as Token).lemma)?.classes.includes('body') ?? false;
}

/** "Nora's", "her", "the boy's"; "a nurse's tunic" may only tell which kind it is. */
export function ownerOfPhrase({ owner, start }: Phrase, clauses: Clauses, isKindOnly = false): Holder {
  if (!owner) return nobody;
  if (owner.person !== null) return named(owner.person);
  if (owner.phrase && /^(?:an?)?$/.test(owner.phrase.determiner?.lower ?? '') && isKindOnly) return nobody;
  if (owner.phrase) return { person: null, stranger: strangerOf(owner.phrase, clauses) };
  return owner.pronoun ? meantAt(start, clauses) : nobody;
}

/** Whom a pronoun at a place means. */
export const meantAt = (at: number, clauses: Clauses): Holder => ({
  person: clauses.resolve(at),
  stranger: clauses.stranger(at),
});

/** Whom the words from a place on name, mean by a pronoun, or own: "Dee", "her", "a tall man", "Ben's hand". */
export function whoIsAt(at: number, clauses: Clauses, lexicon: Lexicon): Holder {
  const token = clauses.sentence.tokens[at];
  if (!token) return nobody;
  if (token.tag === 'pronoun') return meantAt(at, clauses);
  const phrase = clauses.parts.find((part) => part.phrase.start === at)?.phrase;
  if (phrase?.owner) return isBody(phrase, clauses, lexicon) ? ownerOfPhrase(phrase, clauses) : nobody;
  if (token.person !== null) return named(token.person);
  return phrase ? { person: null, stranger: strangerOf(phrase, clauses) } : nobody;
}
