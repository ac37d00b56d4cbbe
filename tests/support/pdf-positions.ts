import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A piece of text as another reader finds it in a PDF; points from the paper's top left corner to the baseline. */
export interface PdfText {
  readonly page: number;
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

export interface PdfContent {
  readonly pages: readonly { readonly width: number; readonly height: number }[];
  readonly texts: readonly PdfText[];
}

/** Reads a PDF with pdfjs-dist: page sizes, and every piece of text with its place. */
export async function readPdf(bytes: Uint8Array): Promise<PdfContent> {
  const document = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0, disableFontFace: true }).promise;
  const pages: { width: number; height: number }[] = [];
  const texts: PdfText[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    pages.push({ width, height });
    const { items } = await page.getTextContent({ disableNormalization: true });
    for (const item of items) {
      if (!('str' in item) || item.str.trim() === '') continue;
      texts.push({ page: number, text: item.str, x: item.transform[4], y: height - item.transform[5] });
    }
  }
  await document.destroy();
  return { pages, texts };
}
