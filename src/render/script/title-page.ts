import { measureText } from '../../page/text-width.js';
import { tokenize, wrapTokens } from '../../page/wrap.js';
import type { FrontMatter } from '../../script/types.js';
import { type Paper, pageMeasures } from '../../trade/page-measures.js';
import type { PageTree, TextItem } from '../layout/page-tree.js';
import type { GlyphSplitter } from '../pdf/glyph-runs.js';
import { baselineOf, setPlain } from './pitch-text.js';

/** Rows of the title page, counted from the first row of the body: common practice. */
const rows = { title: 17, gap: 2 } as const;

/**
 * The page before the script, without a number: title and author in the middle, draft, date and contact at the foot.
 * Null when neither title nor author is known.
 */
export function layOutTitlePage(front: FrontMatter, paper: Paper, glyphs: GlyphSplitter): PageTree | null {
  const { title, author } = front;
  if (title === null && author === null) return null;
  const items: TextItem[] = [];
  let row: number = rows.title;
  const setCentred = (text: string) => {
    for (const line of wrapLines(text, pageMeasures.action.width)) {
      items.push(...setPlain(line, centre(line), baselineOf(row), glyphs));
      row += 1;
    }
  };
  if (title !== null) setCentred(title.toUpperCase());
  row += rows.gap;
  if (author !== null) {
    setCentred('by');
    row += rows.gap - 1;
    setCentred(author);
  }
  return {
    width: paper.width,
    height: paper.height,
    items: [...items, ...setFoot(front, paper, glyphs)],
    bookmarks: [],
  };
}

/** Contact at the left, draft and date at the right, both ending on the last row of the body. */
function setFoot({ draft, date, contact }: FrontMatter, paper: Paper, glyphs: GlyphSplitter): TextItem[] {
  const half = pageMeasures.action.width / 2;
  const right = [draft === null ? null : nameDraft(draft), date].filter((text) => text !== null);
  return [
    ...setColumn(wrapLines(contact ?? '', half), pageMeasures.action.column, paper, glyphs),
    ...setColumn(
      right.flatMap((text) => wrapLines(text, half - 1)),
      pageMeasures.action.column + half + 1,
      paper,
      glyphs,
    ),
  ];
}

/** A draft that is only a number or a letter gets its word. */
function nameDraft(draft: string): string {
  return /draft/i.test(draft) ? draft : `Draft ${draft}`;
}

function setColumn(lines: readonly string[], column: number, paper: Paper, glyphs: GlyphSplitter): TextItem[] {
  const first = Math.max(1, paper.bodyLines - lines.length + 1);
  return lines.flatMap((line, index) => setPlain(line, column, baselineOf(first + index), glyphs));
}

function centre(line: string): number {
  const { column, width } = pageMeasures.action;
  return column + Math.max(0, Math.floor((width - measureText(line)) / 2));
}

function wrapLines(text: string, width: number): string[] {
  return text.split('\n').flatMap((one) => {
    const tokens = tokenize(one, width);
    return wrapTokens(tokens, 0, width).map(({ from, to }) => one.slice(tokens.starts[from], tokens.ends[to - 1]));
  });
}
