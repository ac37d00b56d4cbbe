import { execFileSync, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readFontFile } from '../../src/host/font-files.js';
import { paginate } from '../../src/page/paginate.js';
import { renderScriptPages } from '../../src/render/script/render-script-pages.js';
import type { RenderInput } from '../../src/render/types.js';
import type { Script } from '../../src/script/types.js';
import { harbourScript } from '../support/harbour-script.js';
import { type PdfContent, readPdf } from '../support/pdf-positions.js';
import { action, scene, script } from '../support/script-builder.js';

async function print(text: Script) {
  const input = { script: text, pages: paginate(text).pages, fonts: readFontFile, creationDate: new Date(0) };
  const { files, messages } = await renderScriptPages(input as unknown as RenderInput);
  return { bytes: files[0]?.content as Uint8Array, messages };
}

const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'script-pdf-'));
afterAll(() => fs.rmSync(folder, { recursive: true }));

/** Poppler is a second opinion for those who have it. */
const hasPoppler = spawnSync('pdftotext', ['-v']).error === undefined;

/** What a program of poppler says of a PDF; its name and arguments, with the file in place of `FILE`. */
function poppler(bytes: Uint8Array, program: string, ...args: string[]): string {
  const file = path.join(folder, 'script.pdf');
  fs.writeFileSync(file, bytes);
  return execFileSync(
    program,
    args.map((arg) => (arg === 'FILE' ? file : arg)),
    { encoding: 'utf8' },
  );
}

/** The left end of every word, in points, as poppler finds it. */
function wordPlaces(bytes: Uint8Array): { word: string; x: number }[] {
  const boxes = poppler(bytes, 'pdftotext', '-bbox', 'FILE', '-').matchAll(/<word xMin="([\d.]+)"[^>]*>([^<]*)</g);
  return Array.from(boxes, ([, x, word]) => ({ word: word ?? '', x: Number(x) }));
}

const inch = 72;
const pitch = inch / 10;
const titled = { title: 'The Second Tin', author: 'A. Writer', draft: '3', contact: 'Quay 4\nHarbour' };

