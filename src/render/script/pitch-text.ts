import { measureText } from '../../page/text-width.js';
import type { PageRun } from '../../page/types.js';
import type { TextStyle } from '../../script/types.js';
import { pageType } from '../../trade/page-measures.js';
import type { TextItem } from '../layout/page-tree.js';
import type { GlyphSplitter } from '../pdf/glyph-runs.js';
import type { FontFace } from '../types.js';

const faces: Record<TextStyle, FontFace> = {
  plain: 'mono',
  italic: 'mono-italic',
  bold: 'mono-bold',
  'bold italic': 'mono-bold-italic',
};

/** How far below the top of its row a line of type stands, in points: common practice. */
const ascent = 9;

/** A word with the space after it, or a space alone. */
const wordAndSpace = /[^ ]+ ?| /gu;

/** The baseline of a row, in points from the top of the paper; row 1 is the first of the body. */
export function baselineOf(row: number): number {
  return pageType.top + (row - 1) * pageType.leading + ascent;
}

/**
 * Sets runs from a column on. Each word stands exactly at its column, so that the face's own advance width, a
 * thousandth narrower than the pitch, never adds up; the space after it stays with it for those who copy the text.
 */
export function setAtPitch(runs: readonly PageRun[], column: number, y: number, glyphs: GlyphSplitter): TextItem[] {
  const items: TextItem[] = [];
  let cell = column;
  for (const { text, style } of runs) {
    for (const [word] of text.matchAll(wordAndSpace)) {
      setWord(items, word, faces[style], cell, y, glyphs);
      cell += measureText(word);
    }
  }
  return items;
}

function setWord(
  items: TextItem[],
  word: string,
  wanted: FontFace,
  column: number,
  y: number,
  glyphs: GlyphSplitter,
): void {
  let cell = column;
  for (const { face, text } of glyphs.split(word, wanted)) {
    if (text !== ' ') {
      items.push({ kind: 'text', x: cell * pageType.characterWidth, y, text, face, size: pageType.size });
    }
    cell += measureText(text);
  }
}

/** The same for plain text. */
export function setPlain(text: string, column: number, y: number, glyphs: GlyphSplitter): TextItem[] {
  return setAtPitch([{ text, style: 'plain' }], column, y, glyphs);
}
