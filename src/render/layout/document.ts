import { setBlocks } from './block-strips.js';
import type { Block } from './blocks.js';
import { type Area, areaOf, type Orientation, type Paper, sizes, weights } from './measures.js';
import { type Item, lowerItem, type PageTree } from './page-tree.js';
import { paginate } from './paginate.js';
import type { Strip } from './strips.js';
import type { Typesetter } from './typesetter.js';
import { lineHeight, naturalWidth, wrapInline } from './wrap.js';

/** What runs at the foot of every page. */
export interface Foot {
  /** The script's title; shortened when the line is full. */
  readonly title: string;
  /** Its draft and date; never shortened, for old paper must be known. */
  readonly version: string;
  /** Which of the outputs this is. */
  readonly middle: string;
  /** One line that explains the words and signs; null for none. */
  readonly key: string | null;
}

/** A document to lay out. */
export interface SheetDocument {
  readonly paper: Paper;
  readonly orientation?: Orientation;
  readonly foot: Foot;
  readonly blocks: readonly Block[];
}

/** Strips that are already set, for pages of one orientation. */
export interface SetPart {
  readonly area: Area;
  readonly strips: readonly Strip[];
}

/** Lays a document out on pages, with its foot on each. */
export function layOutDocument(document: SheetDocument, type: Typesetter): PageTree[] {
  const area = areaOf(document.paper, document.orientation);
  return layOutParts([{ area, strips: setBlocks(document.blocks, area, type) }], document.foot, type);
}

/** Lays parts out one after another, each on pages of its own, under one foot and one count of pages. */
export function layOutParts(parts: readonly SetPart[], foot: Foot, type: Typesetter): PageTree[] {
  const pages = parts.flatMap(({ strips, area }) => fillPages(strips, area).map((page) => ({ page, area })));
  return pages.map(({ page, area }, i) => ({
    ...page,
    items: [...page.items, ...setFoot(foot, `page ${i + 1} of ${pages.length}`, area, type)],
  }));
}

/** How much of a last page must be used, and how far white may shrink to do without the page. */
const leastLast = 0.3;
const tightest = 0.5;

/** The pages of each stretch between forced page ends. */
function fillPages(strips: readonly Strip[], area: Area): PageTree[] {
  const stretches: Strip[][] = [[]];
  for (const one of strips) {
    if (one.breakBefore) stretches.push([]);
    stretches.at(-1)?.push(one);
  }
  const inked = stretches.filter((stretch) => stretch.some((one) => !one.white));
  return (inked.length > 0 ? inked : [[]]).flatMap((stretch) => fillStretch(stretch, area));
}

/** Pages without a last one that holds but a few lines, when less white between things makes room for those. */
function fillStretch(strips: readonly Strip[], area: Area): PageTree[] {
  const pages = paginate(strips, area);
  const last = pages.at(-1);
  if (pages.length < 2 || !last || lowestInk(last) > area.y + area.height * leastLast) return pages;
  const tighter = strips.map((one) => (one.white ? squeeze(one) : one));
  const fewer = paginate(tighter, area);
  return fewer.length < pages.length ? fewer : pages;
}

/** White of less height; the lines at its sides, of a frame or a bar in the margin, become as short. */
function squeeze(white: Strip): Strip {
  const height = white.height * tightest;
  const items = white.items.map((item) =>
    item.kind === 'line' ? { ...item, y: Math.min(item.y, height), y2: Math.min(item.y2, height) } : item,
  );
  return { ...white, height, items };
}

function lowestInk({ items }: PageTree): number {
  return items.reduce((low, item) => Math.max(low, item.y), 0);
}

function setFoot(foot: Foot, right: string, area: Area, type: Typesetter): Item[] {
  const top = area.y + area.height + 5;
  const { x, width } = area;
  const rule: Item = { kind: 'line', x, y: top, x2: x + width, y2: top, weight: weights.hair, dashed: false };
  const room = width * 0.55 - type.measure(` · ${foot.version}`, 'sans', sizes.small);
  const left = `${fitText(foot.title, room, type)} · ${foot.version}`;
  const columns = [
    { text: left, x, width: width * 0.56, align: 'left' },
    { text: foot.middle, x: x + width * 0.58, width: width * 0.25, align: 'left' },
    { text: right, x: x + width * 0.84, width: width * 0.16, align: 'right' },
  ] as const;
  const first = columns.flatMap((column) => setFootLine(column, top + 3, type));
  if (foot.key === null) return [rule, ...first];
  const key = { text: foot.key, x, width, align: 'left' } as const;
  return [rule, ...first, ...setFootLine(key, top + 3 + lineHeight(sizes.small), type)];
}

interface FootColumn {
  readonly text: string;
  readonly x: number;
  readonly width: number;
  readonly align: 'left' | 'right';
}

function setFootLine(column: FootColumn, down: number, type: Typesetter): Item[] {
  const options = { x: column.x, width: column.width, size: sizes.small, align: column.align };
  const [line] = wrapInline(fitText(column.text, column.width, type), options, type);
  return (line?.items ?? []).map((item) => lowerItem(item, down));
}

/** A text on one line: what does not fit is left off, with dots. */
function fitText(text: string, width: number, type: Typesetter): string {
  if (naturalWidth(text, sizes.small, type) <= width) return text;
  const characters = [...text];
  while (characters.length > 1 && naturalWidth(`${characters.join('')}…`, sizes.small, type) > width) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}
