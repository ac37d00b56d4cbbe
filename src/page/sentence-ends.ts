import { nameAbbreviations } from '../trade/cue-extensions.js';

/** Words, besides titles, that end in a full stop without ending a sentence: common practice. */
const shortened = ['vs', 'etc', 'e.g', 'i.e', 'a.m', 'p.m', 'approx', 'vol', 'fig', 'cf', 'al'];

const abbreviations = new Set([...nameAbbreviations.map((word) => word.toLowerCase()), ...shortened]);

const stop = /([.!?\u2026\u3002\uff01\uff1f])[.!?\u2026]*["'\u2019\u201d\u00bb\u300d\u300f)\]*_]*$/u;
/** Characters of a word's end that are looked at: more than any shortened word has. */
const longestEnd = 32;
const opensLow = /^["'\u2018\u201c\u00ab([*_\u2026.\u2014\u2013-]*\p{Ll}/u;

/**
 * Whether a sentence ends with this word, seen with the word that follows (null: nothing follows).
 * In doubt it says no: a page then breaks a sentence earlier.
 */
export function endsSentence(word: string, next: string | null): boolean {
  const end = word.slice(-longestEnd);
  const found = stop.exec(end);
  if (!found) return false;
  if (next === null) return true;
  if (opensLow.test(next)) return false;
  if (found[1] !== '.' || end.includes('..')) return true;
  const bare = end.slice(0, found.index).replace(/^[^\p{L}\p{N}]+/u, '');
  return !isShortened(bare, next);
}

/** A title, a word cut short, or an initial. "No." is a word unless a number follows; "I." is the pronoun. */
function isShortened(bare: string, next: string): boolean {
  const word = bare.toLowerCase();
  if (word === 'no') return /^\d/.test(next);
  return abbreviations.has(word) || (/^\p{Lu}$/u.test(bare) && bare !== 'I');
}