describe('the printed page, read by pdfjs-dist', () => {
  let content: PdfContent;
  let bytes: Uint8Array;
  beforeAll(async () => {
    bytes = (await print(harbourScript(titled))).bytes;
    content = await readPdf(bytes);
  });
  const find = (text: string, page?: number) => {
    const found = content.texts.find((one) => one.text.includes(text) && (page === undefined || one.page === page));
    if (!found) throw new Error(`not printed: ${text}`);
    return found;
  };

  // P1: 8.5 x 11 in (Wikipedia, Screenplay).
  it('P1: is Letter', () => {
    expect(content.pages.every(({ width, height }) => width === 8.5 * inch && height === 11 * inch)).toBe(true);
  });
  // P2: 210 x 297 mm (ISO 216).
  it('P2: is A4 when the script asks for it', async () => {
    const { pages } = await readPdf((await print(harbourScript({ paper: 'a4' }))).bytes);
    expect(pages[0]?.width).toBeCloseTo((210 / 25.4) * inch, 1);
    expect(pages[0]?.height).toBeCloseTo((297 / 25.4) * inch, 1);
  });
  // P10, P14, P16, P18, P19 in Gorman's column: 1.5, 2.5, 3.0, 3.7 and 6.0 in from the left edge.
  it.each([
    ['P10: heading', 'EXT.', 1.5],
    ['P10: action', 'Fog', 1.5],
    ['P13: speech', 'Stay', 2.5],
    ['P16: parenthetical', '(to', 3.0],
    ['P18: cue', 'NORA', 3.7],
    ['P19: transition', 'CUT', 6.0],
  ])('%s', (_name, text, inches) => {
    const texts = content.texts.filter((one) => one.text.startsWith(text) && one.page > 1);
    expect(texts.some((one) => Math.abs(one.x - inches * inch) < 0.01)).toBe(true);
  });
  // P4: 10 characters and 6 lines to the inch (ArtsEnt).
  it('P4: sets every line on the leading', () => {
    for (const { y, text, page } of content.texts) {
      const row = (y - 9) / 12;
      expect(Math.abs(row - Math.round(row)), `${page} ${text}`).toBeLessThan(0.001);
    }
  });
  it.skipIf(!hasPoppler)('P4: sets every word on the pitch, to a tenth of a point', () => {
    const places = wordPlaces(bytes);
    expect(places.length).toBeGreaterThan(500);
    for (const { x, word } of places) {
      if (word === '2.' || word === '3.') continue;
      expect(Math.abs(x / pitch - Math.round(x / pitch)) * pitch, word).toBeLessThan(0.1);
    }
  });
  // P20: 1.0 in to the body (Academy 1998, 2014).
  it('P20: starts the body an inch down', () => {
    const tops = content.texts.filter((one) => one.page === 2).map((one) => one.y);
    expect(Math.min(...tops)).toBe(inch + 9);
  });
  // P27, P28: upper right, 0.5 in down, 0.75 in from the edge, from page 2 on (Academy 1998). P24: line 3 (ArtsEnt).
  it('P27, P28: numbers the pages from the second on', () => {
    const numbers = content.texts.filter((one) => one.y < inch);
    expect(numbers.map((one) => [one.page, one.text.trim()])).toEqual([
      [3, '2.'],
      [4, '3.'],
    ]);
    for (const { x, y } of numbers) {
      expect(x + 2 * pitch).toBeCloseTo(8.5 * inch - 0.75 * inch, 1);
      expect(y).toBeGreaterThan(24);
      expect(y).toBeLessThan(36);
    }
  });
  // N17: numbers in both margins (Academy 1998).
  it('N17: puts typed scene numbers in both margins', () => {
    const y = find('CHANDLERY').y;
    const numbers = content.texts.filter((one) => one.page === 2 && one.y === y && one.text.trim() === '2');
    expect(numbers.map((one) => one.x < 1.5 * inch || one.x > 7.5 * inch)).toEqual([true, true]);
  });
  it('prints a title page without a number, and none without title or author', async () => {
    expect(find('SECOND', 1).y).toBeGreaterThan(3 * inch);
    expect(find('Writer', 1)).toBeDefined();
    expect(find('Quay', 1).y).toBeGreaterThan(9 * inch);
    const bare = await readPdf((await print(harbourScript())).bytes);
    expect(bare.pages).toHaveLength(content.pages.length - 1);
    expect(bare.texts[0]?.text).toMatch(/^ACT/);
  });

  // Second opinion: poppler.
  it.skipIf(!hasPoppler)('gives its text to pdftotext line by line', () => {
    const text = poppler(bytes, 'pdftotext', '-layout', 'FILE', '-');
    expect(text).toContain('NORA (60), in a yellow oilskin two sizes too big, ties it up\n');
    expect(text).toMatch(/^2 {3}INT\. CHANDLERY - DAY {10,}2$/m);
    expect(text).toContain('½, ⅜, Ж');
  });
  it.skipIf(!hasPoppler)('embeds every face, Courier among them (P3), with its characters', () => {
    const rows = poppler(bytes, 'pdffonts', 'FILE').trim().split('\n').slice(2);
    expect(rows.some((row) => row.includes('CourierPrime-Regular'))).toBe(true);
    for (const row of rows) expect(row).toMatch(/\byes +yes +yes\b/);
  });
  it('is the same, byte for byte, the second time', async () => {
    expect(Buffer.compare(bytes, (await print(harbourScript(titled))).bytes)).toBe(0);
  });
});

describe('characters that no face has', () => {
  const text = 'A sign: 灯台 and a lamp.';
  const source = `# INT. STORE - DAY\n\n${text}\n`;
  const foreign = script([scene('INT. STORE - DAY', [action(text)])], {}, { source });
  it('are one message each, at their place', async () => {
    const { messages } = await print(foreign);
    expect(messages.map(({ code, place }) => [code, place?.start.line, place?.start.column])).toEqual([
      ['font-glyph-missing', 3, 9],
      ['font-glyph-missing', 3, 10],
    ]);
  });
  it.skipIf(!hasPoppler)('leave the columns after them where they are', async () => {
    const { bytes } = await print(foreign);
    // Two wide letters take four columns: 15 + "A sign: " + 4 + " ".
    expect(wordPlaces(bytes).find((one) => one.word === 'and')?.x).toBeCloseTo((15 + 8 + 4 + 1) * pitch, 2);
  });
});
