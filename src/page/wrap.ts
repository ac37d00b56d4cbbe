import { isOneCellEach, measureText, splitGraphemes } from './text-width.js';

/**
 * Stretches of text that no line end may part, each at most one line wide. Kept as columns, one entry a token,
 * because a script has many thousands of them.
 */
export interface Tokens {
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  /** Cells. */
  readonly widths: readonly number[];
  /** Cells of white space before each; 0 when it touches the token before. */
  readonly gaps: readonly number[];
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
/** What never starts a line, and what never ends one, in Chinese and Japanese. */
const closes = /^[\p{Pe}\p{Pf}\u3001\u3002\uff0c\uff0e\uff01\uff1f\uff1a\uff1b\u30fb\u30fc\u2026.,!?:;"']/u;
const opens = /^[\p{Ps}\p{Pi}]/u;

class TokenBuilder implements Tokens {
  readonly starts: number[] = [];
  readonly ends: number[] = [];
  readonly widths: number[] = [];
  readonly gaps: number[] = [];
  cut: string | null = null;

  push(start: number, end: number, width: number, gap: number): void {
    this.starts.push(start);
    this.ends.push(end);
    this.widths.push(width);
    this.gaps.push(gap);
  }
}

/** Takes text apart at white space and between ideographs; cuts what is wider than a line. Never hyphenates. */
export function tokenize(text: string, width: number): Tokens {
  const tokens = new TokenBuilder();
  if (isOneCellEach(text)) tokenizeSimple(tokens, text, width);
  else tokenizeAny(tokens, text, width);
  return tokens;
}

/** Text in which every character is one cell wide and the only white space is the space. */
function tokenizeSimple(tokens: TokenBuilder, text: string, width: number): void {
  let end = 0;
  for (let at = 0; at < text.length; ) {
    if (text.charCodeAt(at) === 0x20) {
      at += 1;
      continue;
    }
    const gap = tokens.starts.length === 0 ? 0 : at - end;
    const space = text.indexOf(' ', at);
    end = space < 0 ? text.length : space;
    if (end - at > width) tokens.cut ??= text.slice(at, end);
    for (let start = at; start < end; start += width) {
      const stop = Math.min(end, start + width);
      tokens.push(start, stop, stop - start, start === at ? gap : 0);
    }
    at = end;
  }
}

function tokenizeAny(tokens: TokenBuilder, text: string, width: number): void {
  let last = 0;
  for (const match of text.matchAll(words)) {
    const word = match[0];
    const start = match.index;
    const gap = tokens.starts.length === 0 ? 0 : measureSpace(text, last, start);
    last = start + word.length;
    const cells = measureText(word);
    if (ideograph.test(word)) {
      pushPieces(tokens, word, start, gap, width);
    } else if (cells > width) {
      tokens.cut ??= word;
      pushPieces(tokens, word, start, gap, width);
    } else {
      tokens.push(start, last, cells, gap);
    }
  }
}

/** White space is a cell each, the ideographic space two. */
function measureSpace(text: string, from: number, to: number): number {
  let cells = to - from;
  for (let at = from; at < to; at++) if (text.charCodeAt(at) === 0x3000) cells += 1;
  return cells;
}

/** Adds the pieces of a word that may be parted: at each ideograph, else where the line is full. */
function pushPieces(tokens: TokenBuilder, word: string, start: number, gap: number, width: number): void {
  let [from, to, cells, before] = [start, start, 0, gap];
  let free = false;
  for (const grapheme of splitGraphemes(word)) {
    const wide = measureText(grapheme);
    const breakable = ideograph.test(grapheme);
    const mayBreak = free && !closes.test(grapheme);
    if (cells > 0 && (cells + wide > width || mayBreak)) {
      tokens.push(from, to, cells, before);
      [from, cells, before] = [to, 0, 0];
    }
    to += grapheme.length;
    cells += wide;
    free = breakable || (!opens.test(grapheme) && isBeforeIdeograph(word, to - start));
  }
  tokens.push(from, to, cells, before);
}

function isBeforeIdeograph(word: string, at: number): boolean {
  return ideograph.test(String.fromCodePoint(word.codePointAt(at) ?? 0));
}

/** Fills lines of `width` cells from token `from` on; stops after `most` lines. */
export function wrapTokens(tokens: Tokens, from: number, width: number, most = Infinity): WrappedLine[] {
  const lines: WrappedLine[] = [];
  let start = from;
  while (start < tokens.starts.length && lines.length < most) {
    const to = fillLine(tokens, start, width);
    lines.push({ from: start, to });
    start = to;
  }
  return lines;
}

function fillLine({ widths, gaps }: Tokens, start: number, width: number): number {
  let cells = widths[start] as number;
  let to = start + 1;
  while (to < widths.length) {
    cells += (gaps[to] as number) + (widths[to] as number);
    if (cells > width) break;
    to += 1;
  }
  return to;
}
