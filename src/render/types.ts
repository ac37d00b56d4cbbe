import type { Diagnostic } from '../base/diagnostic.js';
import type { Book } from '../book/types.js';
import type { Breakdown } from '../breakdown/types.js';
import type { Comparison, Renames } from '../compare/types.js';
import type { Pages } from '../page/types.js';
import type { Plan } from '../plan/plan-types.js';
import type { PurchaseLine } from '../plan/types.js';
import type { Script } from '../script/types.js';

/** The outputs that can be asked for by name. */
export type OutputName =
  | 'json'
  | 'changes'
  | 'sheets'
  | 'scenes'
  | 'costumes'
  | 'props'
  | 'indexes'
  | 'purchases'
  | 'questions'
  | 'script'
  | 'plan'
  | 'callsheets'
  | 'calendar';

/** A file to write: a name inside the output folder, and what it holds. */
export interface OutputFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/** The faces that sheets and pages are set in. */
export type FontFace =
  | 'sans'
  | 'sans-bold'
  | 'sans-italic'
  | 'mono'
  | 'mono-bold'
  | 'mono-italic'
  | 'mono-bold-italic'
  | 'mono-wide';

/** Gives the bytes of a font file. */
export type FontSource = (face: FontFace) => Uint8Array;

/** The production book and the plan made from it. */
export interface Production {
  readonly book: Book;
  readonly plan: Plan;
  /** Names that the book still has from an earlier draft, and what they are now. */
  readonly renames: Renames;
}

/** All that a renderer may know. */
export interface RenderInput {
  readonly script: Script;
  readonly pages: Pages;
  readonly breakdown: Breakdown;
  readonly purchases: readonly PurchaseLine[];
  /** Null when the script has no production book. */
  readonly production: Production | null;
  /** What changed since the draft that was handed out before. */
  readonly comparison: Comparison;
  /** The text of the earlier breakdown that is to be kept, or null. */
  readonly previous: string | null;
  readonly messages: readonly Diagnostic[];
  readonly fonts: FontSource;
  /** For the date inside a PDF; never the clock. */
  readonly creationDate: Date;
}

export interface Rendered {
  readonly files: readonly OutputFile[];
  readonly messages: readonly Diagnostic[];
}

export type Render = (input: RenderInput) => Promise<Rendered>;

/** One row of the record of renderers. */
export interface Renderer {
  /** What the output is for, in the words of the help text. */
  readonly title: string;
  /** The files it writes. */
  readonly files: readonly string[];
  /** The files it writes only when there is the breakdown of an earlier draft. */
  readonly filesOfRevision?: readonly string[];
  /** True when it can only be made with a production book. */
  readonly needsBook?: boolean;
  /** Loads the code only when the output is asked for. */
  readonly load: () => Promise<Render>;
}
