import type { Font } from 'fontkit';
import type { LineItem, RectItem, TextItem, TriangleItem } from '../layout/page-tree.js';
import type { FontFace } from '../types.js';
import { plainLayout } from './plain-layout.js';

/** Writes the content of pages in PDF operators, which costs a fifth of pdfkit's own text call. */
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
  /** The glyph of each character as the file writes it, by code point. */
  readonly codes: Map<number, string>;
}

/** Makes the ink of one document. `open` gives the font of a face; each is embedded once, cut down to what is used. */
export function createInk(document: PDFKit.PDFDocument, open: (face: FontFace) => Font): Ink {
  const pens = new Map<FontFace, Pen>();
  let height = 0;
  let out: string[] = [];
  let weight = -1;
  let dashed = false;

  const penOf = (face: FontFace): Pen => {
    const known = pens.get(face);
    if (known) return known;
    document.font(plainLayout(open(face)) as unknown as PDFKit.Mixins.PDFFontSource);
    const pen = { face: (document as unknown as { _font: EmbeddedFace })._font, codes: new Map<number, string>() };
    pens.set(face, pen);
    return pen;
  };
  const setStroke = (next: number, dash: boolean) => {
    if (next !== weight) out.push(`${num(next)} w`);
    if (dash !== dashed) out.push(dash ? '[2 2] 0 d' : '[] 0 d');
    weight = next;
    dashed = dash;
  };
  return {
    begin(pageHeight) {
      height = pageHeight;
      out = [`q 1 0 0 -1 0 ${num(pageHeight)} cm`];
      weight = -1;
      dashed = false;
    },
    text(item) {
      const pen = penOf(item.face);
      document.page.fonts[pen.face.id] ??= pen.face.ref();
      const at = `1 0 0 1 ${num(item.x)} ${num(height - item.y)} Tm`;
      out.push(`BT /${pen.face.id} ${num(item.size)} Tf ${at} <${encode(item.text, pen)}> Tj ET`);
    },
    line(item) {
      setStroke(item.weight, item.dashed);
      out.push(`${num(item.x)} ${num(height - item.y)} m ${num(item.x2)} ${num(height - item.y2)} l S`);
    },
    rect(item) {
      setStroke(item.weight, false);
      out.push(`${num(item.x)} ${num(height - item.y - item.height)} ${num(item.width)} ${num(item.height)} re S`);
    },
    triangle(item) {
      setStroke(item.size * 0.09, false);
      out.push(trianglePath(item, height));
    },
    end() {
      out.push('Q');
      document.addContent(out.join('\n'));
    },
  };
}

function encode(text: string, pen: Pen): string {
  let hex = '';
  for (let i = 0; i < text.length; i++) {
    const codePoint = text.codePointAt(i) as number;
    if (codePoint > 0xffff) i++;
    hex += pen.codes.get(codePoint) ?? learnCode(codePoint, pen);
  }
  return hex;
}

function learnCode(codePoint: number, pen: Pen): string {
  const code = pen.face.encode(String.fromCodePoint(codePoint))[0].join('');
  pen.codes.set(codePoint, code);
  return code;
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

function num(value: number): string {
  return String(Math.round(value * 100) / 100);
}
