import type { Diagnostic } from '../base/diagnostic.js';
import { sayScript } from '../messages/script.js';
import { rangeAt, type SourceText } from './source-text.js';

/** More signs of emphasis than this in one paragraph are no emphasis: the parser's time grows with their square. */
const mostEmphasis = 1000;
/** Lists and notes within each other are read down to this depth. */
const mostNested = 20;
/** What a sign becomes for the parser: it keeps its place, and prints as typed. */
const letter = 'x';

/** A line of more characters is no paragraph of a script: six pages without a break. */
const longestLine = 20_000;
const longLine = new RegExp(`.{${longestLine + 1},}`, 'gu');

/**
 * Takes from the parser the signs that nobody means as Markdown, since a script may be any text at all; the text keeps its length. Null
 * when a line is too long to be read at all.
 */
export function limitText(text: string, source: SourceText, messages: Diagnostic[]): string | null {
  if (hasLongLine(text, source, messages)) return null;
  let limited = text;
  if (countSigns(text, mostEmphasis) > mostEmphasis) limited = limitEmphasis(limited, source, messages);
  return nested.test(limited) ? limitNesting(limited, source, messages) : limited;
}

/** Says where a line is too long; white space and private text in it hardly count. */
function hasLongLine(text: string, source: SourceText, messages: Diagnostic[]): boolean {
  if (!mayHaveLongLine(text)) return false;
  let found = false;
  for (const { index, 0: line } of text.matchAll(longLine)) {
    const length = line.replace(/\s+/g, ' ').length;
    if (length <= longestLine) continue;
    messages.push(sayScript('line-too-long', { most: longestLine, length }, rangeAt(source, index, index + 1)));
    found = true;
  }
  return found;
}

/** Asked first, for speed. */
function mayHaveLongLine(text: string): boolean {
  let start = 0;
  while (text.length - start > longestLine) {
    const end = text.indexOf('\n', start);
    if (end < 0 || end - start > longestLine) return true;
    start = end + 1;
  }
  return false;
}

/** How many stars and underlines stand in a text; counting stops past a number. */
function countSigns(text: string, most: number): number {
  let count = 0;
  for (const sign of ['*', '_']) {
    for (let at = text.indexOf(sign); at !== -1 && count <= most; at = text.indexOf(sign, at + 1)) count += 1;
  }
  return count;
}

function limitEmphasis(text: string, source: SourceText, messages: Diagnostic[]): string {
  let offset = 0;
  const parts = text.split(/(\n[ \t]*\n)/).map((part) => {
    const start = offset;
    offset += part.length;
    if (countSigns(part, mostEmphasis) <= mostEmphasis) return part;
    messages.push(sayScript('emphasis-too-much', { most: mostEmphasis }, rangeAt(source, start, start + 1)));
    // A line of nothing but stars is a page break.
    return part.replace(/^(?![ \t]*\*[ \t*]*$).*$/gm, (line) => line.replace(/(?<!^[ \t]*)[*_]|^[*_](?!\s)/g, letter));
  });
  return parts.join('');
}

const container = '(?:>[ \\t]?|[*+-][ \\t]+|\\d{1,9}[.)][ \\t]+)';
const nested = new RegExp(`^[ \\t]*${container}{${mostNested + 1}}`, 'm');
const deeper = new RegExp(`^([ \\t]*${container}{${mostNested}})(${container}+)`, 'gm');

function limitNesting(text: string, source: SourceText, messages: Diagnostic[]): string {
  return text.replace(deeper, (whole, kept: string, rest: string, at: number) => {
    const line = text.slice(at, text.indexOf('\n', at) === -1 ? text.length : text.indexOf('\n', at));
    if (/^[ \t]*([*-])(?:[ \t]*\1)*[ \t]*$/.test(line)) return whole;
    messages.push(sayScript('nested-too-deep', { most: mostNested }, rangeAt(source, at, at + 1)));
    return kept + rest.replace(/[>*+-]/g, letter);
  });
}
