/** What stands on a line of the standard page. */
export type MeasureName =
  | 'heading'
  | 'action'
  | 'dialogue'
  | 'parenthetical'
  | 'cue'
  | 'transition'
  | 'opening fade'
  | 'part'
  | 'omitted'
  | 'more';

/** Where one kind of text stands, in characters of a tenth of an inch from the paper's left edge. */
export interface Measure {
  readonly column: number;
  readonly width: number;
  /** `right`: moved left from `column` when it is too long, so that it ends at the right margin. */
  readonly align: 'left' | 'centre' | 'right';
  readonly source: string;
}

/** Sources: Gorman = paulgorman.org/writing/screenplay_format.txt; Drexel = pages.drexel.edu/~ina22/scrnfmt. */
export const pageMeasures: Readonly<Record<MeasureName, Measure>> = {
  heading: { column: 15, width: 60, align: 'left', source: 'Gorman: 1.5 in left, 1.0 in right of 8.5 in' },
  action: { column: 15, width: 60, align: 'left', source: 'Gorman: 1.5 in left, 1.0 in right of 8.5 in' },
  dialogue: { column: 25, width: 35, align: 'left', source: 'Drexel, Gorman: 2.5 in from each edge' },
  parenthetical: { column: 30, width: 25, align: 'left', source: 'Gorman: 3.0 in left, about 2.5 in wide' },
  cue: { column: 37, width: 38, align: 'left', source: 'Gorman: 3.7 in left; up to the right margin' },
  transition: { column: 60, width: 60, align: 'right', source: 'Gorman: 6.0 in left, or flush right' },
  'opening fade': { column: 15, width: 60, align: 'left', source: 'common practice: FADE IN at the left margin' },
  part: { column: 15, width: 60, align: 'centre', source: 'common practice: the name of an act is centred' },
  omitted: { column: 15, width: 60, align: 'left', source: 'common practice: OMITTED stands where the heading stood' },
  more: {
    column: 37,
    width: 38,
    align: 'left',
    source: 'BBC, M. Carless 2004: (MORE) under the speech; at the cue by common practice',
  },
};

/** A sheet of paper and how much of it carries text. */
export interface Paper {
  /** Printer's points, 72 to the inch. */
  readonly width: number;
  readonly height: number;
  /** Lines of text, 6 to the inch, that a page holds. */
  readonly bodyLines: number;
  readonly source: string;
}

export const papers: Readonly<Record<'letter' | 'a4', Paper>> = {
  letter: {
    width: 612,
    height: 792,
    bodyLines: 54,
    source: 'Western Michigan University, COM 358; Gorman: 1 in top and bottom, (11 - 2) x 6; counted so by ArtsEnt',
  },
  a4: {
    width: 595.28,
    height: 841.89,
    bodyLines: 58,
    source: 'ISO 216: 297 mm = 11.69 in; the same margins leave 58 lines',
  },
};

/** Type and its place on the paper, in points unless the name says otherwise. */
export const pageType = {
  /** 12 point, 10 to the inch: Academy 1998, 2014. */
  size: 12,
  characterWidth: 7.2,
  /** 6 lines to the inch: ArtsEnt. */
  leading: 12,
  /** 1.0 in to the body: Academy 1998, 2014. */
  top: 72,
  /** Page number: on line 3 (ArtsEnt), 0.75 in from the right edge (Academy 1998). */
  numberLine: 3,
  numberRight: 54,
  /** Shown from this page on: Academy 1998. */
  firstNumberedPage: 2,
  /** Scene numbers in both margins (Academy 1998): the left one ends here, the right one starts here, in columns. Common practice. */
  sceneNumberLeftEnd: 13,
  sceneNumberRightStart: 76,
} as const;

/** How pages may break. */
export const breakRules = {
  /** Lines of a speech or an action that must stay before a break: BBC, M. Carless 2004 (speech); common practice (action). */
  leastLinesBefore: 2,
  /** More than this part of a page left empty: split anyway (Belletristica). */
  mostEmpty: 1 / 3,
  /** Academy 1998; BBC, M. Carless 2004. */
  more: '(MORE)',
  continued: "(CONT'D)",
} as const;

/** An eighth is an eighth of what the page holds (MovieMaker), and no scene is shorter than one. */
export const eighthRules = { perPage: 8, least: 1 } as const;
