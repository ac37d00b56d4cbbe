/** The content of one page as PDF operators; what is set already is not said again. Points from the bottom left corner. */
export interface PageContent {
  /** Writes glyph bytes, ready for the parentheses of a PDF string, on a baseline. */
  text(font: string, size: number, x: number, y: number, glyphs: string): void;
  /** Sets the pen for what is drawn next. */
  stroke(weight: number, dashed: boolean): void;
  /** Adds drawing operators after the pen is set. */
  draw(operators: string): void;
  bytes(): Uint8Array;
}

/** Opens the content of a page. pdfkit begins each page with its own upside-down coordinates: they are turned back. */
export function openPageContent(pageHeight: number): PageContent {
  let out = `q 1 0 0 -1 0 ${num(pageHeight)} cm\n`;
  let type = '';
  let pen = '';
  let inText = false;
  const endText = () => {
    if (inText) out += 'ET\n';
    inText = false;
  };
  return {
    text(font, size, x, y, glyphs) {
      if (!inText) out += 'BT\n';
      inText = true;
      const next = `/${font} ${num(size)} Tf `;
      if (next !== type) out += next;
      type = next;
      out += `1 0 0 1 ${num(x)} ${num(y)} Tm (${glyphs}) Tj\n`;
    },
    stroke(weight, dashed) {
      endText();
      const next = `${num(weight)} w ${dashed ? '[2 2]' : '[]'} 0 d `;
      if (next !== pen) out += next;
      pen = next;
    },
    draw(operators) {
      endText();
      out += `${operators}\n`;
    },
    bytes() {
      endText();
      return toBytes(`${out}Q`);
    },
  };
}

/** A number as PDF writes it, to a hundredth of a point. */
export function num(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** Characters up to U+00FF as bytes. */
function toBytes(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes;
}
