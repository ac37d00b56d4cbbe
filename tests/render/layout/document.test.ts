import { describe, expect, it } from 'vitest';
import type { Block } from '../../../src/render/layout/blocks.js';
import { layOutDocument } from '../../../src/render/layout/document.js';
import { tick } from '../../../src/render/layout/inline.js';
import { areaOf, footHeight, mm } from '../../../src/render/layout/measures.js';
import type { Item, PageTree, TextItem } from '../../../src/render/layout/page-tree.js';
import { plainType } from '../../support/plain-type.js';

const foot = { title: 'Title', version: 'draft A · 2026-11-02', middle: 'Props', key: 'the key' };
const layOut = (blocks: readonly Block[]) => layOutDocument({ paper: 'a4', foot, blocks }, plainType());
const isText = (item: Item): item is TextItem => item.kind === 'text';
const body = (page: PageTree) => page.items.filter(isText).filter((item) => item.y < page.height - mm(12) - footHeight);
const words = (page: PageTree) => body(page).map((item) => item.text);

const rows = (count: number) => Array.from({ length: count }, (_, i) => ({ cells: [`row ${i + 1}`, tick] }));
const table = (count: number): Block => ({
  kind: 'table',
  columns: [{ head: 'What' }, { head: 'Ready', fit: true }],
  rows: rows(count),
});

describe('pages', () => {
  it('repeats the head of a table on every page and loses no row', () => {
    const pages = layOut([table(100)]);
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) expect(words(page).slice(0, 2)).toEqual(['What', 'Ready']);
    const all = pages.flatMap(words).filter((word) => word.startsWith('row'));
    expect(all).toEqual(rows(100).map((row) => row.cells[0]));
  });

  it('keeps every item of the body inside the margins', () => {
    const area = areaOf('a4');
    for (const page of layOut([table(100), { kind: 'lines', count: 60 }])) {
      for (const item of body(page)) {
        expect(item.x).toBeGreaterThanOrEqual(area.x);
        expect(item.y).toBeLessThanOrEqual(area.y + area.height);
      }
    }
  });

  it('gives white away rather than turn a page for a few lines', () => {
    const lines = (count: number): Block[] =>
      Array.from({ length: count }, (_, i) => ({ kind: 'paragraph', text: `line ${i + 1}` }));
    const full =
      Array.from({ length: 80 }, (_, i) => i + 1).findLast((count) => layOut(lines(count)).length === 1) ?? 0;
    const [page] = layOut(lines(full));
    const gaps = body(page as PageTree).map((item, i, all) => item.y - (all[i - 1]?.y ?? 0));
    const loose = body(layOut(lines(5))[0] as PageTree).map((item, i, all) => item.y - (all[i - 1]?.y ?? 0));
    expect(gaps[2]).toBeLessThan(loose[2] as number);
    expect(layOut(lines(full * 2 - 4)).length).toBe(2);
  });

  it('keeps a heading and its introduction with the table below', () => {
    const intro: Block[] = [
      { kind: 'heading', level: 2, text: 'How many' },
      { kind: 'paragraph', text: 'Read this.' },
      table(6),
    ];
    for (let height = 500; height < 780; height += 7) {
      const pages = layOut([{ kind: 'paragraph', text: 'before' }, { kind: 'space', height }, ...intro]);
      const page = pages.find((one) => words(one).includes('How many'));
      expect(words(page as PageTree)).toEqual(expect.arrayContaining(['Read this.', 'What', 'row 1']));
    }
  });

  it('carries the foot on every page, with its number', () => {
    const pages = layOut([table(100)]);
    pages.forEach((page, i) => {
      const texts = page.items.filter(isText).map((item) => item.text);
      expect(texts).toEqual(
        expect.arrayContaining([
          `${foot.title} · ${foot.version}`,
          'Props',
          `page ${i + 1} of ${pages.length}`,
          'the key',
        ]),
      );
    });
  });

  it('shortens a long title at the foot, never the draft and the date', () => {
    const long = { ...foot, title: 'A title without end '.repeat(20) };
    const [page] = layOutDocument({ paper: 'a4', foot: long, blocks: [] }, plainType());
    const [left, middle] = page?.items.filter(isText) ?? [];
    expect(left?.text).toMatch(/^A title.*… · draft A · 2026-11-02$/);
    expect(middle?.text).toBe('Props');
    const end = (left?.x ?? 0) + plainType().measure(left?.text ?? '', 'sans', 10);
    expect(end).toBeLessThan(middle?.x ?? 0);
  });

  it('prints a row that is longer than a page', () => {
    const cell = 'word '.repeat(3000);
    const pages = layOut([{ kind: 'table', columns: [{ head: 'Long' }], rows: [{ cells: [cell] }] }]);
    expect(pages.length).toBeGreaterThan(2);
    expect(pages.flatMap(words).join(' ').match(/word/g)).toHaveLength(3000);
  });

  it('never leaves a heading at the foot of a page', () => {
    for (let lines = 25; lines < 40; lines++) {
      const pages = layOut([
        { kind: 'lines', count: lines },
        { kind: 'heading', level: 2, text: 'Heading' },
        { kind: 'paragraph', text: 'below' },
      ]);
      const home = pages.find((page) => words(page).includes('Heading'));
      expect(home && words(home)).toContain('below');
    }
  });

  it('moves kept blocks to the next page together', () => {
    const entries = ['one', 'two', 'three', 'four', 'five', 'six'];
    for (let lines = 25; lines < 40; lines++) {
      const pages = layOut([
        { kind: 'lines', count: lines },
        { kind: 'keep', blocks: [{ kind: 'entries', entries }] },
      ]);
      const home = pages.find((page) => words(page).includes('one'));
      expect(home && words(home)).toEqual(expect.arrayContaining(entries));
    }
  });

  it('begins a new page where told, and not twice', () => {
    const text = (text: string): Block => ({ kind: 'paragraph', text });
    const pages = layOut([
      { kind: 'page break' },
      text('one'),
      { kind: 'page break' },
      { kind: 'page break' },
      text('two'),
    ]);
    expect(pages.map(words)).toEqual([['one'], ['two']]);
  });

  it('gives a page even for nothing', () => {
    expect(layOut([])).toHaveLength(1);
  });

  it('never sets type under 10 points, whatever is asked', () => {
    const pages = layOut([{ kind: 'paragraph', text: 'small', size: 4 }, { ...table(1), size: 3 } as Block]);
    for (const item of pages.flatMap((page) => page.items).filter(isText)) expect(item.size).toBeGreaterThanOrEqual(10);
  });
});

