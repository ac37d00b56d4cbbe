import type { Quantity } from '../book/types.js';
import type { CategoryName } from '../trade/categories.js';
import type { Slot } from './slot-types.js';

/** One scene's use of a thing. */
export interface Use {
  readonly scene: string;
  readonly slot: Slot;
  /** 1-based place of the scene in the script. */
  readonly storyOrder: number;
  readonly stateIn: string | null;
  readonly stateOut: string | null;
  readonly by: readonly string[];
  /** How many are there at once. */
  readonly count: number;
  readonly worn: boolean;
  readonly carried: boolean;
  /** What the change on camera costs; null without a change. */
  readonly onCamera: 'copy each take' | 'a pair' | 'reset' | null;
  /** Copies that stand ready in the state at the start of the scene: at least, and with spares. */
  readonly atLeast: number;
  readonly advised: number;
}

/** One copy passes from one state to another between two scenes. */
export interface Conversion {
  readonly copies: readonly string[];
  readonly from: string;
  readonly to: string;
  readonly after: Slot;
  readonly before: Slot;
  readonly hoursNeeded: { readonly low: number; readonly high: number };
  /** Hours between the two scenes; null when one is in no day. */
  readonly hoursThere: number | null;
  readonly wayBack: boolean;
}

/** How many of one thing are needed, and why. */
export interface Need {
  readonly id: string;
  readonly name: string;
  readonly category: CategoryName | null;
  readonly uses: readonly Use[];
  readonly usedUp: boolean;
  /** True when nobody says how many: the figures then stand for one, and print as a question. */
  readonly uncounted: boolean;
  /** What the figures count: pieces, or millilitres and grams. */
  readonly unit: Quantity['unit'];
  readonly minimum: number;
  readonly minimumReason: string;
  readonly recommended: number;
  readonly recommendedReason: string;
  /** The book's own figure, which wins. */
  readonly decided: number | null;
  readonly have: number;
  readonly toGet: number;
  readonly conversions: readonly Conversion[];
  /** Which copy is where: by the index of the use, the labels of the copies that stand ready. */
  readonly copies: readonly (readonly string[])[];
  readonly states: readonly string[];
  readonly questions: readonly string[];
}
