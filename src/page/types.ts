import type { Eighths } from '../base/eighths.js';
import type { TextStyle } from '../script/types.js';

export type PageLineKind =
  | 'title'
  | 'part'
  | 'heading'
  | 'action'
  | 'cue'
  | 'parenthetical'
  | 'dialogue'
  | 'transition'
  | 'more'
  | 'omitted';

/** A run of characters of one style. */
export interface PageRun {
  readonly text: string;
  readonly style: TextStyle;
}

/** One printed line of the standard page. */
export interface PageLine {
  /** 1-based body line. */
  readonly row: number;
  /** Distance from the paper's left edge in characters of a tenth of an inch. */
  readonly column: number;
  readonly kind: PageLineKind;
  readonly runs: readonly PageRun[];
  /** The scene's number, on the first line of its heading. */
  readonly number?: string;
  /** 0-based scene, when the line belongs to one. */
  readonly scene: number | null;
}

export interface Page {
  /** 1-based. */
  readonly number: number;
  readonly lines: readonly PageLine[];
}

/** What a scene measures on the standard page. */
export interface SceneLength {
  /** 1-based page on which its heading stands. */
  readonly page: number;
  /** Counted lines: text plus one blank line for each block. */
  readonly lines: number;
  readonly eighths: Eighths;
}

/** The script laid out on the standard page. */
export interface Pages {
  readonly pages: readonly Page[];
  readonly scenes: readonly SceneLength[];
  /** The sum of the scenes' eighths. */
  readonly eighths: Eighths;
  readonly paper: 'letter' | 'a4';
}
