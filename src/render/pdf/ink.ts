import type { Font } from 'fontkit';
import type { LineItem, RectItem, TextItem, TriangleItem } from '../layout/page-tree.js';
import type { FontFace } from '../types.js';
import { num, openPageContent } from './page-content.js';
import { plainLayout } from './plain-layout.js';

/** Writes the items of pages as PDF operators, which costs a fifth of pdfkit's own text call. */
export interface Ink {
  begin(pageHeight: number): void;
  text(item: TextItem): void;
  line(item: LineItem): void;
  rect(item: RectItem): void;
  triangle(item: TriangleItem): void;
  end(): void;
}

/** A face as pdfkit embeds it. */
interface EmbeddedFace {
  readonly id: string;
  encode(text: string): [string[], unknown];
  ref(): unknown;
}

interface Pen {
  readonly face: EmbeddedFace;
  /** The bytes of each character's glyph as the file writes them, by code point. */
  readonly codes: Map<number, string>;
}

/** Makes the ink of one document. `open` gives the font of a face; each is embedded once, cut down to what is used. */
export function createInk(document: PDFKit.PDFDocument, open: (face: FontFace) => Font): Ink {
  const pens = new Map<FontFace, Pen>();
  let height = 0;
  let content = openPageContent(height);
  const penOf = (face: FontFace): Pen => {
    const known = pens.get(face);
    if (known) return known;
    document.font(plainLayout(open(face)) as unknown as PDFKit.Mixins.PDFFontSource);
    const pen = { face: (document as unknown as { _font: EmbeddedFace })._font, codes: new Map<number, string>() };
    pens.set(face, pen);
    return pen;
  };
  return {
    begin(pageHeight) {
      height = pageHeight;
      content = openPageContent(pageHeight);
    },
    text(item) {
      const pen = penOf(item.face);
      document.page.fonts[pen.face.id] ??= pen.face.ref();
      content.text(pen.face.id, item.size, item.x, height - item.y, encode(item.text, pen));
    },
    line(item) {
      content.stroke(item.weight, item.dashed);
      content.draw(`${num(item.x)} ${num(height - item.y)} m ${num(item.x2)} ${num(height - item.y2)} l S`);
    },
    rect(item) {
      content.stroke(item.weight, false);
      const corner = `${num(item.x)} ${num(height - item.y - item.height)}`;
      content.draw(`${corner} ${num(item.width)} ${num(item.height)} re S`);
    },
    triangle(item) {
      content.stroke(item.size * 0.09, false);
      content.draw(trianglePath(item, height));
    },
    end() {
      document.addContent(content.bytes());
    },
  };
}

/** A text as the bytes of its glyphs, two each, ready to stand in the parentheses of a PDF string. */
function encode(text: string, pen: Pen): string {
  let bytes = '';
  for (let i = 0; i < text.length; i++) {
    const codePoint = text.codePointAt(i) as number;
    if (codePoint > 0xffff) i++;
    bytes += pen.codes.get(codePoint) ?? learnCode(codePoint, pen);
  }
  return bytes;
}

function learnCode(codePoint: number, pen: Pen): string {
  const hex = pen.face.encode(String.fromCodePoint(codePoint))[0].join('');
  const code = hex.replace(/../g, (pair) => escapeByte(String.fromCharCode(Number.parseInt(pair, 16))));
  pen.codes.set(codePoint, code);
  return code;
}

/** ISO 32000-1, 7.3.4.2: parentheses and backslashes are escaped; a bare carriage return would be read as a line feed. */
function escapeByte(byte: string): string {
  if (byte === '\r') return '\\r';
  return /[()\\]/.test(byte) ? `\\${byte}` : byte;
}

function trianglePath(item: TriangleItem, height: number): string {
  const { x, size } = item;
  const base = height - item.y - size;
  const middle = x + size * 0.55;
  const outline = `${num(x)} ${num(base)} m ${num(x + size * 1.1)} ${num(base)} l ${num(middle)} ${num(base + size)} l s`;
  const stroke = `${num(middle)} ${num(base + size * 0.62)} m ${num(middle)} ${num(base + size * 0.3)} l S`;
  const dot = `${num(middle)} ${num(base + size * 0.2)} m ${num(middle)} ${num(base + size * 0.11)} l S`;
  return `${outline} ${stroke} ${dot}`;
}
