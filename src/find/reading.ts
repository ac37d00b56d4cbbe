import type { Range } from '../base/text-range.js';

/** Word classes, as far as the rules need them. */
export type Tag =
  | 'noun'
  | 'name'
  | 'verb'
  | 'participle'
  | 'adjective'
  | 'adverb'
  | 'determiner'
  | 'possessive'
  | 'pronoun'
  | 'preposition'
  | 'particle'
  | 'conjunction'
  | 'number'
  | 'auxiliary'
  | 'punctuation'
  | 'other';

/** A word or a sign of a sentence; `start` and `end` count in the sentence's text. */
export interface Token {
  readonly text: string;
  readonly lower: string;
  /** Base form: singular noun, infinitive. */
  readonly lemma: string;
  readonly tag: Tag;
  readonly start: number;
  readonly end: number;
  /** Canonical name of the person it names, when it does. */
  readonly person: string | null;
}

/** A sentence of the script, tagged. Lines of one paragraph are joined by a space. */
export interface Sentence {
  /** 0-based scene. */
  readonly scene: number;
  readonly kind: 'action' | 'speech' | 'parenthetical' | 'heading';
  /** Canonical name of the speaker, in speech. */
  readonly speaker: string | null;
  /** Counts paragraphs through the scene, so that rules know what stands together. */
  readonly paragraph: number;
  readonly text: string;
  readonly tokens: readonly Token[];
  /** The place in the source of a stretch of `text`. */
  readonly place: (start: number, end: number) => Range;
}
