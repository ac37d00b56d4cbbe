import type { Range } from '../base/text-range.js';
import type { CategoryName } from '../trade/categories.js';

/** Light that a scene is played in. */
export type Light = 'day' | 'night' | 'dawn' | 'dusk';
export type Setting = 'INT' | 'EXT' | 'INT/EXT';
export type TextStyle = 'plain' | 'italic' | 'bold' | 'bold italic';

/** A piece of printed text that stands in the source as one stretch: `text.slice(start, end)` begins at source `offset`. */
export interface Span {
  readonly start: number;
  readonly end: number;
  readonly offset: number;
  readonly style: TextStyle;
}

/** One source line as it prints: brackets of marks, emphasis signs, escapes and private comments are gone. */
export interface Line {
  readonly text: string;
  readonly spans: readonly Span[];
  readonly marks: readonly Mark[];
  readonly at: Range;
}

/** A bracket mark (rules E2 to E4). `start` and `end` count in the line's printed text. */
export interface Mark {
  readonly start: number;
  readonly end: number;
  /** The words inside the first brackets, as printed. */
  readonly words: string;
  /** The name it refers to: the words, or the second brackets of a full reference. */
  readonly name: string;
  /** `[words]`, `[words][name]`, `[words](category)`. */
  readonly form: 'words' | 'words and name' | 'words and category';
  /** A category named on the spot, when known. */
  readonly category: CategoryName | null;
  readonly at: Range;
}

export interface Action {
  readonly kind: 'action';
  readonly lines: readonly Line[];
  /** True for a list item that is no scene: an image of a montage. */
  readonly item: boolean;
  readonly at: Range;
}

/** How a speaker is there: seen, recorded voice, called that day but unseen, or on the line. */
export type VoiceKind = 'on-screen' | 'voice-over' | 'off-screen' | 'phone';

export interface Cue {
  /** As printed: capitals, with its extensions. */
  readonly text: string;
  /** The name without extensions, as typed. */
  readonly name: string;
  /** The extensions, without brackets, in capitals: `V.O.`, `CONT'D`. */
  readonly extensions: readonly string[];
  readonly voice: VoiceKind;
  readonly at: Range;
}

export interface SpeechLine {
  readonly kind: 'dialogue' | 'parenthetical';
  readonly line: Line;
}

export interface Speech {
  readonly kind: 'speech';
  readonly cue: Cue;
  readonly lines: readonly SpeechLine[];
  readonly at: Range;
}

export interface Transition {
  readonly kind: 'transition';
  readonly line: Line;
  readonly at: Range;
}

/** A heading that is no scene: an act, a sequence. */
export interface Part {
  readonly kind: 'part';
  readonly line: Line;
  readonly depth: number;
  readonly at: Range;
}

export interface PageBreak {
  readonly kind: 'page break';
  readonly at: Range;
}

/** A number kept without its scene. */
export interface Omitted {
  readonly kind: 'omitted';
  readonly number: string;
  readonly at: Range;
}

export type Block = Action | Speech | Transition | Part | PageBreak | Omitted;

/** A scene heading taken apart (rules L2 to L4). */
export interface Heading {
  /** As printed: capitals, without the number. */
  readonly text: string;
  readonly number: string | null;
  readonly setting: Setting;
  /** The whole place as written, areas included: `Hill farm - kitchen`. */
  readonly place: string;
  readonly placeParts: readonly string[];
  /** The time word(s) as written, or null. */
  readonly time: string | null;
  /** The light, inherited for CONTINUOUS, LATER, SAME; a `day` note goes before the heading; null when nothing tells. */
  readonly light: Light | null;
  readonly lightInherited: boolean;
  /** What stands after the time, and the trailing parenthesis: FLASHBACK, MONTAGE, 1931. */
  readonly qualifiers: readonly string[];
  readonly line: Line;
  readonly at: Range;
}

