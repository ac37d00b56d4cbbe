import type { Diagnostic } from '../base/diagnostic.js';
import type { Point, Range } from '../base/text-range.js';
import { sayScript } from '../messages/script.js';

/** The source of a script with the table of its lines. */
export interface SourceText {
  /** Without a byte-order mark; line ends are LF. */
  readonly text: string;
  /** Offset of the first character of each line; line 1 stands at index 0. */
  readonly starts: readonly number[];
}

/** Makes the source text of decoded bytes: drops byte-order marks, turns CRLF and CR into LF, finds the lines. */
export function makeSourceText(decoded: string): SourceText {
  const text = decoded.replace(/^\uFEFF+/, '').replace(/\r\n?/g, '\n');
  const starts = [0];
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return { text, starts };
}

/** The 1-based number of the line in which an offset lies. */
export function lineAt(source: SourceText, offset: number): number {
  let low = 0;
  let high = source.starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((source.starts[middle] as number) <= offset) low = middle;
    else high = middle - 1;
  }
  return low + 1;
}

/** The point of an offset. */
export function pointAt(source: SourceText, offset: number): Point {
  const line = lineAt(source, offset);
  return { line, column: offset - (source.starts[line - 1] as number) + 1, offset };
}

/** The range between two offsets. */
export function rangeAt(source: SourceText, start: number, end: number): Range {
  return { start: pointAt(source, start), end: pointAt(source, Math.max(start, end)) };
}

/** Offset of the first character of a line; the end of the text for a line past the last. */
export function lineStart(source: SourceText, line: number): number {
  return source.starts[line - 1] ?? source.text.length;
}

/** Offset of the end of a line, before its line end. */
export function lineEnd(source: SourceText, line: number): number {
  const next = source.starts[line];
  return next === undefined ? source.text.length : next - 1;
}

/** A line of the source, without its line end. */
export function lineText(source: SourceText, line: number): string {
  return source.text.slice(lineStart(source, line), lineEnd(source, line));
}

/** The range of a stretch within one line. */
export function rangeInLine(source: SourceText, line: number, start: number, end: number): Range {
  const first = lineStart(source, line);
  return {
    start: { line, column: start - first + 1, offset: start },
    end: { line, column: end - first + 1, offset: end },
  };
}

/** Says where the first NUL character stands: it prints as U+FFFD (CommonMark 0.31, insecure characters). */
export function checkNull(source: SourceText): Diagnostic[] {
  const at = source.text.indexOf('\0');
  return at === -1 ? [] : [sayScript('null-character', undefined, rangeAt(source, at, at + 1))];
}
