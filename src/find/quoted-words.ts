import type { Token } from './reading.js';

/** Quotations of fewer words only set a word apart: the "tenderfoot". */
const fewWords = 4;
const nowhere: ReadonlySet<number> = new Set();

/**
 * The places of tokens inside a quotation of four words and more: they are said or written, and what they name is not there. A
 * quotation may begin in the sentence before or end in the next.
 */
export function quotedPlaces(tokens: readonly Token[]): ReadonlySet<number> {
  const signs = quotationMarks(tokens);
  if (signs.length === 0) return nowhere;
  const places = new Set<number>();
  const isClosing = (at: number) => tokens[at]?.text === '”' || (tokens[at]?.text === '"' && at >= tokens.length - 2);
  const edges =
    signs.length % 2 === 0 ? signs : isClosing(signs[0] as number) ? [-1, ...signs] : [...signs, tokens.length];
  for (let pair = 0; pair + 1 < edges.length; pair += 2) {
    const [from, to] = [edges[pair] as number, edges[pair + 1] as number];
    const words = tokens.slice(from + 1, to).filter(({ tag }) => tag !== 'punctuation');
    if (words.length < fewWords) continue;
    for (let at = from + 1; at < to; at++) places.add(at);
  }
  return places;
}

function quotationMarks(tokens: readonly Token[]): readonly number[] {
  const places: number[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const { text } = tokens[at] as Token;
    if (text === '"' || text === '“' || text === '”') places.push(at);
  }
  return places;
}
