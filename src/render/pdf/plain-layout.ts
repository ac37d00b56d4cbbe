import type { Font, Glyph } from 'fontkit';

/**
 * The same font, laid out one glyph a character. Sheets are measured by advance widths alone; joined letters and
 * kerning would make the printed line differ from the measured one.
 */
export function plainLayout(font: Font): Font {
  return Object.create(font, { layout: { value: (text: string) => layOutPlainly(text, font) } }) as Font;
}

function layOutPlainly(text: string, font: Font) {
  const glyphs = [...text].map((character) => glyphOf(character.codePointAt(0) as number, font));
  const positions = glyphs.map((glyph) => ({ xAdvance: glyph.advanceWidth, yAdvance: 0, xOffset: 0, yOffset: 0 }));
  return { glyphs, positions, advanceWidth: glyphs.reduce((sum, glyph) => sum + glyph.advanceWidth, 0) };
}

/** A glyph that knows its character: one that fontkit met first as a part of another (the Z of Ž) does not. */
function glyphOf(codePoint: number, font: Font): Glyph {
  const { id, advanceWidth } = font.glyphForCodePoint(codePoint);
  return { id, advanceWidth, codePoints: [codePoint] };
}
