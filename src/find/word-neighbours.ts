import type { RawWord } from './split-words.js';
import type { WordUses } from './word-uses.js';

/** A word with all it can be. */
export interface Draft extends RawWord {
  readonly lower: string;
  readonly uses: WordUses;
  readonly person: string | null;
  /** "clips" behind "bicycle": with the word before it one thing of our lists. */
  compound: boolean;
}

/** True for a word that a noun phrase can begin with. */
export function startsPhrase(draft: Draft): boolean {
  const { closed } = draft.uses;
  if (draft.person !== null) return true;
  if (closed) return /^(?:determiner|possessive|number|pronoun)$/.test(closed);
  return (
    draft.uses.shape === 'word' &&
    (draft.uses.noun !== null || draft.uses.adjective >= 0 || /^\p{Lu}/u.test(draft.text))
  );
}

/** True for a word that can be the head of a noun phrase or modify one. */
export function canBeNoun(draft: Draft): boolean {
  return (
    draft.uses.closed === null &&
    draft.person === null &&
    (draft.uses.noun !== null || draft.uses.adjective >= 3) &&
    draft.uses.shape === 'word'
  );
}

/** Pronouns that are only ever the subject: a new clause begins with them. */
export const isNominative = (lower: string): boolean => /^(?:he|she|they|we|i|who)$/.test(lower);

/** True when what follows shows that a verb could stand here: an object, a preposition, or the end. */
export function afterVerb(next: Draft | undefined): boolean {
  if (!next || next.person !== null) return true;
  const { closed } = next.uses;
  if (closed) return closed !== 'auxiliary' && closed !== 'conjunction' && !isNominative(next.lower);
  return next.uses.adverb || (next.uses.adjective >= 0 && !next.uses.noun) || /^[—–(]/.test(next.text);
}
