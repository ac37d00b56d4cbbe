import type { Font } from 'fontkit';

/**
 * The same font, laid out one glyph a character. Sheets are measured by advance widths alone; joined letters and
 * kerning would make the printed line differ from the measured one.
 */
export function plainLayout(font: Font): Font {
  return Object.create(font, {
    layout: {
      value: (text: string) => {
        const glyphs = [...text].map((character) => font.glyphForCodePoint(character.codePointAt(0) as number));
        const positions = glyphs.map((glyph) => ({
          xAdvance: glyph.advanceWidth,
          yAdvance: 0,
          xOffset: 0,
          yOffset: 0,
        }));
        return { glyphs, positions, advanceWidth: glyphs.reduce((sum, glyph) => sum + glyph.advanceWidth, 0) };
      },
    },
  }) as Font;
}