export interface Scene {
  /** 0-based place in the script. */
  readonly index: number;
  readonly heading: Heading;
  /** What prints between the scene before and this heading and belongs to neither: parts, omitted numbers, page breaks. */
  readonly lead: readonly Block[];
  readonly blocks: readonly Block[];
  readonly notes: readonly Note[];
  /** The nearest part heading above, as text, or null. */
  readonly part: string | null;
  readonly at: Range;
}

/** One thing named in a note: `2 crates of apples (Nora)`. */
export interface NoteItem {
  readonly name: string;
  readonly count: number | null;
  /** A known person in the trailing parenthesis, by canonical name. */
  readonly by: string | null;
  readonly description: string | null;
  readonly at: Range;
}

export type CostumeVerb = 'wears' | 'changes to' | 'puts on' | 'takes off' | 'without';

interface NoteBase {
  /** The whole note as written, without its `>`. */
  readonly text: string;
  readonly at: Range;
}

/** A line of a blockquote, understood (conventions, Notes). People are named by canonical name. */
export type Note = NoteBase &
  (
    | { readonly kind: 'items'; readonly category: CategoryName; readonly items: readonly NoteItem[] }
    | {
        readonly kind: 'state';
        readonly element: string;
        readonly state: string;
        /** True for a name in quotes: it means the thing of that very name and no other. */
        readonly quoted: boolean;
      }
    | {
        readonly kind: 'costume';
        readonly person: string;
        readonly verb: CostumeVerb;
        readonly garments: readonly NoteItem[];
      }
    | { readonly kind: 'day'; readonly day: number | null; readonly light: Light | null; readonly flashback: boolean }
    | { readonly kind: 'time'; readonly seconds: number }
    | { readonly kind: 'synopsis'; readonly line: string }
    | { readonly kind: 'safety'; readonly line: string }
    | { readonly kind: 'no'; readonly names: readonly string[]; readonly everywhere: boolean }
    | { readonly kind: 'answer'; readonly question: string; readonly line: string }
    | { readonly kind: 'free'; readonly line: string }
  );

/** A definition of an element (rule E5). */
export interface Definition {
  readonly name: string;
  readonly category: CategoryName | null;
  readonly count: number | null;
  readonly carriedBy: string | null;
  readonly wornBy: string | null;
  readonly was: readonly string[];
  readonly description: string | null;
  readonly at: Range;
}

/** A person known to the script: from `cast:` or from a cue. */
export interface Person {
  /** The canonical name: the key in `cast:`, else the first cue as typed. */
  readonly name: string;
  /** Every name that means this person, the canonical one first. */
  readonly names: readonly string[];
  readonly was: readonly string[];
  /** As written in `cast:`: a number or words. */
  readonly age: string | null;
  /** True for a person whom `cast:` calls background: printed with the extras. */
  readonly background: boolean;
  readonly from: 'cast' | 'cue';
  readonly at: Range;
}

export interface FrontMatter {
  readonly title: string | null;
  readonly draft: string | null;
  readonly date: string | null;
  readonly author: string | null;
  readonly contact: string | null;
  readonly paper: 'letter' | 'a4';
  readonly eighths: 'nearest' | 'up';
  readonly numbers: 'free' | 'locked';
  readonly language: string | null;
}

/** A script as read: every node keeps its place in the source. */
export interface Script {
  readonly file: string;
  /** The text as decoded, without a byte-order mark; line ends are LF. Offsets count in it. */
  readonly source: string;
  readonly front: FrontMatter;
  readonly people: readonly Person[];
  readonly definitions: readonly Definition[];
  /** What prints before the first scene. */
  readonly opening: readonly Block[];
  readonly scenes: readonly Scene[];
  /** Parts, omitted numbers and page breaks after the last scene. */
  readonly closing: readonly Block[];
  /** Notes before the first scene; they speak of the whole script. */
  readonly notes: readonly Note[];
}
