import type { Point } from '../base/text-range.js';

/** Text to put in at a point of the file; nothing is ever taken out. */
export interface Insertion {
  readonly at: Pick<Point, 'line' | 'column'>;
  readonly text: string;
}

/**
 * Puts text into a file at 1-based lines and columns. Every other character stays as it is, line ends and a byte-order
 * mark included; line feeds in the new text take the line end that the file uses.
 */
export function insertInto(original: string, insertions: readonly Insertion[]): string {
  const mark = original.startsWith('\uFEFF') ? 1 : 0;
  const starts = lineStarts(original, mark);
  const lineEnd = /\r\n|\r|\n/.exec(original)?.[0] ?? '\n';
  const placed = insertions.map(({ at, text }, order) => {
    const start = starts[at.line - 1] ?? original.length;
    return { offset: Math.min(start + at.column - 1, original.length), text: text.replaceAll('\n', lineEnd), order };
  });
  placed.sort((a, b) => a.offset - b.offset || a.order - b.order);
  let result = '';
  let done = 0;
  for (const { offset, text } of placed) {
    result += original.slice(done, offset) + text;
    done = offset;
  }
  return result + original.slice(done);
}

function lineStarts(text: string, first: number): number[] {
  const starts = [first];
  for (const match of text.matchAll(/\r\n|\r|\n/g)) starts.push(match.index + match[0].length);
  return starts;
}
