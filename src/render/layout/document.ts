import { setBlocks } from './block-strips.js';
import type { Block } from './blocks.js';
import { type Area, areaOf, type Orientation, type Paper, sizes, weights } from './measures.js';
import type { Item, PageTree } from './page-tree.js';
import { paginate } from './paginate.js';
import type { Strip } from './strips.js';
import type { Typesetter } from './typesetter.js';
import { lineHeight, wrapInline } from './wrap.js';

/** What runs at the foot of every page. */
export interface Foot {
  /** Title, draft and date of the script. */
  readonly left: string;
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
  const pages = parts.flatMap(({ strips, area }) => paginate(strips, area).map((page) => ({ page, area })));
  return pages.map(({ page, area }, i) => ({
    ...page,
    items: [...page.items, ...setFoot(foot, `page ${i + 1} of ${pages.length}`, area, type)],
  }));
}

function setFoot(foot: Foot, right: string, area: Area, type: Typesetter): Item[] {
  const size = sizes.small;
  const top = area.y + area.height + 5;
  const rule: Item = {
    kind: 'line',
    x: area.x,
    y: top,
    x2: area.x + area.width,
    y2: top,
    weight: weights.hair,
    dashed: false,
  };
  const columns = [
    { text: foot.left, x: area.x, width: area.width * 0.55, align: 'left' },
    { text: foot.middle, x: area.x + area.width * 0.57, width: area.width * 0.26, align: 'left' },
    { text: right, x: area.x + area.width * 0.84, width: area.width * 0.16, align: 'right' },
  ] as const;
  const first = columns.flatMap((column) => firstLine(column.text, { ...column, size }, top + 3, type));
  const key = foot.key
    ? firstLine(foot.key, { x: area.x, width: area.width, size, align: 'left' }, top + 3 + lineHeight(size), type)
    : [];
  return [rule, ...first, ...key];
}

/** The first line of a text; what does not fit is left off, with dots. */
function firstLine(
  text: string,
  place: { readonly x: number; readonly width: number; readonly size: number; readonly align: 'left' | 'right' },
  down: number,
  type: Typesetter,
): Item[] {
  const whole = wrapInline(text, place, type);
  const lines = whole.length > 1 ? wrapInline(shorten(text, place.width, place.size, type), place, type) : whole;
  return (lines[0]?.items ?? []).map((item) => (item.kind === 'line' ? item : { ...item, y: item.y + down }));
}

function shorten(text: string, width: number, size: number, type: Typesetter): string {
  const characters = [...text];
  while (characters.length > 1 && type.measure(`${characters.join('')}…`, 'sans', size) > width) characters.pop();
  return `${characters.join('').trimEnd()}…`;
}
