/** A point in a source file: 1-based line and column, 0-based offset in UTF-16 units, as unist counts them. */
export interface Point {
  readonly line: number;
  readonly column: number;
  readonly offset: number;
}

/** A stretch of a source file; the end is exclusive. */
export interface Range {
  readonly start: Point;
  readonly end: Point;
}

/** The point `by` UTF-16 units further on the same line. */
export function movePoint(point: Point, by: number): Point {
  return { line: point.line, column: point.column + by, offset: point.offset + by };
}

/** Orders ranges by where they start, then by where they end. */
export function compareRanges(a: Range, b: Range): number {
  return a.start.offset - b.start.offset || a.end.offset - b.end.offset;
}
