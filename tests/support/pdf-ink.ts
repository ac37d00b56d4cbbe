import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A piece of text as another reader finds it, with the size it is printed in and its right end; points from the paper's top left corner. */
export interface PrintedText {
  readonly text: string;
  readonly x: number;
  readonly right: number;
  readonly y: number;
  readonly size: number;
}

/** One page: its size, its texts, and whether anything on it has a colour. */
export interface PrintedPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly PrintedText[];
  readonly coloured: boolean;
}

/** Reads what is printed on each page of a PDF with pdfjs-dist. */
export async function readInk(bytes: Uint8Array): Promise<PrintedPage[]> {
  const document = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0, disableFontFace: true }).promise;
  const pages: PrintedPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const { items } = await page.getTextContent({ disableNormalization: true });
    const texts = items.flatMap((item): PrintedText[] => {
      if (!('str' in item) || item.str.trim() === '') return [];
      const [a, b, , , x, y] = item.transform as [number, number, number, number, number, number];
      return [{ text: item.str, x, right: x + item.width, y: height - y, size: Math.hypot(a, b) }];
    });
    pages.push({ width, height, texts, coloured: hasColour(await page.getOperatorList()) });
  }
  await document.destroy();
  return pages;
}

/** True for a fill or stroke that is neither black, grey nor white. */
function hasColour({ fnArray, argsArray }: { readonly fnArray: number[]; readonly argsArray: unknown[] }): boolean {
  const rgb: ReadonlySet<number> = new Set([OPS.setFillRGBColor, OPS.setStrokeRGBColor]);
  return fnArray.some((operator, at) => rgb.has(operator) && !isGrey(argsArray[at]));
}

function isGrey(args: unknown): boolean {
  const [first] = args as [unknown];
  if (typeof first === 'string') return /^#(..)\1\1$/i.test(first);
  const [red, green, blue] = args as [number, number, number];
  return red === green && green === blue;
}
