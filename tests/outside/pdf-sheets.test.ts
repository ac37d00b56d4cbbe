import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { outputNames, renderers } from '../../src/render/renderers.js';
import { compileText } from '../support/compile-text.js';
import { readPdfType } from '../support/pdf-fonts.js';
import { type PdfContent, readPdf } from '../support/pdf-positions.js';
import { packageRoot } from '../support/test-host.js';

const sample = fs.readFileSync(path.join(packageRoot, 'samples/slack-water/slack-water.md'), 'utf8');
const outputs = outputNames.filter((name) => !renderers[name].needsBook);

interface Json {
  readonly pages: number;
  readonly scenes: readonly {
    readonly number: string;
    readonly hazards: readonly { readonly title: string }[];
    readonly cast: readonly { readonly name: string }[];
    readonly elements: readonly { readonly name: string; readonly known: string; readonly category: string }[];
  }[];
}

/** Letters and digits of a text, in capitals: how another reader cuts words and spaces does not matter. */
const letters = (text: string) => text.toUpperCase().replace(/[^\p{L}\p{N}]+/gu, '');

const pdfs = new Map<string, { readonly bytes: Uint8Array; readonly content: PdfContent }>();
let json: Json;

beforeAll(async () => {
  const { files } = await compileText(sample, outputs);
  for (const { name, content } of files) {
    if (name === 'breakdown.json') json = JSON.parse(String(content));
    if (name.endsWith('.pdf'))
      pdfs.set(name, { bytes: content as Uint8Array, content: await readPdf(content as Uint8Array) });
  }
});

const pdf = (name: string) => {
  const found = pdfs.get(name);
  if (!found) throw new Error(`not written: ${name}`);
  return found;
};
const pageText = ({ texts }: PdfContent, page: number) =>
  letters(
    texts
      .filter((one) => one.page === page)
      .map(({ text }) => text)
      .join(' '),
  );

describe('the printed sheets of the sample, read by pdfjs-dist', () => {
  it('are all there', () => {
    expect([...pdfs.keys()].sort()).toEqual([
      'costumes.pdf',
      'indexes.pdf',
      'props.pdf',
      'purchases.pdf',
      'questions.pdf',
      'script.pdf',
      'sheets.pdf',
    ]);
  });

  // ANSI/ASME Y14.1: Letter is 8.5 by 11 inches, 612 by 792 points, upright or turned.
  it('are on the paper that the script asks for, with every word a quarter of an inch inside it', () => {
    for (const [name, { content }] of pdfs) {
      for (const { width, height } of content.pages)
        expect(
          [width, height].sort((a, b) => a - b),
          name,
        ).toEqual([612, 792]);
      for (const { page, x, y, text } of content.texts) {
        const { width = 0, height = 0 } = content.pages[page - 1] ?? {};
        const isInside = x >= 18 && x <= width - 18 && y >= 18 && y <= height - 18;
        expect(isInside, `${name}, page ${page}: "${text}" at ${x}, ${y}`).toBe(true);
      }
    }
  });

  // ISO 216: A4 is 210 by 297 mm, 595.28 by 841.89 points.
  it('are on A4 when it is asked for', async () => {
    const { files } = await compileText(sample.replace('---\n', '---\npaper: a4\n'), ['sheets']);
    const { pages } = await readPdf(files[0]?.content as Uint8Array);
    for (const { width, height } of pages) {
      const [short = 0, long = 0] = [width, height].sort((a, b) => a - b);
      expect(short).toBeCloseTo(595.28, 1);
      expect(long).toBeCloseTo(841.89, 1);
    }
  });

  it('hold their faces, in 10 points at least', async () => {
    for (const [name, { bytes }] of pdfs) {
      const { lacking, embedded, sizes } = await readPdfType(bytes);
      expect(lacking, name).toEqual([]);
      expect(embedded.length, name).toBeGreaterThan(0);
      expect(sizes[0], name).toBeGreaterThanOrEqual(10);
    }
  });

  it('give each scene a sheet with its people, its things by name and its dangers', () => {
    const { content } = pdf('sheets.pdf');
    const pages = content.pages.map((_, at) => pageText(content, at + 1));
    for (const { number, cast, elements, hazards } of json.scenes) {
      const own = pages.filter((text) => new RegExp(`^SCENE${number}(?:INSIDE|OUTSIDE)`).test(text));
      expect(own.length, `sheets of scene ${number}`).toBe(1);
      const told = elements.filter(({ known }) => known !== 'implied');
      for (const { name } of [...cast, ...told]) expect(own[0], `scene ${number}`).toContain(letters(name));
      for (const { title } of hazards) expect(own[0], `scene ${number}`).toContain(letters(title));
      if (hazards.length === 0) expect(own[0]).toContain('NOTHINGRAISEDCHECKEDBY');
    }
  });

  it('call nothing safe', () => {
    for (const [name, { content }] of pdfs) {
      const text = content.texts.map((one) => one.text).join(' ');
      expect(text, name).not.toMatch(/\b(?:is|are|be|it.s) (?:quite |perfectly |now )?safe\b/i);
    }
  });
});
