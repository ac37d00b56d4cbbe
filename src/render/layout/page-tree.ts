import type { FontFace } from '../types.js';

/** Text on one baseline, from its left end. All figures are points from the paper's top left corner. */
export interface TextItem {
  readonly kind: 'text';
  readonly x: number;
  /** The baseline. */
  readonly y: number;
  readonly text: string;
  readonly face: FontFace;
  readonly size: number;
}

/** A straight black line. */
export interface LineItem {
  readonly kind: 'line';
  readonly x: number;
  readonly y: number;
  readonly x2: number;
  readonly y2: number;
  readonly weight: number;
  readonly dashed: boolean;
}

/** A rectangle, outlined and never filled: tick boxes and frames. */
export interface RectItem {
  readonly kind: 'rect';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly weight: number;
}

/** The danger sign: a triangle on its base with a stroke and a dot inside, `size` points high. */
export interface TriangleItem {
  readonly kind: 'triangle';
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

export type Item = TextItem | LineItem | RectItem | TriangleItem;

/** One page, as numbers only: what stands where. */
export interface PageTree {
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
  /** Names under which a reader of the file finds this page. */
  readonly bookmarks: readonly string[];
}

/** The same item, lower by `by` points. */
export function lowerItem(item: Item, by: number): Item {
  // Each item of a document passes here: one written out costs a fifth of a spread one.
  if (item.kind === 'text') {
    return { kind: 'text', x: item.x, y: item.y + by, text: item.text, face: item.face, size: item.size };
  }
  if (item.kind === 'line') {
    const { x, y, x2, y2, weight, dashed } = item;
    return { kind: 'line', x, y: y + by, x2, y2: y2 + by, weight, dashed };
  }
  return { ...item, y: item.y + by };
}
