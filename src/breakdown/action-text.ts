import type { Point, Range } from '../base/text-range.js';
import type { Action, Block, Line, Scene } from '../script/types.js';

/** A paragraph of action as one text: its lines joined by a space. */
export interface ActionText {
  readonly text: string;
  /** The place in the source of a stretch of `text`. */
  readonly place: (start: number, end: number) => Range;
  readonly at: Range;
}

/** The paragraphs of action of a scene, in order. */
export function readActionTexts(scene: Scene): ActionText[] {
  return scene.blocks.filter(isAction).map(joinLines);
}

function isAction(block: Block): block is Action {
  return block.kind === 'action';
}

function joinLines(action: Action): ActionText {
  const starts: number[] = [];
  let text = '';
  for (const line of action.lines) {
    if (text !== '') text += ' ';
    starts.push(text.length);
    text += line.text;
  }
  return { text, at: action.at, place: (start, end) => placeInLines(action.lines, starts, start, end) };
}

function placeInLines(lines: readonly Line[], starts: readonly number[], start: number, end: number): Range {
  let index = 0;
  while (index + 1 < starts.length && (starts[index + 1] as number) <= start) index++;
  const line = lines[index] as Line;
  const from = starts[index] as number;
  return placeInLine(line, start - from, Math.min(end - from, line.text.length));
}

/** The place in the source of a stretch of a line's printed text. */
export function placeInLine(line: Line, start: number, end: number): Range {
  const first = sourcePoint(line, start, false);
  const last = sourcePoint(line, end, true);
  return { start: first, end: last.offset < first.offset ? first : last };
}

function sourcePoint(line: Line, index: number, isEnd: boolean): Point {
  for (const span of line.spans) {
    const inside = isEnd ? index > span.start && index <= span.end : index >= span.start && index < span.end;
    if (!inside) continue;
    const offset = span.offset + (index - span.start);
    return { line: line.at.start.line, column: line.at.start.column + (offset - line.at.start.offset), offset };
  }
  return isEnd ? line.at.end : line.at.start;
}
