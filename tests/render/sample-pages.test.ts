import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { OutputName } from '../../src/render/types.js';
import { compileText } from '../support/compile-text.js';
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
/** Narrow text columns and hung punctuation may stand out by less than a hair. */
const hair = 0.6;
/** Binding side 20 mm, other sides 12 mm, in points (common practice for punched paper). */
const [binding, edge] = [56.69, 34.02];
/** Height of the two lines at the foot of each page. */
const foot = 34;
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

/** How far down a page is used: 0 to 1. */
function usedOf({ texts, height }: PrintedPage): number {
  const area = height - edge * 2 - foot;
  return Math.max(0, ...texts.filter((one) => one.y < edge + area).map((one) => (one.y - edge) / area));
}

function eachPage(check: (page: PrintedPage, where: string) => string[]): string[] {
  return [...pages].flatMap(([name, list]) => list.flatMap((page, at) => check(page, `${name} page ${at + 1}`)));
}

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

  it('print nothing smaller than 10 points, in black', () => {
    const wrong = eachPage(({ texts, coloured }, where) => [
      ...texts.filter((one) => one.size < 9.99).map((one) => `${where}: ${one.size} ${one.text}`),
      ...(coloured ? [`${where}: colour`] : []),
    ]);
    expect(wrong).toEqual([]);
  });

  it('keep all text inside the margins', () => {
    const wrong = eachPage(({ texts, width, height }, where) =>
      texts
        .filter((one) => one.x < binding - hair || one.right > width - edge + hair || one.y > height - edge + hair)
        .map((one) => `${where}: ${one.text}`),
    );
    expect(wrong).toEqual([]);
  });

  it('print no text over another', () => {
    const wrong = eachPage(({ texts }, where) => {
      const baselines = new Set(texts.map((one) => one.y));
      return [...baselines].flatMap((y) => {
        const line = texts.filter((one) => one.y === y);
        const inOrder = line.sort((a, b) => a.x - b.x);
        return inOrder.slice(1).flatMap((one, at) => {
          const before = inOrder[at] as (typeof inOrder)[number];
          return one.x < before.right - hair ? [`${where}: "${before.text}" and "${one.text}"`] : [];
        });
      });
    });
    expect(wrong).toEqual([]);
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
