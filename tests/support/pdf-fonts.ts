import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** What another reader finds out about the type of a PDF. */
export interface PdfType {
  /** Names of the faces, as the file embeds them. */
  readonly embedded: readonly string[];
  /** Names of faces that the file asks for and does not hold. */
  readonly lacking: readonly string[];
  /** Type sizes in points, smallest first. */
  readonly sizes: readonly number[];
}

/** Reads with pdfjs-dist which faces a PDF holds and which sizes it sets. */
export async function readPdfType(bytes: Uint8Array): Promise<PdfType> {
  const document = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0, fontExtraProperties: true }).promise;
  const embedded = new Set<string>();
  const lacking = new Set<string>();
  const sizes = new Set<number>();
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { fnArray, argsArray } = await page.getOperatorList();
    for (let i = 0; i < fnArray.length; i++) {
      if (fnArray[i] !== OPS.setFont) continue;
      const [id, size] = argsArray[i] as [string, number];
      sizes.add(size);
      const font = page.commonObjs.get(id) as { name: string; missingFile?: boolean; data?: Uint8Array };
      (font.missingFile || !font.data ? lacking : embedded).add(font.name);
    }
  }
  await document.destroy();
  return { embedded: [...embedded], lacking: [...lacking], sizes: [...sizes].sort((a, b) => a - b) };
}
