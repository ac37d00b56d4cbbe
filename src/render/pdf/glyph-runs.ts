import { createTypesetter, type GlyphRun } from '../layout/typesetter.js';
import type { FontFace } from '../types.js';
import type { FontBook } from './font-book.js';

/** Splits text by what faces can print. */
export interface GlyphSplitter {
  /** Runs that can be printed; a character that neither `face` nor the fallback has is replaced. */
  split(text: string, face: FontFace): readonly GlyphRun[];
  /** Code points that were replaced, in the order met. */
  readonly missing: ReadonlySet<number>;
}

/** Makes a splitter for pages of one pitch: a lacking character is one empty square, so that columns hold. */
export function createGlyphSplitter(fonts: FontBook, fallback: FontFace = 'mono-wide'): GlyphSplitter {
  const { runs, missing } = createTypesetter(fonts, fallback, () => '\u25a1');
  return { split: runs, missing };
}
