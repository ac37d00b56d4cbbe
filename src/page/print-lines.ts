import type { TextStyle } from '../script/types.js';
import { pageMeasures } from '../trade/page-measures.js';
import type { PlacedRow } from './break-pages.js';
import { measureText } from './text-width.js';
import type { PageLine, PageRun } from './types.js';
import type { Paragraph } from './typeset.js';

/** Turns a placed row into a line of the page, with its column and its runs of one style. */
export function printLine({ row, line, block }: PlacedRow): PageLine {
  const { paragraph, from, to } = line;
  const start = paragraph.tokens.starts[from] ?? 0;
  const end = paragraph.tokens.ends[to - 1] ?? 0;
  const printed = {
    row,
    column: columnOf(paragraph, start, end),
    kind: paragraph.kind,
    runs: styleRuns(paragraph, start, end),
    scene: block.scene,
  };
  const isFirst = line.index === 0 && from === 0;
  return isFirst && block.number !== null ? { ...printed, number: block.number } : printed;
}

function columnOf({ measure, text }: Paragraph, start: number, end: number): number {
  const { column, width, align } = pageMeasures[measure];
  if (align === 'left') return column;
  const cells = measureText(text.slice(start, end));
  if (align === 'centre') return column + Math.max(0, Math.floor((width - cells) / 2));
  const { action } = pageMeasures;
  return Math.max(action.column, Math.min(column, action.column + action.width - cells));
}

/** The text from `start` to `end`, parted where the style changes; text outside every span is plain. */
function styleRuns({ text, spans }: Paragraph, start: number, end: number): PageRun[] {
  const [whole] = spans;
  if (!whole || (whole.start <= start && whole.end >= end)) {
    return [{ text: plainSpaces(text.slice(start, end)), style: whole?.style ?? 'plain' }];
  }
  const runs: { text: string; style: TextStyle }[] = [];
  const add = (from: number, to: number, style: TextStyle) => {
    if (to <= from) return;
    const words = plainSpaces(text.slice(from, to));
    const last = runs.at(-1);
    if (last?.style === style) last.text += words;
    else runs.push({ text: words, style });
  };
  let at = start;
  for (const span of spans) {
    if (span.end <= at || span.start >= end) continue;
    add(at, span.start, 'plain');
    add(Math.max(at, span.start), Math.min(end, span.end), span.style);
    at = Math.min(end, span.end);
  }
  add(at, end, 'plain');
  return runs;
}

/** Tabs and other white space as spaces. */
function plainSpaces(text: string): string {
  return /[^\S ]/.test(text) ? text.replace(/\s/g, ' ') : text;
}
