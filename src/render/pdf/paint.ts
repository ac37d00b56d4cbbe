import PDFDocument from 'pdfkit';
import type { Item, PageTree } from '../layout/page-tree.js';
import type { FontFace } from '../types.js';
import type { FontBook } from './font-book.js';
import { createInk, type Ink } from './ink.js';

/** What a PDF says about itself. */
export interface PdfInfo {
  readonly title: string;
  readonly author: string | null;
  readonly creationDate: Date;
}

/** Paints page trees as a PDF. The same pages give the same bytes. */
export function paintPdf(pages: readonly PageTree[], info: PdfInfo, fonts: FontBook): Promise<Uint8Array> {
  const document = new PDFDocument({
    autoFirstPage: false,
    // An empty name keeps pdfkit from loading a built-in face that would never be used.
    font: '',
    pdfVersion: '1.5',
    displayTitle: true,
    info: {
      Title: info.title,
      ...(info.author ? { Author: info.author } : {}),
      Creator: 'Prepwright',
      Producer: 'Prepwright',
      CreationDate: info.creationDate,
    },
  });
  const ink = createInk(document, (face: FontFace) => fonts.open(face));
  const bytes = collect(document);
  for (const page of pages) paintPage(document, page, ink);
  document.end();
  return bytes;
}

function paintPage(document: PDFKit.PDFDocument, page: PageTree, ink: Ink): void {
  document.addPage({ size: [page.width, page.height], margin: 0 });
  for (const bookmark of page.bookmarks) document.outline.addItem(bookmark);
  ink.begin(page.height);
  for (const item of page.items) paintItem(item, ink);
  ink.end();
}

function paintItem(item: Item, ink: Ink): void {
  if (item.kind === 'text') ink.text(item);
  else if (item.kind === 'line') ink.line(item);
  else if (item.kind === 'rect') ink.rect(item);
  else ink.triangle(item);
}

function collect(document: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    document.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    document.on('error', reject);
    document.on('end', () => resolve(joinBytes(chunks)));
  });
}

function joinBytes(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
