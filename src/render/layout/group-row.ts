import type { TableRow } from './blocks.js';
import { bold } from './inline.js';

/** A row that opens a group inside a table: its name in bold capitals, kept to the row below. */
export function groupRow(name: string): TableRow {
  return { cells: [bold(name.toUpperCase())], keepWithNext: true };
}
