import { isOneCellEach, measureText } from '../../page/text-width.js';
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

/** A few words and the space after them; where letters may be wide, one word at a time. */
const fewWords = /.{1,20}(?= |$) ?|[^ ]{1,20} ?| /gu;
const oneWord = /[^ ]+ ?| /gu;

/** The baseline of a row, in points from the top of the paper; row 1 is the first of the body. */
export function baselineOf(row: number): number {
  return pageType.top + (row - 1) * pageType.leading + ascent;
}

/**
 * Sets runs from a column on. The face's own advance width is a two-hundredth of a point narrower than the pitch: a
 * line is set in short pieces, each exactly at its column, so that no letter stands a tenth of a point from its own.
 */
export function setAtPitch(runs: readonly PageRun[], column: number, y: number, glyphs: GlyphSplitter): TextItem[] {
  const items: TextItem[] = [];
  let cell = column;
  for (const { text, style } of runs) {
    for (const [piece] of text.matchAll(isOneCellEach(text) ? fewWords : oneWord)) {
      setPiece(items, piece, faces[style], cell, y, glyphs);
      cell += measureText(piece);
    }
  }
  return items;
}

function setPiece(
  items: TextItem[],
  piece: string,
  wanted: FontFace,
  column: number,
  y: number,
  glyphs: GlyphSplitter,
): void {
  let cell = column;
  for (const { face, text } of glyphs.split(piece, wanted)) {
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
