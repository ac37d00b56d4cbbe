import { breakRules, pageMeasures } from '../trade/page-measures.js';
import { endsSentence } from './sentence-ends.js';
import { type Paragraph, setText, type TypesetBlock } from './typeset.js';
import type { Unit } from './units.js';
import { wrapTokens } from './wrap.js';

/** A place inside a unit: everything before this token of this paragraph of this block is printed. */
export interface Position {
  readonly block: number;
  readonly paragraph: number;
  readonly token: number;
}

/** One row of the page: tokens `from` up to `to` of a paragraph; null is a blank row. */
export interface Row {
  readonly paragraph: Paragraph;
  readonly from: number;
  readonly to: number;
  /** Where the unit goes on after this row. */
  readonly block: number;
  readonly index: number;
}

export const unitStart: Position = { block: 0, paragraph: 0, token: 0 };

/** Lays a unit out from a place on, for at most `most` rows. A speech that goes on gets its cue again. */
export function layRows(unit: Unit, from: Position, most: number): (Row | null)[] {
  const rows: (Row | null)[] = [];
  for (let at = from.block; at < unit.length && rows.length < most; at++) {
    if (at > from.block) rows.push(null);
    const block = unit[at] as TypesetBlock;
    const start = at === from.block ? from : { block: at, paragraph: 0, token: 0 };
    layBlock(rows, block, start, most);
  }
  return rows.slice(0, most);
}

function layBlock(rows: (Row | null)[], block: TypesetBlock, start: Position, most: number): void {
  if (block.cue !== null && (start.paragraph > 0 || start.token > 0)) {
    layParagraph(rows, continueCue(block.cue), { ...start, paragraph: -1, token: 0 }, most);
  }
  for (let index = start.paragraph; index < block.paragraphs.length && rows.length < most; index++) {
    const token = index === start.paragraph ? start.token : 0;
    layParagraph(rows, block.paragraphs[index] as Paragraph, { ...start, paragraph: index, token }, most);
  }
}

function layParagraph(rows: (Row | null)[], paragraph: Paragraph, at: Position, most: number): void {
  const { width } = pageMeasures[paragraph.measure];
  const lines = at.token === 0 ? paragraph.wrapped : wrapTokens(paragraph.tokens, at.token, width, most - rows.length);
  for (const { from, to } of lines) {
    if (rows.length >= most) return;
    rows.push({ paragraph, from, to, block: at.block, index: at.paragraph });
  }
}

/** Rows that a repeated cue may take, so that a page always has room for what is said. */
const longestCue = 3;

/** The cue at the top of the page on which a speech goes on; never continued twice. */
function continueCue(cue: string): Paragraph {
  const again = /\(CONT['\u2019]?D\.?\)|\(CONTINU(?:ED|ING)\)/i.test(cue) ? cue : `${cue} ${breakRules.continued}`;
  const paragraph = setText(again, 'cue', 'cue');
  return { ...paragraph, wrapped: paragraph.wrapped.slice(0, longestCue) };
}

/** The place after token `token - 1` of a row, or null when the unit's block ends there. */
export function positionAfter(unit: Unit, row: Row, token: number): Position | null {
  const block = unit[row.block] as TypesetBlock;
  if (token < row.paragraph.tokens.starts.length) return { block: row.block, paragraph: row.index, token };
  const next = row.index + 1;
  return next < block.paragraphs.length ? { block: row.block, paragraph: next, token: 0 } : null;
}

/** Whether a sentence ends with this token of a row. */
export function isSentenceEnd(unit: Unit, row: Row, token: number): boolean {
  const { paragraph } = row;
  const word = wordEndingAt(paragraph, token);
  if (token + 1 < paragraph.tokens.starts.length) return endsSentence(word, tokenText(paragraph, token + 1));
  const following = (unit[row.block] as TypesetBlock).paragraphs[row.index + 1];
  return endsSentence(word, following && following.tokens.starts.length > 0 ? tokenText(following, 0) : null);
}

function tokenText({ tokens, text }: Paragraph, token: number): string {
  return text.slice(tokens.starts[token], tokens.ends[token]);
}

/** How far back to look for the start of a word, in tokens: more than any word that is cut short has. */
const longestWord = 24;

/** A word may be several tokens: its pieces touch. */
function wordEndingAt({ tokens, text }: Paragraph, token: number): string {
  const least = Math.max(0, token - longestWord);
  let first = token;
  while (first > least && tokens.gaps[first] === 0) first -= 1;
  return text.slice(tokens.starts[first], tokens.ends[token]);
}
