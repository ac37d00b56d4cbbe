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

const memory = 'common practice, from memory: the word in another language';

/** Settings in other languages, in capitals: put right in a hint, never read as a setting. */
export const foreignSettings: readonly {
  readonly word: string;
  readonly setting: 'INT' | 'EXT';
  readonly source: string;
}[] = [
  { word: 'INNEN', setting: 'INT', source: memory },
  { word: 'AUSSEN', setting: 'EXT', source: memory },
  { word: 'AU\u1e9eEN', setting: 'EXT', source: memory },
  { word: 'INT\u00c9RIEUR', setting: 'INT', source: memory },
  { word: 'INTERIEUR', setting: 'INT', source: memory },
  { word: 'EXT\u00c9RIEUR', setting: 'EXT', source: memory },
  { word: 'EXTERIEUR', setting: 'EXT', source: memory },
  { word: 'INTERNO', setting: 'INT', source: memory },
  { word: 'ESTERNO', setting: 'EXT', source: memory },
  { word: 'BINNEN', setting: 'INT', source: memory },
  { word: 'BUITEN', setting: 'EXT', source: memory },
  { word: '\u0418\u041d\u0422', setting: 'INT', source: memory },
  { word: '\u041d\u0410\u0422', setting: 'EXT', source: memory },
];
