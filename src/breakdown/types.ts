import type { Eighths } from '../base/eighths.js';
import type { Strength } from '../find/types.js';
import type { Setting } from '../script/types.js';
import type { CategoryName } from '../trade/categories.js';
import type { BreakdownScene, Garment, Known, ScreenTime } from './scene-types.js';

export type * from './scene-types.js';

/** One costume change of a person, head to foot. */
export interface CostumeChange {
  readonly number: number;
  readonly storyDay: string;
  readonly scenes: readonly string[];
  readonly garments: readonly (Garment & {
    readonly states: readonly { readonly scene: string; readonly state: string }[];
  })[];
}

export interface PersonEntry {
  readonly id: string;
  readonly name: string;
  readonly names: readonly string[];
  readonly age: string | null;
  readonly minor: boolean;
  readonly background: boolean;
  /** Ids of the scenes where seen, and where only heard. */
  readonly seen: readonly string[];
  readonly heard: readonly string[];
  readonly changes: readonly CostumeChange[];
}

/** An element over the whole script. */
export interface ElementEntry {
  readonly id: string;
  readonly name: string;
  /** Every name it goes or went by, the canonical one first. */
  readonly names: readonly string[];
  readonly category: CategoryName;
  readonly known: Known;
  readonly description: string | null;
  /** The largest count in any one scene; null when no scene tells. */
  readonly count: number | null;
  readonly scenes: readonly string[];
  readonly by: readonly string[];
  /** Its states in story order with the scene in which each begins. */
  readonly states: readonly { readonly state: string; readonly scene: string; readonly onCamera: boolean }[];
  readonly strength: Strength | null;
}

export interface PlaceEntry {
  readonly id: string;
  readonly name: string;
  readonly settings: readonly Setting[];
  readonly areas: readonly string[];
  readonly scenes: readonly string[];
  readonly dressing: readonly {
    readonly id: string;
    readonly name: string;
    readonly known: Known;
    readonly scenes: readonly string[];
  }[];
  /** What is built or dressed as one: a setting with the whole place text, and its scenes. */
  readonly sets: readonly PlaceSet[];
}

/** One set of a place: `INT Sheriff's office`, `EXT Sheriff's office - rear`. */
export interface PlaceSet {
  readonly setting: Setting;
  readonly place: string;
  readonly scenes: readonly string[];
}

/** The breakdown of a script, without the production book. */
export interface Breakdown {
  readonly title: string;
  readonly draft: string | null;
  readonly date: string | null;
  readonly author: string | null;
  readonly paper: 'letter' | 'a4';
  readonly pages: number;
  readonly eighths: Eighths;
  readonly screenTime: ScreenTime;
  readonly scenes: readonly BreakdownScene[];
  readonly omitted: readonly string[];
  readonly cast: readonly PersonEntry[];
  readonly elements: readonly ElementEntry[];
  readonly places: readonly PlaceEntry[];
}
