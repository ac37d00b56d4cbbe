import type { Item } from './page-tree.js';
import type { SetLine } from './wrap.js';

/** A horizontal slice of a document that no page end may cut. `x` of its items is final, `y` counts from its top. */
export interface Strip {
  readonly height: number;
  readonly items: readonly Item[];
  /** True to stay on the page of the next strip. */
  readonly keep: boolean;
  /** True for white that falls away at the top of a page. */
  readonly white: boolean;
  /** What must be repeated above it when it begins a page: the head of its table. */
  readonly head: readonly Strip[];
  readonly bookmark: string | null;
  readonly breakBefore: boolean;
}

const noItems: readonly Item[] = [];
const noHead: readonly Strip[] = [];

/** A strip; what is not told is nothing. */
export function strip(part: Partial<Strip>): Strip {
  return {
    height: part.height ?? 0,
    items: part.items ?? noItems,
    keep: part.keep ?? false,
    white: part.white ?? false,
    head: part.head ?? noHead,
    bookmark: part.bookmark ?? null,
    breakBefore: part.breakBefore ?? false,
  };
}

/** The same strip, kept to the next one or not. */
export function withKeep(one: Strip, keep: boolean): Strip {
  if (one.keep === keep) return one;
  // Nearly each strip of a table passes here: one written out costs a fraction of a spread one.
  const { height, items, white, head, bookmark, breakBefore } = one;
  return { height, items, keep, white, head, bookmark, breakBefore };
}

/** White of a height in points; it keeps to what follows unless told otherwise. */
export function whiteStrip(height: number, keep = false): Strip {
  return strip({ height, white: true, keep });
}

/** One strip a line. The first two and the last two lines stay together. */
export function lineStrips(lines: readonly SetLine[], height: number): Strip[] {
  const last = lines.length - 1;
  return lines.map((line, i) => strip({ height, items: line.items, keep: i < last && (i === 0 || i === last - 1) }));
}

/** The same strips with every one but the last kept to the next, and the last as told. */
export function keepTogether(strips: readonly Strip[], last = false): Strip[] {
  return strips.map((one, i) => withKeep(one, i < strips.length - 1 || last || one.keep));
}

/** Adds items to a strip. */
export function withItems(one: Strip, items: readonly Item[]): Strip {
  if (items.length === 0) return one;
  const { height, keep, white, head, bookmark, breakBefore } = one;
  return { height, items: one.items.concat(items), keep, white, head, bookmark, breakBefore };
}

/** Height of all strips in points. */
export function heightOf(strips: readonly Strip[]): number {
  return strips.reduce((sum, one) => sum + one.height, 0);
}
