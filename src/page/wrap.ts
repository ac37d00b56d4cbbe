import { measureText, splitGraphemes } from './text-width.js';

/** A stretch of text that no line end may part, at most one line wide. */
export interface Token {
  readonly start: number;
  readonly end: number;
  /** Cells. */
  readonly width: number;
  /** Cells of white space before it; 0 when it touches the token before. */
  readonly gap: number;
}

export interface Tokens {
  readonly list: readonly Token[];
  /** A word that had to be cut because no line can hold it, or null. */
  readonly cut: string | null;
}

/** A line of wrapped text: tokens `from` up to, not including, `to`. */
export interface WrappedLine {
  readonly from: number;
  readonly to: number;
}

/** White space at which a line may end: no-break spaces are left out. */
const words = /[^ \t\n\r\f\v\u1680\u2000-\u2006\u2008-\u200a\u2028\u2029\u205f\u3000]+/g;
const ideograph = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/u;

/** Takes text apart at white space and between ideographs; cuts what is wider than a line. Never hyphenates. */
export function tokenize(text: string, width: number): Tokens {
  const list: Token[] = [];
  let cut: string | null = null;
  let last = 0;
  for (const match of text.matchAll(words)) {
    const word = match[0];
    const start = match.index;
    const gap = list.length === 0 ? 0 : Math.max(1, measureText(text.slice(last, start)));
    last = start + word.length;
    const cells = measureText(word);
    if (cells <= width && !ideograph.test(word)) {
      list.push({ start, end: last, width: cells, gap });
      continue;
    }
    if (cells > width && !ideograph.test(word)) cut ??= word;
    pushPieces(list, word, start, gap, width);
  }
  return { list, cut };
}

/** Adds the pieces of a word that may be parted: at each ideograph, else where the line is full. */
function pushPieces(list: Token[], word: string, start: number, gap: number, width: number): void {
  let piece = { start, end: start, width: 0, gap };
  let free = false;
  for (const grapheme of splitGraphemes(word)) {
    const cells = measureText(grapheme);
    const breakable = ideograph.test(grapheme);
    const end = piece.end + grapheme.length;
    if (piece.width > 0 && (piece.width + cells > width || breakable || free)) {
      list.push(piece);
      piece = { start: piece.end, end, width: cells, gap: 0 };
    } else {
      piece = { ...piece, end, width: piece.width + cells };
    }
    free = breakable;
  }
  list.push(piece);
}

/** Fills lines of `width` cells from token `from` on; stops after `most` lines. */
export function wrapTokens(tokens: readonly Token[], from: number, width: number, most = Infinity): WrappedLine[] {
  const lines: WrappedLine[] = [];
  let start = from;
  while (start < tokens.length && lines.length < most) {
    const to = fillLine(tokens, start, width);
    lines.push({ from: start, to });
    start = to;
  }
  return lines;
}

function fillLine(tokens: readonly Token[], start: number, width: number): number {
  let cells = (tokens[start] as Token).width;
  let to = start + 1;
  for (let next = tokens[to]; next; next = tokens[to]) {
    cells += next.gap + next.width;
    if (cells > width) break;
    to += 1;
  }
  return to;
}
