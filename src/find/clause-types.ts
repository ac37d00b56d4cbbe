import type { Kind } from './kinds.js';
import type { Phrase } from './phrases.js';
import type { Sentence, Token } from './reading.js';

/** What does something in a clause. */
export interface Subject {
  readonly phrase: Phrase | null;
  /** Canonical name, when the subject is a person or a pronoun that means one. */
  readonly person: string | null;
  /** The pronoun in lower case, when it is one. */
  readonly pronoun: string | null;
  /** The head word of the nameless people whom a pronoun means: "A guard nods. He ...". */
  readonly stranger?: Token | null;
}

/** A verb with what belongs to it. */
export interface Deed {
  readonly at: number;
  readonly lemma: string;
  readonly participle: boolean;
  readonly passive: boolean;
  /** "wants to", "could": not done in the picture. */
  readonly unreal: boolean;
  readonly particle: string | null;
  readonly subject: Subject | null;
}

export type Role = 'subject' | 'object' | 'preposition' | 'loose';

/** A noun phrase with its part in the clause. */
export interface Part {
  readonly phrase: Phrase;
  readonly role: Role;
  readonly preposition: string | null;
  readonly deed: Deed | null;
  /** The part it is listed with: "a spade and a rope". */
  readonly listedWith: Part | null;
  /** The part before an "of" that it completes. */
  readonly ofPart: Part | null;
  /** What stands in front of the phrase: start, comma, colon, conjunction, word. */
  readonly opens: 'start' | 'comma' | 'colon' | 'conjunction' | 'word';
  /** The subject so far where no verb stands yet, or where a comma sets the phrase apart: "Nora, with a lamp, ...", "Nora runs, coat flying". */
  readonly about: Subject | null;
}

/** A sentence taken apart. */
export interface Clauses {
  readonly sentence: Sentence;
  readonly parts: readonly Part[];
  readonly deeds: readonly Deed[];
  /** Place of the first colon, after which a list may stand; null without one. */
  readonly colon: number | null;
  /** The person that a pronoun at a place means. */
  readonly resolve: Resolve;
  /** The head word of the nameless people that a pronoun at a place means. */
  readonly stranger: StrangerAt;
  /** True in a script that writes most of its nouns in capitals: then capitals say nothing. */
  readonly shouting: boolean;
  /** Who empties or unpacks what this sentence only lists: "She turns out her pockets. A key, a comb." */
  readonly lister?: Subject | null;
  /** What the words of a phrase make of it; kept once asked. */
  readonly kindOf: (phrase: Phrase) => Kind;
}

/** Gives the person that a pronoun at a place of a sentence means, or null. */
export type Resolve = (at: number) => string | null;

/** Gives the head word of the nameless people that a pronoun at a place of a sentence means, or null. */
export type StrangerAt = (at: number) => Token | null;

/** Tells whom the pronouns of a sentence mean; at most one of the two answers for a place. */
export interface Meant {
  readonly resolve: Resolve;
  readonly stranger: StrangerAt;
}

/** Where the reader of a sentence stands. */
export interface State {
  subject: Subject | null;
  /** The subject of the whole sentence, to which a participle after a comma returns. */
  main: Subject | null;
  deed: Deed | null;
  preposition: string | null;
  /** Since the verb: its object has been read. */
  last: Part | null;
  opens: Part['opens'];
  modal: boolean;
  be: boolean;
}
