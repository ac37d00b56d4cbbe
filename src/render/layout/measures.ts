import { papers } from '../../trade/page-measures.js';

/** Points in so many millimetres. */
export function mm(length: number): number {
  return (length * 72) / 25.4;
}

export type Paper = 'letter' | 'a4';
export type Orientation = 'portrait' | 'landscape';

/** White on the binding side (left) and elsewhere: punched holes and printers' edges (common practice). */
export const margins = { binding: mm(20), edge: mm(12) } as const;

/** Type sizes in points. Nothing on paper is smaller than `small`. */
export const sizes = { identity: 20, title: 18, section: 13, body: 10.5, small: 10 } as const;

/** Line weights in points. */
export const weights = { row: 0.25, hair: 0.5, rule: 0.9, frame: 1.6, bar: 2.4 } as const;

/** Distance between two lines to write on by hand. */
export const writingLine = mm(8);

/** Height kept free at the foot of each page for the running lines. */
export const footHeight = 34;

/** Leading as a multiple of the type size. */
export const leading = 1.28;

/** Height of a capital letter as a part of the type size (Source Sans 3: 660 of 1000 units). */
export const capHeight = 0.66;

/** Where text may stand on a sheet, in points. */
export interface Area {
  readonly pageWidth: number;
  readonly pageHeight: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The area for text on a paper, in points, without the foot. */
export function areaOf(paper: Paper, orientation: Orientation = 'portrait'): Area {
  const size = papers[paper];
  const upright = orientation === 'portrait';
  const pageWidth = upright ? size.width : size.height;
  const pageHeight = upright ? size.height : size.width;
  return {
    pageWidth,
    pageHeight,
    x: margins.binding,
    y: margins.edge,
    width: pageWidth - margins.binding - margins.edge,
    height: pageHeight - margins.edge * 2 - footHeight,
  };
}
