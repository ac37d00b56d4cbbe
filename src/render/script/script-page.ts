import { measureText } from '../../page/text-width.js';
import type { Page, PageLine } from '../../page/types.js';
import { type Paper, pageType } from '../../trade/page-measures.js';
import type { PageTree, TextItem } from '../layout/page-tree.js';
import type { GlyphSplitter } from '../pdf/glyph-runs.js';
import { baselineOf, setAtPitch, setPlain } from './pitch-text.js';

/** A page of the script as positions: its lines, its number from page 2 on, the scenes' numbers in both margins. */
export function layOutScriptPage(page: Page, paper: Paper, glyphs: GlyphSplitter): PageTree {
  return {
    width: paper.width,
    height: paper.height,
    items: [
      ...numberPage(page.number, paper, glyphs),
      ...page.lines.flatMap((line) => [
        ...setAtPitch(line.runs, line.column, baselineOf(line.row), glyphs),
        ...numberScene(line, glyphs),
      ]),
    ],
    bookmarks: page.lines.filter((line) => line.kind === 'heading').flatMap(nameHeading),
  };
}

function numberPage(number: number, paper: Paper, glyphs: GlyphSplitter): TextItem[] {
  if (number < pageType.firstNumberedPage) return [];
  const text = `${number}.`;
  const right = (paper.width - pageType.numberRight) / pageType.characterWidth;
  const row = pageType.numberLine - pageType.top / pageType.leading;
  return setPlain(text, right - text.length, baselineOf(row), glyphs);
}

function numberScene({ number, row }: PageLine, glyphs: GlyphSplitter): TextItem[] {
  if (number === undefined) return [];
  const y = baselineOf(row);
  const left = Math.max(0, pageType.sceneNumberLeftEnd - measureText(number));
  return [...setPlain(number, left, y, glyphs), ...setPlain(number, pageType.sceneNumberRightStart, y, glyphs)];
}

function nameHeading({ number, runs }: PageLine): string[] {
  const text = runs.map((run) => run.text).join('');
  return [number === undefined ? text : `${number} ${text}`];
}
