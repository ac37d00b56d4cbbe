import type { CategoryName } from '../categories.js';

/**
 * What must hold around a cue. A list is words divided by spaces: base forms, names of word groups in capitals
 * (`GARMENT`), `PERSON` (anyone), or `NONE` (nothing there).
 */
export interface Limits {
  readonly subject?: string;
  readonly notSubject?: string;
  readonly object?: string;
  readonly notObject?: string;
  /** The word directly after, or before. */
  readonly next?: string;
  readonly notNext?: string;
  readonly prev?: string;
  readonly notPrev?: string;
  /** Anywhere else in the sentence. */
  readonly near?: string;
  readonly notNear?: string;
  readonly setting?: 'INT' | 'EXT';
  /** True when the cue also counts in the words of a heading; `only` when it counts nowhere else. */
  readonly heading?: boolean | 'only';
  /** True when the cue counts in speech alone: what is plainly present ("drop the gun"). */
  readonly spoken?: boolean;
  /** True when the noun also counts before another noun ("gun case"). */
  readonly modifier?: boolean;
  /** True when the word counts only if it is spoken and stands nowhere in the action of the script. */
  readonly onlySpoken?: boolean;
  /** True when the cue counts only before anything was found in its scene. */
  readonly nothingBefore?: boolean;
}

/** Words that raise something, and what guards their sense. */
export interface WordCue {
  /** A verb, a noun, a word that describes, or several words in a row (`~` stands for up to three words). */
  readonly on: 'verb' | 'noun' | 'state' | 'phrase';
  /** Base forms divided by spaces; phrases divided by `|`. */
  readonly words: string;
  readonly limits: Limits;
}

/** A heading of a kind. */
export interface HeadingCue {
  readonly on: 'heading';
  readonly setting: 'INT' | 'EXT' | null;
  /** Lights divided by spaces, or empty for any. */
  readonly light: string;
}

/** A way of speaking: recorded, unseen, on the line. */
export interface VoiceCue {
  readonly on: 'voice';
  readonly voice: 'voice-over' | 'off-screen' | 'phone';
}

/** Anything of a category that is marked, noted or found. */
export interface CategoryCue {
  readonly on: 'category';
  readonly category: CategoryName;
  /** Names whose head is one of these do not count. */
  readonly except: string;
  /** Nor do those with one of these words among the three before them, within them, or right after them. */
  readonly notPrev: string;
  /** Nor do those in a sentence with one of these words. */
  readonly notNear: string;
  /** Nor do events that befall one of these. */
  readonly notObject: string;
}

export type Cue = WordCue | HeadingCue | VoiceCue | CategoryCue;

/** A verb with its limits. */
export function verb(words: string, limits: Limits = {}): WordCue {
  return { on: 'verb', words, limits };
}

/** A noun with its limits. */
export function noun(words: string, limits: Limits = {}): WordCue {
  return { on: 'noun', words, limits };
}

/** A word that describes; `object` limits what it describes. */
export function state(words: string, limits: Limits = {}): WordCue {
  return { on: 'state', words, limits };
}

/** Words in a row. */
export function phrase(words: string, limits: Limits = {}): WordCue {
  return { on: 'phrase', words, limits };
}

/** The same cues, which count in interiors only. */
export function inside(cues: readonly Cue[]): Cue[] {
  return cues.map((cue) => ('limits' in cue ? { ...cue, limits: { ...cue.limits, setting: 'INT' } } : cue));
}

/** A heading with this setting and one of these lights. */
export function heading(setting: 'INT' | 'EXT' | null, light: string): HeadingCue {
  return { on: 'heading', setting, light };
}

/** Speech of this kind. */
export function voice(kind: VoiceCue['voice']): VoiceCue {
  return { on: 'voice', voice: kind };
}

/** Anything of this category. */
export function category(
  name: CategoryName,
  except = '',
  limits: { readonly notPrev?: string; readonly notNear?: string; readonly notObject?: string } = {},
): CategoryCue {
  const { notPrev = '', notNear = '', notObject = '' } = limits;
  return { on: 'category', category: name, except, notPrev, notNear, notObject };
}
