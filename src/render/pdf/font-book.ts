import { create, type Font } from 'fontkit';
import type { Metrics } from '../layout/typesetter.js';
import type { FontFace, FontSource } from '../types.js';

/** The faces of a run, each opened when first asked for. */
export interface FontBook extends Metrics {
  open(face: FontFace): Font;
}

const books = new WeakMap<FontSource, FontBook>();

/** The font book over a source of font bytes; one per source, so that several documents share the opened faces. */
export function fontBookOf(source: FontSource): FontBook {
  const known = books.get(source);
  if (known) return known;
  const book = createFontBook(source);
  books.set(source, book);
  return book;
}

function createFontBook(source: FontSource): FontBook {
  const fonts = new Map<FontFace, Font>();
  const open = (face: FontFace): Font => {
    const known = fonts.get(face);
    if (known) return known;
    const font = create(source(face));
    fonts.set(face, font);
    return font;
  };
  const advance = (face: FontFace, codePoint: number): number => {
    const font = open(face);
    if (!font.hasGlyphForCodePoint(codePoint)) return -1;
    return (font.glyphForCodePoint(codePoint).advanceWidth * 1000) / font.unitsPerEm;
  };
  return { open, advance };
}
