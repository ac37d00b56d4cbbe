import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { readFontFile } from '../../../src/host/font-files.js';
import type { Item } from '../../../src/render/layout/page-tree.js';
import { createTypesetter } from '../../../src/render/layout/typesetter.js';
import { fontBookOf } from '../../../src/render/pdf/font-book.js';
import { createGlyphSplitter } from '../../../src/render/pdf/glyph-runs.js';
import { sayMissingGlyphs } from '../../../src/render/pdf/missing-glyphs.js';
import { paintPdf } from '../../../src/render/pdf/paint.js';
import type { FontFace } from '../../../src/render/types.js';
import { readPdfType } from '../../support/pdf-fonts.js';
import { readPdf } from '../../support/pdf-positions.js';

const book = fontBookOf(readFontFile);
const type = createTypesetter(book);
const info = { title: 'A title', author: 'An author', creationDate: new Date(0) };
const text = (words: string, y: number, face: FontFace = 'sans'): Item => ({
  kind: 'text',
  x: 72,
  y,
  text: words,
  face,
  size: 12,
});
const paint = (items: readonly Item[]) =>
  paintPdf([{ width: 612, height: 792, items, bookmarks: ['One'] }], info, book);

const words = 'Nora’s “storm lantern” — 1 3/8 pages, Ænes, Žofie, Жук, ½ → soaked';

describe('paintPdf, read back by pdfjs-dist', () => {
  it('puts text where the page tree says', async () => {
    const { texts, pages } = await readPdf(await paint([text(words, 100), text('below', 120.5, 'sans-bold')]));
    expect(pages).toEqual([{ width: 612, height: 792 }]);
    expect(texts[0]).toMatchObject({ text: words, x: 72 });
    expect(texts[0]?.y).toBeCloseTo(100, 2);
    expect(texts[1]?.y).toBeCloseTo(120.5, 2);
  });

  it('paints the same bytes whatever was painted before with the same faces', async () => {
    const pages = [{ width: 612, height: 792, items: [text('Zoë, zoo, ı', 100)], bookmarks: [] }];
    const fresh = await paintPdf(
      pages,
      info,
      fontBookOf((face) => readFontFile(face)),
    );
    await paint([text('Žofie, žába, î', 100)]);
    const later = await paintPdf(pages, info, book);
    expect(Buffer.from(later).equals(Buffer.from(fresh))).toBe(true);
  });

  it('writes every glyph number so that it is read back, those of parentheses and line ends too', async () => {
    // More than 255 glyphs: the numbers of the subset pass through every byte value.
    const all = Array.from({ length: 0x17f - 0xa1 }, (_, i) => String.fromCharCode(0xa1 + i)).filter(
      (one) => one !== '\u00ad',
    );
    const ascii = Array.from({ length: 94 }, (_, i) => String.fromCharCode(0x21 + i));
    const lines = [...ascii, ...all].join('').match(/.{1,40}/gu) ?? [];
    const { texts } = await readPdf(await paint(lines.map((line, i) => text(line, 100 + i * 20))));
    expect(texts.map((one) => one.text)).toEqual(lines);
  });

  it('paints the same bytes twice', async () => {
    const items = [text(words, 100), text('mono', 130, 'mono')];
    expect(Buffer.from(await paint(items)).equals(Buffer.from(await paint(items)))).toBe(true);
  });

  it('embeds only faces that are used, cut down to what is used', async () => {
    const bytes = await paint([text('abc', 100)]);
    const { embedded, lacking } = await readPdfType(bytes);
    expect(lacking).toEqual([]);
    expect(embedded).toHaveLength(1);
    expect(embedded[0]).toMatch(/^[A-Z]{6}\+SourceSans3/);
    expect(bytes.length).toBeLessThan(20_000);
  });

  it('names title, author and date, and no clock', async () => {
    const raw = Buffer.from(await paint([text('abc', 100)])).toString('latin1');
    expect(raw).toContain('(A title)');
    expect(raw).toContain('(An author)');
    expect(raw).toContain('(D:19700101000000Z)');
    expect(raw).not.toContain(`D:${new Date().getUTCFullYear()}`);
    expect(raw).toContain('/Title (One)');
  });
});

describe('widths', () => {
  // The reference is pdfkit's own measuring with kerning and joined letters switched off, which is how sheets are set.
  it.each(['sans', 'sans-bold', 'sans-italic', 'mono', 'mono-wide'] as const)('of %s are those of pdfkit', (face) => {
    const document = new PDFDocument({ font: '' });
    document.font(Buffer.from(readFontFile(face)), 11);
    for (const sample of ['Shooting day', 'WAVE To AV fi', 'Žofie, ænes', '1 3/8 · (found)']) {
      const reference = document.widthOfString(sample, {
        features: { kern: false, liga: false, clig: false } as never,
      });
      expect(type.measure(sample, face, 11)).toBeCloseTo(reference, 3);
    }
  });
});

describe('characters that faces lack', () => {
  it('come from the fallback when it has them', () => {
    const { split, missing } = createGlyphSplitter(book);
    expect(split('1 ⅜ page', 'mono')).toEqual([
      { face: 'mono', text: '1 ' },
      { face: 'mono-wide', text: '⅜' },
      { face: 'mono', text: ' page' },
    ]);
    expect([...missing]).toEqual([]);
  });

  it('print as a square of one pitch, or as a number on sheets, and are told once', () => {
    const glyphs = createGlyphSplitter(book);
    expect(
      glyphs
        .split('אבא', 'mono')
        .map((run) => run.text)
        .join(''),
    ).toBe('□□□');
    expect([...glyphs.missing]).toEqual([0x5d0, 0x5d1]);
    const sheets = createTypesetter(book);
    expect(sheets.runs('a א 🐐', 'sans')).toEqual([{ face: 'sans', text: 'a [U+05D0] [U+1F410]' }]);
    const messages = sayMissingGlyphs(sheets.missing, 'line one\nx א and 🐐\nא');
    expect(messages.map((message) => [message.code, message.place?.start])).toEqual([
      ['font-glyph-missing', { line: 2, column: 3, offset: 11 }],
      ['font-glyph-missing', { line: 2, column: 9, offset: 17 }],
    ]);
    expect(messages[1]?.place?.end.column).toBe(11);
  });

  it('are not those without ink', () => {
    const sheets = createTypesetter(book);
    expect(sheets.runs('soft\u00adhyphen\u200b, \u202amarks\u202c, tab\tend', 'sans')).toEqual([
      { face: 'sans', text: 'softhyphen, marks, tab end' },
    ]);
    expect(sheets.runs('cafe\u0301', 'sans')).toEqual([{ face: 'sans', text: 'café' }]);
    expect([...sheets.missing]).toEqual([]);
  });
});
