import type { Range } from '../base/text-range.js';
import type { CategoryName } from '../trade/categories.js';

/** How sure an implied element is; it prints in these words. */
export type Strength = 'certain' | 'likely' | 'ask';

/** Something the finder read in the script that nobody marked. */
export interface Find {
  /** 0-based scene. */
  readonly scene: number;
  readonly known: 'found' | 'implied';
  /** The head with the modifiers that tell it apart, in lower case unless a proper name. */
  readonly name: string;
  readonly category: CategoryName;
  readonly count: number | null;
  /** Canonical name of the person who handles or wears it. */
  readonly by: string | null;
  /** True when it is worn by `by`. */
  readonly worn: boolean;
  /** A state the words give it ("soaked"), or null. */
  readonly state: string | null;
  /** True when the state begins here, on camera: "tears the letter in two". */
  readonly stateBegins?: true;
  /** The words of the script it rests on, and their place. */
  readonly words: string;
  readonly at: Range;
  /** 0 to 1. */
  readonly confidence: number;
  /** The rules that fired, for `explain`. */
  readonly rules: readonly string[];
  /** For implied elements only. */
  readonly strength: Strength | null;
}

/** A person the action introduces who is in no cue and no `cast:`. */
export interface PersonFind {
  readonly scene: number;
  readonly name: string;
  readonly kind: 'cast' | 'extras';
  readonly count: number | null;
  readonly presence: 'seen' | 'heard';
  readonly words: string;
  readonly at: Range;
  readonly confidence: number;
}

/** A thing that changes hands, wearer or place. */
export interface Move {
  readonly scene: number;
  readonly name: string;
  readonly kind: 'put on' | 'taken off' | 'handed over' | 'put down' | 'carried off';
  readonly from: string | null;
  readonly to: string | null;
  readonly words: string;
  readonly at: Range;
}

/** Work or a decision that the words imply. */
export interface Task {
  readonly scene: number;
  readonly text: string;
  readonly kind: 'task' | 'question' | 'caution';
  readonly strength: Strength;
  readonly words: string;
  readonly at: Range;
  /** The row of the table it comes from. */
  readonly rule: string;
}

/** A hazard raised by words, marks, ages or a heading. It never says that a thing is safe. */
export interface HazardFind {
  readonly scene: number;
  /** The row of the hazard table: `H5`. */
  readonly hazard: string;
  readonly words: string;
  readonly at: Range;
  /** What raised it: a mark, a find, an implication, an age, a heading, a note. */
  readonly because: string;
  /** Children of whom the same sentence tells, by name or as the script says it. */
  readonly children: readonly string[];
}

/** A yes or no, or a choice, that waits for the writer. */
export interface FindQuestion {
  readonly scene: number;
  /** Stable: made of the rule and what it is about; the scene is no part of it. */
  readonly id: string;
  /** True for what is asked once in the whole script. */
  readonly once: boolean;
  readonly text: string;
  readonly words: string;
  readonly at: Range;
}

/** All that the finder read. */
export interface Finds {
  readonly elements: readonly Find[];
  readonly people: readonly PersonFind[];
  readonly moves: readonly Move[];
  readonly tasks: readonly Task[];
  readonly hazards: readonly HazardFind[];
  readonly questions: readonly FindQuestion[];
}

export const noFinds: Finds = { elements: [], people: [], moves: [], tasks: [], hazards: [], questions: [] };
