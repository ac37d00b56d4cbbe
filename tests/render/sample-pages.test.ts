import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { OutputName } from '../../src/render/types.js';
import { compileText } from '../support/compile-text.js';
import { findFaults, usedOf } from '../support/page-faults.js';
import { type PrintedPage, readInk } from '../support/pdf-ink.js';

const folder = new URL('../../samples/slack-water/', import.meta.url);
const script = readFileSync(new URL('slack-water.md', folder), 'utf8');
const book = { text: readFileSync(new URL('slack-water.book.yaml', folder), 'utf8'), file: 'slack-water.book.yaml' };
const outputs: readonly OutputName[] = [
  'sheets',
  'costumes',
  'props',
  'indexes',
  'purchases',
  'questions',
  'plan',
  'callsheets',
];
/** The part of a page that must be used, unless the next page begins a part that stands alone. */
const least = 0.4;

const pages = new Map<string, PrintedPage[]>();

async function print(name: string, text: string, withBook: boolean) {
  const { files } = await compileText(
    text,
    outputs.filter((one) => withBook || !/plan|callsheets/.test(one)),
    withBook ? book : null,
  );
  for (const file of files)
    if (file.name.endsWith('.pdf')) pages.set(`${name} ${file.name}`, await readInk(file.content as Uint8Array));
}

beforeAll(async () => {
  await print('Letter', script, true);
  await print('A4', script.replace('draft: B', 'draft: B\npaper: a4'), true);
  await print('bare', script, false);
}, 60_000);

describe('the papers of the sample', () => {
  it('are on both papers, and fewer without a book', () => {
    expect(pages.get('A4 props.pdf')?.[0]?.height).toBeCloseTo(841.89, 1);
    expect(pages.get('Letter props.pdf')?.[0]?.height).toBeCloseTo(792, 1);
    expect(pages.get('bare props.pdf')?.length).toBeLessThan(pages.get('A4 props.pdf')?.length ?? 0);
  });

  it('fit a prop pack of 14 pages and a costume pack of 14', () => {
    expect(pages.get('A4 props.pdf')?.length).toBeLessThanOrEqual(14);
    expect(pages.get('A4 costumes.pdf')?.length).toBeLessThanOrEqual(14);
  });

  it('print no type under 10 points, no colour, nothing outside the margins or over other text', () => {
    const faults = [...pages].flatMap(([name, list]) =>
      list.flatMap((page, at) => findFaults(page, `${name} page ${at + 1}`)),
    );
    expect(faults).toEqual([]);
  });

  it('leave no page nearly empty but the last of a part', () => {
    const parts =
      /^(?:Scene \d|The box|Place sheet|What to pull|Who is dressed|Sizes|\W*Blades|Day \d|Cautions|Left over|.*Cautions)/;
    const wrong = [...pages].flatMap(([name, list]) =>
      list.slice(0, -1).flatMap((page, at) => {
        const next = list[at + 1]?.texts[0]?.text ?? '';
        const isLast = parts.test(next) || name.endsWith('sheets.pdf');
        return usedOf(page) < least && !isLast
          ? [`${name} page ${at + 1}: ${usedOf(page).toFixed(2)}, then "${next}"`]
          : [];
      }),
    );
    expect(wrong).toEqual([]);
  });
});
