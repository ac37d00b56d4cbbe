import type { TableBlock, TableColumn, TableRow } from './blocks.js';
import type { Inline } from './inline.js';
import { sizes, weights } from './measures.js';
import type { Item } from './page-tree.js';
import { type Strip, strip, whiteStrip, withItems } from './strips.js';
import type { Typesetter } from './typesetter.js';
import { lineHeight, naturalWidth, type SetLine, wrapInline } from './wrap.js';

const gutter = 9;
const padding = 2.5;

interface PlacedColumn extends TableColumn {
  readonly x: number;
  readonly space: number;
}

/** Sets a table as strips: one for each line of a row, so that even a row longer than a page can be printed. */
export function setTable(table: TableBlock, x: number, width: number, type: Typesetter): Strip[] {
  const size = Math.max(table.size ?? sizes.small, sizes.small);
  const ruled = table.ruled ?? true;
  const columns = placeColumns(table, x, width, size, type);
  const head = (table.headed ?? true) ? setHead(columns, x, width, type) : [];
  const bare = head.length === 0;
  const rows = table.rows.flatMap((row, i) => {
    const strips = setRow(row, columns, size, type, ruled && i > 0 ? { x, width } : null);
    return (bare && i === 0 ? strips.slice(1) : strips).map((one) => ({ ...one, head }));
  });
  if (!ruled || bare) return [...head, ...rows];
  const foot = strip({ height: padding + 3, items: [hairline(x, width, 0, weights.hair)] });
  return [...head, ...keepLastTo(rows), foot];
}

function keepLastTo(rows: readonly Strip[]): Strip[] {
  return rows.map((one, i) => (i === rows.length - 1 ? { ...one, keep: true } : one));
}

function placeColumns(table: TableBlock, x: number, width: number, size: number, type: Typesetter): PlacedColumn[] {
  const fixed = table.columns.map((column, i) => fixedWidth(column, i, table, size, type));
  const used = fixed.reduce<number>((sum, one) => sum + (one ?? 0), 0) + gutter * (table.columns.length - 1);
  const shares = table.columns.reduce((sum, column, i) => sum + (fixed[i] === null ? (column.share ?? 1) : 0), 0);
  const left = Math.max(width - used, shares * 40);
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
  const cells = table.rows.filter((row) => !spans(row, index, table.columns)).map((row) => row.cells[index]);
  const widths = cells.flatMap((cell) => cellStack(cell).map((text) => naturalWidth(text, size, type)));
  const head = (table.headed ?? true) ? naturalWidth(column.head, sizes.small, type, 'bold') : 0;
  return widths.reduce((widest, one) => Math.max(widest, one), head) + 0.5;
}

/** True for the last cell of a row with fewer cells than columns: it runs to the table's right end. */
function spans(row: TableRow, index: number, columns: readonly TableColumn[]): boolean {
  return index === row.cells.length - 1 && index < columns.length - 1;
}

function cellWidth(row: TableRow, index: number, columns: readonly PlacedColumn[]): number {
  const column = columns[index] as PlacedColumn;
  const last = columns.at(-1) as PlacedColumn;
  return spans(row, index, columns) ? last.x + last.space - column.x : column.space;
}

function cellStack(cell: TableRow['cells'][number] | undefined): readonly Inline[] {
  if (cell === undefined) return [];
  return typeof cell === 'object' && 'stack' in cell ? cell.stack : [cell];
}

function setHead(columns: readonly PlacedColumn[], x: number, width: number, type: Typesetter): Strip[] {
  const lines = columns.map((column) =>
    wrapInline(
      column.head,
      { size: sizes.small, x: column.x, width: column.space, style: 'bold', ...alignOf(column) },
      type,
    ),
  );
  const height = lineHeight(sizes.small);
  const count = Math.max(...lines.map((column) => column.length));
  const strips = rowLines(lines, count).map((items) => strip({ height, items, keep: true }));
  const rule = strip({ height: padding + 1, items: [hairline(x, width, 1.5, weights.rule)], keep: true });
  return [...strips, rule];
}

function alignOf(column: TableColumn): { align?: 'left' | 'right' } {
  return column.align ? { align: column.align } : {};
}

function setRow(
  row: TableRow,
  columns: readonly PlacedColumn[],
  size: number,
  type: Typesetter,
  rule: { readonly x: number; readonly width: number } | null,
): Strip[] {
  const height = lineHeight(size);
  const lines = columns.map((column, i) =>
    cellStack(row.cells[i]).flatMap((text) =>
      wrapInline(text, { size, x: column.x, width: cellWidth(row, i, columns), ...alignOf(column) }, type),
    ),
  );
  const count = Math.max(1, ...lines.map((column) => column.length));
  const body = rowLines(lines, count).map((items) => strip({ height, items, keep: true }));
  const line = rule ? [strip({ items: [hairline(rule.x, rule.width, 0, weights.row)], keep: true, white: true })] : [];
  const top = whiteStrip(padding, true);
  const bottom = strip({ height: padding, keep: row.keepWithNext ?? false });
  const strips = [...line, top, ...body, bottom];
  return row.changed ? strips.map((one) => withItems(one, [marginBar(columns[0]?.x ?? 0, one.height)])) : strips;
}

function rowLines(columns: readonly (readonly SetLine[])[], count: number): Item[][] {
  return Array.from({ length: count }, (_, i) => columns.flatMap((lines) => lines[i]?.items ?? []));
}

function hairline(x: number, width: number, y: number, weight: number): Item {
  return { kind: 'line', x, y, x2: x + width, y2: y, weight, dashed: false };
}

/** The bar in the margin that says "changed". */
export function marginBar(x: number, height: number): Item {
  return { kind: 'line', x: x - 9, y: 0, x2: x - 9, y2: height, weight: weights.bar, dashed: false };
}
