import type { TableBlock, TableColumn, TableRow } from './blocks.js';
import type { Inline } from './inline.js';
import { sizes, weights } from './measures.js';
import type { Item } from './page-tree.js';
import { cellStack, cellWidth, type PlacedColumn, placeColumns } from './place-columns.js';
import { type Strip, strip, withItems, withKeep } from './strips.js';
import type { Typesetter } from './typesetter.js';
import { lineHeight, type SetLine, wrapInline } from './wrap.js';

const padding = 2.5;
const tightPadding = 0.8;

/** Sets a table as strips: one for each line of a row, so that even a row longer than a page can be printed. */
export function setTable(table: TableBlock, x: number, width: number, type: Typesetter): Strip[] {
  const size = Math.max(table.size ?? sizes.small, sizes.small);
  const ruled = table.ruled ?? true;
  const columns = placeColumns(table, x, width, size, type);
  const head = (table.headed ?? true) ? setHead(columns, x, width, type) : [];
  const bare = head.length === 0;
  const gap = table.tight ? tightPadding : padding;
  const rows = table.rows.flatMap((row, i) => {
    const strips = setRow(row, columns, { size, gap, rule: ruled && i > 0 ? { x, width } : null, head }, type);
    return bare && i === 0 ? strips.slice(1) : strips;
  });
  if (!ruled || bare) return [...head, ...rows];
  const foot = strip({ height: padding + 3, items: [hairline(x, width, 0, weights.hair)] });
  return [...head, ...keepLastTo(rows), foot];
}

function keepLastTo(rows: readonly Strip[]): Strip[] {
  return rows.map((one, i) => withKeep(one, one.keep || i === rows.length - 1));
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

interface RowStyle {
  readonly size: number;
  /** White above and below the row's text, in points. */
  readonly gap: number;
  readonly rule: { readonly x: number; readonly width: number } | null;
  readonly head: readonly Strip[];
}

function setRow(row: TableRow, columns: readonly PlacedColumn[], style: RowStyle, type: Typesetter): Strip[] {
  const { size, gap, rule, head } = style;
  const height = lineHeight(size);
  const lines = columns.map((column, i) => setCell(row, i, column, columns, size, type));
  const count = lines.reduce((most, column) => Math.max(most, column.length), 1);
  const line = rule ? [hairline(rule.x, rule.width, 0, weights.row)] : [];
  const strips = [
    ...(rule ? [strip({ items: line, keep: true, white: true, head })] : []),
    strip({ height: gap, white: true, keep: true, head }),
    ...rowLines(lines, count).map((items) => strip({ height, items, keep: true, head })),
    strip({ height: gap, keep: row.keepWithNext ?? false, head }),
  ];
  return row.changed ? strips.map((one) => withItems(one, [marginBar(columns[0]?.x ?? 0, one.height)])) : strips;
}

const noLines: readonly SetLine[] = [];

function setCell(
  row: TableRow,
  index: number,
  column: PlacedColumn,
  columns: readonly PlacedColumn[],
  size: number,
  type: Typesetter,
): readonly SetLine[] {
  const stack = cellStack(row.cells[index]);
  // Most cells of most tables are empty or one text.
  if (stack.length === 0 || (stack.length === 1 && stack[0] === '')) return noLines;
  const options = { size, x: column.x, width: cellWidth(row, index, columns), align: column.align ?? 'left' } as const;
  return stack.length === 1
    ? wrapInline(stack[0] as Inline, options, type)
    : stack.flatMap((text) => wrapInline(text, options, type));
}

function rowLines(columns: readonly (readonly SetLine[])[], count: number): Item[][] {
  const rows: Item[][] = [];
  for (let i = 0; i < count; i++) {
    const items: Item[] = [];
    for (const lines of columns) for (const item of lines[i]?.items ?? []) items.push(item);
    rows.push(items);
  }
  return rows;
}

function hairline(x: number, width: number, y: number, weight: number): Item {
  return { kind: 'line', x, y, x2: x + width, y2: y, weight, dashed: false };
}

/** The bar in the margin that says "changed". */
export function marginBar(x: number, height: number): Item {
  return { kind: 'line', x: x - 9, y: 0, x2: x - 9, y2: height, weight: weights.bar, dashed: false };
}
