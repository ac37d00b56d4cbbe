import type { Inline } from './inline.js';

/** A heading: level 1 opens a document, 2 a section, 3 a group. It stays with what follows. */
export interface HeadingBlock {
  readonly kind: 'heading';
  readonly level: 1 | 2 | 3;
  readonly text: Inline;
  /** A name in the file's outline; only a heading that deserves one. */
  readonly bookmark?: string;
}

/** Running text. */
export interface ParagraphBlock {
  readonly kind: 'paragraph';
  readonly text: Inline;
  /** Type size in points; never under 10. */
  readonly size?: number;
  /** Points by which the whole paragraph, or all lines but the first, begin further right. */
  readonly indent?: number;
  readonly hang?: number;
  /** White below, in points. */
  readonly after?: number;
  /** True to stay on the page of the block that follows. */
  readonly keepWithNext?: boolean;
}

/** Entries under one another with a hanging indent and no bullets. */
export interface EntriesBlock {
  readonly kind: 'entries';
  readonly entries: readonly Inline[];
  /** A hairline between entries. */
  readonly ruled?: boolean;
  /** A tick box before each. */
  readonly ticks?: boolean;
}

/** A column of a table: a fixed width in points, the width of its widest cell, or a share of what is left. */
export interface TableColumn {
  readonly head: Inline;
  readonly width?: number;
  readonly fit?: boolean;
  readonly share?: number;
  readonly align?: 'left' | 'right';
}

export interface TableRow {
  /** One per column; when fewer, the last runs to the right end. A list of inline texts stands under one another. */
  readonly cells: readonly (Inline | { readonly stack: readonly Inline[] })[];
  /** True when it changed since the draft that the reader holds: a bar in the margin. */
  readonly changed?: boolean;
  /** True to stay on the page of the row that follows. */
  readonly keepWithNext?: boolean;
}

/** Rows on hairlines, without boxes around cells; the head comes again on each page. */
export interface TableBlock {
  readonly kind: 'table';
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  /** Type size of the rows in points; never under 10. */
  readonly size?: number;
  /** False for aligned columns without their head. */
  readonly headed?: boolean;
  /** False for aligned columns without hairlines. */
  readonly ruled?: boolean;
  /** True for rows as close as lines of text. */
  readonly tight?: boolean;
}

/** A hairline above, a bold label in a column at the left, the content to its right. */
export interface SectionBlock {
  readonly kind: 'section';
  readonly label: Inline;
  readonly blocks: readonly Block[];
  readonly labelWidth?: number;
  /** The least height in points: room below the label to draw or glue something in. */
  readonly least?: number;
  /** False without the hairline. */
  readonly ruled?: boolean;
}

/** A frame around its content, kept on one page when it fits one. */
export interface FrameBlock {
  readonly kind: 'frame';
  readonly blocks: readonly Block[];
}

/** Blank ruled lines to write on, 8 mm apart. */
export interface LinesBlock {
  readonly kind: 'lines';
  readonly count: number;
}

export interface RuleBlock {
  readonly kind: 'rule';
  readonly weight?: 'row' | 'hair' | 'rule';
}

export interface SpaceBlock {
  readonly kind: 'space';
  readonly height: number;
}

/** Blocks that stay on one page when they fit one. */
export interface KeepBlock {
  readonly kind: 'keep';
  readonly blocks: readonly Block[];
}

/** Blocks with a bar in the margin: changed since the draft that the reader holds. */
export interface ChangedBlock {
  readonly kind: 'changed';
  readonly blocks: readonly Block[];
}

/** What follows begins a new page. */
export interface PageBreakBlock {
  readonly kind: 'page break';
}

export type Block =
  | HeadingBlock
  | ParagraphBlock
  | EntriesBlock
  | TableBlock
  | SectionBlock
  | FrameBlock
  | LinesBlock
  | RuleBlock
  | SpaceBlock
  | KeepBlock
  | ChangedBlock
  | PageBreakBlock;
