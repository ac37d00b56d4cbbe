import type { CategoryName } from '../trade/categories.js';

/** A thing in a scene, as far as drafts are compared by it. */
export interface ThingFacts {
  readonly id: string;
  readonly name: string;
  readonly category: CategoryName;
  readonly by: string | null;
  readonly count: number | null;
  readonly stateIn: string | null;
  readonly stateOut: string | null;
}

export interface GarmentFacts {
  readonly id: string;
  readonly name: string;
  readonly stateIn: string | null;
  readonly stateOut: string | null;
  /** True when it must not be worn. */
  readonly absent: boolean;
}

export interface WearsFacts {
  readonly person: string;
  readonly change: number;
  readonly garments: readonly GarmentFacts[];
}

export interface SceneFacts {
  readonly id: string;
  /** As paper names it. */
  readonly label: string;
  readonly setting: string;
  readonly place: string;
  /** Id of the place; null in a file that has none. */
  readonly placeId: string | null;
  readonly time: string | null;
  readonly light: string | null;
  readonly storyDay: string;
  readonly eighths: number;
  readonly synopsis: string;
  readonly cast: readonly { readonly name: string; readonly presence: 'seen' | 'heard' }[];
  readonly extras: readonly { readonly name: string; readonly count: number | null }[];
  readonly things: readonly ThingFacts[];
  readonly wears: readonly WearsFacts[];
  /** Titles of the dangers raised. */
  readonly dangers: readonly string[];
}

/** A person or a thing over the whole script. */
export interface NamedFacts {
  readonly id: string;
  readonly name: string;
  /** Every name it goes or went by. */
  readonly names: readonly string[];
}

/** A shooting day as the helpers were told it. */
export interface DayFacts {
  readonly number: number;
  /** ISO date. */
  readonly date: string;
  /** `08:00`. */
  readonly call: string;
  readonly places: readonly string[];
  /** Ids of its scenes, in their order. */
  readonly scenes: readonly string[];
}

/** What one draft says, as far as drafts are compared. */
export interface DraftFacts {
  readonly title: string;
  readonly draft: string | null;
  readonly date: string | null;
  readonly scenes: readonly SceneFacts[];
  readonly people: readonly NamedFacts[];
  readonly things: readonly NamedFacts[];
  /** Null when no production book told of days. */
  readonly days: readonly DayFacts[] | null;
}

/** What can differ. */
export type ChangeKind =
  | 'scene'
  | 'label'
  | 'position'
  | 'setting'
  | 'place'
  | 'light'
  | 'story day'
  | 'length'
  | 'danger'
  | 'person'
  | 'extra'
  | 'thing'
  | 'count'
  | 'state'
  | 'state in'
  | 'state out'
  | 'holder'
  | 'garment'
  | 'costume number'
  | 'name'
  | 'shooting day'
  | 'shooting order'
  | 'day'
  | 'day date'
  | 'day call'
  | 'day places';

/** One difference between two drafts. Before and after change sides when the drafts do, and nothing else. */
export interface Change {
  readonly kind: ChangeKind;
  /** Id of the scene; null for what is of no scene. */
  readonly scene: string | null;
  /** What it is about as paper names it: a thing, a person, a danger, a shooting day; null for the scene itself. */
  readonly subject: string | null;
  /** The wearer of a garment. */
  readonly wearer: string | null;
  readonly category: CategoryName | null;
  /** Null when there was nothing; a state, a count, a name otherwise. */
  readonly before: string | null;
  readonly after: string | null;
  /** True when one of the drafts has it in no scene at all. */
  readonly whole: boolean;
}

/** A scene of either draft with all that differs in it. */
export interface SceneChanges {
  /** The id in the present draft; of a scene that is gone, in the earlier one. */
  readonly scene: string;
  /** The label in each draft; null where it does not exist. */
  readonly before: string | null;
  readonly after: string | null;
  readonly changes: readonly Change[];
}

/** All that differs between two drafts. */
export interface Changes {
  readonly since: { readonly draft: string | null; readonly date: string | null };
  /** In the order of the present draft, those that are gone where they stood; only scenes with changes. */
  readonly scenes: readonly SceneChanges[];
  /** What is of no scene: shooting days, names. */
  readonly whole: readonly Change[];
  /** False when one of the drafts tells of no shooting days. */
  readonly daysCompared: boolean;
}

/** Earlier ids and what they are now, as far as a production book still goes by the earlier ones. */
export interface Renames {
  readonly scenes: ReadonlyMap<string, string>;
  readonly places: ReadonlyMap<string, string>;
  /** Names in the days of the book that find another scene than they did, until somebody puts them right. */
  readonly slipped: readonly SlippedName[];
}

/** A name in a shooting day, and the id of the scene that it meant. */
export interface SlippedName {
  readonly date: string;
  readonly name: string;
  readonly meant: string;
}

/** What a run found to compare with, and what came of it. */
export type Comparison =
  | { readonly kind: 'compared'; readonly changes: Changes }
  | { readonly kind: 'not compared'; readonly why: 'no label' | 'nothing earlier' | 'not readable' };
