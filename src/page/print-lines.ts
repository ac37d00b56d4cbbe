import type { TextStyle } from '../script/types.js';
import { pageMeasures } from '../trade/page-measures.js';
import type { PlacedRow } from './break-pages.js';
import { measureText } from './text-width.js';
import type { PageLine, PageRun } from './types.js';
import type { Paragraph } from './typeset.js';

/** Turns a placed row into a line of the page, with its column and its runs of one style. */
export function printLine({ row, line, block }: PlacedRow): PageLine {
  const { paragraph, from, to } = line;
  const start = paragraph.tokens[from]?.start ?? 0;
  const end = paragraph.tokens[to - 1]?.end ?? 0;
  const first = line.index === 0 && from === 0;
  return {
    row,
    column: columnOf(paragraph, paragraph.text.slice(start, end)),
    kind: paragraph.kind,
    runs: styleRuns(paragraph, start, end),
    ...(first && block.number !== null ? { number: block.number } : {}),
    scene: block.scene,
  };
}

function columnOf({ measure }: Paragraph, text: string): number {
  const { column, width, align } = pageMeasures[measure];
  if (align === 'left') return column;
  const cells = measureText(text);
  if (align === 'centre') return column + Math.max(0, Math.floor((width - cells) / 2));
  const { action } = pageMeasures;
  return Math.max(action.column, Math.min(column, action.column + action.width - cells));
}

/** The text from `start` to `end`, parted where the style changes; text outside every span is plain. */
function styleRuns({ text, spans }: Paragraph, start: number, end: number): PageRun[] {
  const runs: { text: string; style: TextStyle }[] = [];
  const add = (from: number, to: number, style: TextStyle) => {
    if (to <= from) return;
    const words = text.slice(from, to).replace(/\s/g, ' ');
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
