import type { CategoryName } from '../categories.js';
import type { Cue } from './cue.js';

/** How sure an implied thing is. */
export type ImpliedStrength = 'certain' | 'likely' | 'ask';

/** A thing that words imply without naming it. */
export interface ImpliedElement {
  /** May hold `{object}`, the object of the verb, and `{head}`, the word that raised it. */
  readonly name: string;
  readonly category: CategoryName;
  readonly strength: ImpliedStrength;
  /** Words that, present in the scene, make it needless: base forms and groups divided by spaces. */
  readonly unless: string;
  /** True when the subject of the verb handles or wears it. */
  readonly bySubject: boolean;
}

/** Work, or a caution. It may hold `{object}`, `{head}`. */
export interface ImpliedTask {
  readonly kind: 'task' | 'caution';
  readonly text: string;
  readonly strength: ImpliedStrength;
}

/** Something only the writer can decide. */
export interface ImpliedQuestion {
  /** Begins the question's id; the head word follows. */
  readonly id: string;
  readonly text: string;
  /** Words that answer it already. */
  readonly unless: string;
  /** Things in the scene that answer it already. */
  readonly unlessPresent: string;
  /** True when one answer holds wherever the person or thing is seen. */
  readonly once: boolean;
  /** Which text may answer it beside the sentence itself: the next sentences, the whole script, or any later word of its garment. */
  readonly answeredBy: 'the next sentences' | 'the script' | 'any later word';
}

/** Rows whose verb holds a tool: cutting, writing, digging, and the work of every day. "With the lid" names it. */
export const toolRows: readonly number[] = [17, 31, 65, 96, 97, 102, 103, 105];

/** What one does a thing with that is no tool: "with a sigh". */
export const noTools =
  'sigh smile grin frown laugh sob look glance flourish nod shrug gesture sweep snort cry care effort groan grunt';

/** A row, or a part of a row, of the table of implications. */
export interface Implication {
  /** The row of the table; rows above 82 are additions. */
  readonly row: number;
  /** Names the rule in `explain`, in question ids and in tests. */
  readonly id: string;
  readonly cues: readonly Cue[];
  readonly elements: readonly ImpliedElement[];
  readonly tasks: readonly ImpliedTask[];
  readonly questions: readonly ImpliedQuestion[];
  readonly source: string;
}

interface Parts {
  readonly elements?: readonly ImpliedElement[];
  readonly tasks?: readonly ImpliedTask[];
  readonly questions?: readonly ImpliedQuestion[];
  readonly source?: string;
}

/** A row of the table; its source is common practice unless another is named. */
export function implies(row: number, id: string, cues: readonly Cue[], parts: Parts): Implication {
  const { elements = [], tasks = [], questions = [], source = 'common practice' } = parts;
  return { row, id, cues, elements, tasks, questions, source };
}

const element =
  (strength: ImpliedStrength) =>
  (name: string, category: CategoryName, unless = '', bySubject = true): ImpliedElement => ({
    name,
    category,
    strength,
    unless,
    bySubject,
  });

/** A thing that is hardly avoidable. */
export const certain = element('certain');
/** A thing that most productions would need. */
export const likely = element('likely');
/** A thing to ask about. */
export const ask = element('ask');

/** Work to do. */
export function task(text: string, strength: ImpliedStrength = 'likely'): ImpliedTask {
  return { kind: 'task', text, strength };
}

/** A caution to print. */
export function caution(text: string, strength: ImpliedStrength = 'likely'): ImpliedTask {
  return { kind: 'caution', text, strength };
}

/** A question for the writer. */
export function question(id: string, text: string, unless = '', unlessPresent = ''): ImpliedQuestion {
  return { id, text, unless, unlessPresent, once: false, answeredBy: 'the next sentences' };
}

/** A question whose answer holds for the whole script. */
export function questionOnce(id: string, text: string, unless = ''): ImpliedQuestion {
  return { ...question(id, text, unless), once: true, answeredBy: 'the script' };
}

/** A question that any later word of the thing answers, since who has it then is told or seen. */
export function questionUnlessSeenLater(id: string, text: string): ImpliedQuestion {
  return { ...question(id, text), answeredBy: 'any later word' };
}
