/** Where a scene is set, as headings abbreviate it. */
export interface SettingRow {
  /** As written, without stops or spaces. */
  readonly written: string;
  readonly setting: 'INT' | 'EXT' | 'INT/EXT';
  /** True for the words in full: understood, with a hint, because a heading abbreviates them. */
  readonly inFull: boolean;
  readonly source: string;
}

const abbreviations = 'BBC Writersroom, Screenplay Format (M. Carless, 2004); Storysense, headings';
const joined = 'Storysense, headings: INT/EXT.; Stage 32 threads on headings: INT./EXT. and EXT./INT.';

/** The settings, longest first, so that `INT/EXT` is tried before `INT`. */
export const settings: readonly SettingRow[] = [
  { written: 'INTERIOR', setting: 'INT', inFull: true, source: 'common practice' },
  { written: 'EXTERIOR', setting: 'EXT', inFull: true, source: 'common practice' },
  { written: 'INT/EXT', setting: 'INT/EXT', inFull: false, source: joined },
  { written: 'EXT/INT', setting: 'INT/EXT', inFull: false, source: joined },
  { written: 'I/E', setting: 'INT/EXT', inFull: false, source: 'common practice' },
  { written: 'E/I', setting: 'INT/EXT', inFull: false, source: 'common practice' },
  { written: 'INT', setting: 'INT', inFull: false, source: abbreviations },
  { written: 'EXT', setting: 'EXT', inFull: false, source: abbreviations },
];
