import type { TableRow } from './blocks.js';
import { bold } from './inline.js';

/** A row that opens a group inside a table: its name in bold capitals in one column, kept to the row below. */
export function groupRow(name: string, columnCount: number, column = 0): TableRow {
  const cells = Array.from({ length: columnCount }, (_, i) => (i === column ? bold(name.toUpperCase()) : ''));
  return { cells, keepWithNext: true };
}
