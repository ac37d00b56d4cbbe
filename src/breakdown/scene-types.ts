import type { Eighths } from '../base/eighths.js';
import type { Range } from '../base/text-range.js';
import type { Strength } from '../find/types.js';
import type { Light, Setting, VoiceKind } from '../script/types.js';
import type { CategoryName } from '../trade/categories.js';
import type { Wanted } from './answer-fits.js';

/** How an element is known: by a bracket, by a note, by the finder's reading, by implication. */
export type Known = 'marked' | 'noted' | 'found' | 'implied';

/** One place of the script that speaks of an element or a person. */
export interface Mention {
  readonly words: string;
  readonly line: number;
  readonly at: Range;
}

export interface ScreenTime {
  /** The estimate from content, or the writer's own figure. */
  readonly seconds: number;
  readonly low: number;
  readonly high: number;
  /** 7.5 s an eighth. */
  readonly pageRule: number;
  /** True when a `time` note gave `seconds`. In totals: true when any scene's was. */
  readonly noted: boolean;
}

export interface StoryDay {
  /** `D1`, `F1`. */
  readonly label: string;
  /** D: the main line; F: flashbacks, dreams, memories. */
  readonly series: 'D' | 'F';
  readonly number: number;
  /** Why, in words that name the heading, note or scene it rests on. */
  readonly reason: string;
  /** False when the reason is weak: a question asks. */
  readonly sure: boolean;
}

/** A person in a scene. */
export interface SceneCast {
  readonly id: string;
  readonly name: string;
  readonly presence: 'seen' | 'heard';
  /** How the voice comes when the person is heard only; null when seen. */
  readonly voice: Exclude<VoiceKind, 'on-screen'> | null;
  /** True when lines of theirs are voice over, recorded apart, whether or not the person is seen. */
  readonly voiceOver: boolean;
  readonly speaks: boolean;
  readonly age: string | null;
  readonly minor: boolean;
  readonly known: Known;
  readonly mentions: readonly Mention[];
}

export interface SceneExtra {
  readonly id: string;
  readonly name: string;
  readonly count: number | null;
  readonly known: Known;
  readonly words: string;
  readonly line: number;
}

/** An element in a scene. Cast and extras never stand here. */
export interface SceneElement {
  readonly id: string;
  readonly name: string;
  readonly category: CategoryName;
  readonly known: Known;
  /** True when it is here by continuity alone. */
  readonly carried: boolean;
  /** Id of the scene it is carried from. */
  readonly from: string | null;
  readonly by: string | null;
  readonly worn: boolean;
  readonly count: number | null;
  readonly stateIn: string | null;
  readonly stateOut: string | null;
  /** States it passes through on camera here, between the two. */
  readonly statesBetween: readonly string[];
  readonly description: string | null;
  /** The words of its first mention here; empty when carried. */
  readonly words: string;
  /** The line of its first mention here; when carried, of the mention it is carried from. */
  readonly line: number;
  readonly mentions: readonly Mention[];
  /** 0 to 1 for found and implied, null otherwise. */
  readonly confidence: number | null;
  readonly strength: Strength | null;
  readonly rules: readonly string[];
}

/** A garment on a person in a scene. `absent` says that it is not worn and that this matters. */
export interface Garment {
  readonly id: string;
  readonly name: string;
  readonly known: Known;
  readonly carried: boolean;
  readonly from: string | null;
  readonly stateIn: string | null;
  readonly stateOut: string | null;
  /** States it passes through on camera here, between the two. */
  readonly statesBetween: readonly string[];
  readonly absent: boolean;
  /** What happens to it on camera here, in words: `put on`, `taken off`, `handed to …`; `left off` for an absence that begins here; or null. */
  readonly action: string | null;
}

/** What a person wears in a scene. */
export interface Wears {
  readonly person: string;
  /** The change number of this person: 1, 2, 3 … through the script. */
  readonly change: number;
  /** The change at the end of the scene, when it differs: a change on camera. */
  readonly changeOut: number;
  readonly garments: readonly Garment[];
}

/** Clothes of the day before that somebody may still have on: a question asks. */
export interface PerhapsWorn {
  readonly person: string;
  readonly garments: readonly string[];
  /** Id of the scene that last shows them. */
  readonly from: string;
}

export interface SceneHazard {
  /** Row of the hazard table, `H5`, or `note` for a safety note. */
  readonly id: string;
  readonly title: string;
  readonly words: string;
  readonly line: number;
  readonly because: string;
  /** Children of whom the sentence tells that raised it, by name or in the words of the script. */
  readonly children: readonly string[];
  /** The general precaution, in our words; never that a thing is safe. */
  readonly precaution: string;
  /** Which published bulletin or guidance to read. */
  readonly reading: string;
  /** Who must be qualified or licensed. */
  readonly qualified: string;
}

export interface Question {
  /** Stable between compiles. */
  readonly id: string;
  /** How a note in its own scene names it: the id without the scene's part. */
  readonly key: string;
  readonly text: string;
  readonly line: number;
  /** What to type to settle it. */
  readonly settle: string;
  /** `element`: a yes or no about a found or implied element; `task`: work implied; `story`: a decision. */
  readonly kind: 'element' | 'task' | 'story';
  readonly element: string | null;
  readonly wants: Wanted;
  /** Names of which the answer must hold one; empty when any will do. */
  readonly choices: readonly string[];
}

/** A tie between two scenes: what must match. */
export interface Link {
  /** Id of the other scene. */
  readonly scene: string;
  /** What comes along, in words: `storm lantern (wet)`, `NORA change 2`. */
  readonly what: readonly string[];
}

/** A note that belongs to everyone, or an answer that was given. */
export interface SceneNote {
  readonly kind: 'free' | 'answer';
  readonly text: string;
  readonly line: number;
}

export interface BreakdownScene {
  readonly id: string;
  readonly number: string | null;
  /** 1-based. */
  readonly order: number;
  readonly heading: string;
  readonly setting: Setting;
  readonly place: string;
  readonly placeId: string;
  readonly placeParts: readonly string[];
  readonly time: string | null;
  readonly light: Light | null;
  readonly qualifiers: readonly string[];
  readonly part: string | null;
  readonly page: number;
  readonly eighths: Eighths;
  readonly screenTime: ScreenTime;
  readonly storyDay: StoryDay;
  readonly synopsis: string;
  readonly cast: readonly SceneCast[];
  readonly extras: readonly SceneExtra[];
  readonly elements: readonly SceneElement[];
  readonly wears: readonly Wears[];
  readonly perhapsWorn: readonly PerhapsWorn[];
  readonly hazards: readonly SceneHazard[];
  readonly tasks: readonly SceneTask[];
  readonly questions: readonly Question[];
  readonly notes: readonly SceneNote[];
  readonly comesFrom: readonly Link[];
  readonly goesTo: readonly Link[];
  readonly at: Range;
}

/** Work that the words imply, with the words. */
export interface SceneTask {
  readonly text: string;
  readonly strength: Strength;
  readonly words: string;
  readonly line: number;
  readonly rule: string;
}
