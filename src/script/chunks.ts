import type { RawLine } from './raw-line.js';
import { lineText, type SourceText } from './source-text.js';

/** Lines with no blank line between them. */
export interface LineChunk {
  readonly kind: 'lines';
  readonly lines: readonly RawLine[];
  /** True for a title with its author at the very start: nobody speaks there. */
  readonly isTitle: boolean;
}

/** What stands between blank lines. */
export type Chunk = LineChunk | { readonly kind: 'page break'; readonly line: RawLine };

/** The script's lines in chunks, and its notes, which stand between lines without parting them. */
export interface ChunkedLines {
  readonly chunks: readonly Chunk[];
  readonly notes: readonly RawLine[];
}

/** Groups lines by the blank lines of the source. Private text is no blank line. */
export function groupLines(
  lines: readonly RawLine[],
  source: SourceText,
  privateLines: ReadonlySet<number>,
): ChunkedLines {
  const isBlank = (line: number) => !privateLines.has(line) && lineText(source, line).trim() === '';
  const chunks: Chunk[] = [];
  const notes: RawLine[] = [];
  let open: RawLine[] = [];
  const close = () => {
    if (open.length > 0) chunks.push({ kind: 'lines', lines: open, isTitle: chunks.length === 0 && isTitle(open) });
    open = [];
  };
  for (const line of lines) {
    if (line.kind === 'note') notes.push(line);
    else if (line.kind === 'rule') close();
    else if (line.kind === 'page break') {
      close();
      chunks.push({ kind: 'page break', line });
    } else {
      const last = open[open.length - 1];
      if (last && hasBlankBetween(last.line, line.line, isBlank)) close();
      open.push(line);
    }
  }
  close();
  return { chunks, notes };
}

function isTitle(lines: readonly RawLine[]): boolean {
  return lines[1] !== undefined && /^(?:(?:a|an)\s)?(?:[\p{L}-]+\s){0,3}by\s+\S/iu.test(lines[1].text);
}

function hasBlankBetween(above: number, below: number, isBlank: (line: number) => boolean): boolean {
  for (let line = above + 1; line < below; line += 1) {
    if (isBlank(line)) return true;
  }
  return false;
}
