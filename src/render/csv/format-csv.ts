/** A cell of a table: text, a whole number, or nothing. */
export type Cell = string | number | null;

/** Spreadsheets take a file for UTF-8 only when it begins with this mark; without it accents break. */
const byteOrderMark = '\uFEFF';

/**
 * Signs with which spreadsheets begin a formula or a command.
 * Source: OWASP, CSV Injection (from memory): = + - @, tab, carriage return, line feed, and the full-width forms.
 * White space before them is skipped, since some programs trim it.
 */
const formulaStart = /^\s*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/;

/**
 * Writes rows as CSV by RFC 4180: commas, CRLF after every row, quotes doubled, a cell quoted when it holds a comma, a
 * quote, a line break, a semicolon or a tab. Text that a spreadsheet would run as a formula gets an apostrophe before it.
 */
export function formatCsv(rows: readonly (readonly Cell[])[]): string {
  return byteOrderMark + rows.map((row) => `${row.map(formatCell).join(',')}\r\n`).join('');
}

/** Several texts as one cell; each is made inert, since some programs split a cell at semicolons. */
export function joinCell(texts: readonly string[]): string {
  return texts.map(makeInert).join('; ');
}

/** The text with an apostrophe before it when a spreadsheet would run it as a formula. */
export function makeInert(text: string): string {
  return formulaStart.test(text) ? `'${text}` : text;
}

function formatCell(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return String(cell);
  const text = makeInert(cell);
  return /[",;\t\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
