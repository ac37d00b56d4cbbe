import type { Diagnostic } from '../base/diagnostic.js';
import type { Range } from '../base/text-range.js';
import type { Note, Person } from './types.js';

/** A note line before anybody knows what it says. */
export interface NoteLine {
  readonly text: string;
  readonly at: Range;
  /** True when a bullet stood before it. */
  readonly bulleted: boolean;
  /** The place in the source of a stretch of the text. */
  readonly placeOf: (start: number, end: number) => Range;
}

/** What notes are read with. */
export interface NoteContext {
  readonly people: readonly Person[];
  /** True for the name of a mark or a definition. */
  readonly isElement: (name: string) => boolean;
  /** True for words that the action of the script holds. */
  readonly isSpokenOf: (name: string) => boolean;
  readonly messages: Diagnostic[];
}

/** A note that nobody but the reader of the sheet understands: it prints as it is. */
export function remark(line: NoteLine): Note {
  return { text: line.text, at: line.at, kind: 'free', line: line.text };
}