describe('signs of a page', () => {
  it('puts a bar in the margin beside what changed', () => {
    const [page] = layOut([{ kind: 'changed', blocks: [{ kind: 'paragraph', text: 'new' }] }]);
    const bar = page?.items.find((item) => item.kind === 'line' && item.x === item.x2);
    expect(bar?.x).toBeLessThan(areaOf('a4').x);
    expect(bar?.x).toBeGreaterThan(mm(12));
  });

  it('frames its content on all four sides', () => {
    const [page] = layOut([{ kind: 'frame', blocks: [{ kind: 'paragraph', text: 'danger' }] }]);
    const lines = page?.items.filter((item) => item.kind === 'line' && item.weight > 1) ?? [];
    const { x, width } = areaOf('a4');
    const upright = lines.filter((item) => item.kind === 'line' && item.x === item.x2).map((item) => item.x);
    expect(new Set(upright)).toEqual(new Set([x, x + width]));
    const level = lines.filter((item) => item.kind === 'line' && item.y === item.y2);
    expect(level).toHaveLength(2);
  });

  it('sets a label beside its content and draws tick boxes as squares', () => {
    const [page] = layOut([
      { kind: 'section', label: 'Label', blocks: [{ kind: 'entries', ticks: true, entries: ['thing'] }] },
    ]);
    const [label, thing] = body(page as PageTree);
    expect(label?.text).toBe('Label');
    expect(thing?.y).toBe(label?.y);
    expect(thing?.x).toBeGreaterThan(label?.x ?? 0);
    const box = page?.items.find((item) => item.kind === 'rect');
    expect(box).toMatchObject({ kind: 'rect' });
    if (box?.kind === 'rect') expect(box.width).toBe(box.height);
  });

  it('writes lines by hand 8 mm apart', () => {
    const [page] = layOut([{ kind: 'lines', count: 5 }]);
    const ys = (page?.items ?? []).flatMap((item) => (item.kind === 'line' && item.y < 400 ? [item.y] : []));
    expect(ys).toHaveLength(5);
    ys.slice(1).forEach((y, i) => {
      expect(y - (ys[i] as number)).toBeCloseTo(mm(8), 5);
    });
  });
});
