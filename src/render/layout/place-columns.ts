import type { TableBlock, TableColumn, TableRow } from './blocks.js';
import type { Inline } from './inline.js';
import { sizes } from './measures.js';
import type { Typesetter } from './typesetter.js';
import { naturalWidth } from './wrap.js';

/** White between two columns, in points. */
const gutter = 9;

/** The least that a share is worth before a table shrinks its columns, in points. */
const leastShare = 40;

/** A column with its left end and its width, in points. */
export interface PlacedColumn extends TableColumn {
  readonly x: number;
  readonly space: number;
}

/** Gives each column of a table its place: fixed and fitted widths first, then shares of what is left. */
export function placeColumns(
  table: TableBlock,
  x: number,
  width: number,
  size: number,
  type: Typesetter,
): PlacedColumn[] {
  const fixed = table.columns.map((column, i) => fixedWidth(column, i, table, size, type));
  const used = fixed.reduce<number>((sum, one) => sum + (one ?? 0), 0) + gutter * (table.columns.length - 1);
  const shares = table.columns.reduce((sum, column, i) => sum + (fixed[i] === null ? (column.share ?? 1) : 0), 0);
  const left = Math.max(width - used, shares * leastShare);
  const shrink = Math.min(1, width / (used + (shares > 0 ? left : 0)));
  let at = x;
  return table.columns.map((column, i) => {
    const space = (fixed[i] ?? (left * (column.share ?? 1)) / shares) * shrink;
    const placed = { ...column, x: at, space };
    at += space + gutter * shrink;
    return placed;
  });
}

/** The width a column asks for in points, or null when it takes a share. */
function fixedWidth(
  column: TableColumn,
  index: number,
  table: TableBlock,
  size: number,
  type: Typesetter,
): number | null {
  if (column.width !== undefined) return column.width;
  if (!column.fit) return null;
  let widest = (table.headed ?? true) ? naturalWidth(column.head, sizes.small, type, 'bold') : 0;
  for (const row of table.rows) {
    if (spans(row, index, table.columns)) continue;
    for (const text of cellStack(row.cells[index])) widest = Math.max(widest, naturalWidth(text, size, type));
  }
  return widest + 0.5;
}

/** True for the last cell of a row with fewer cells than columns: it runs to the table's right end. */
function spans(row: TableRow, index: number, columns: readonly TableColumn[]): boolean {
  return index === row.cells.length - 1 && index < columns.length - 1;
}

/** The width of a row's cell in points. */
export function cellWidth(row: TableRow, index: number, columns: readonly PlacedColumn[]): number {
  const column = columns[index] as PlacedColumn;
  const last = columns.at(-1) as PlacedColumn;
  return spans(row, index, columns) ? last.x + last.space - column.x : column.space;
}

/** The texts of a cell, one under another. */
export function cellStack(cell: TableRow['cells'][number] | undefined): readonly Inline[] {
  if (cell === undefined) return [];
  return typeof cell === 'object' && 'stack' in cell ? cell.stack : [cell];
}
