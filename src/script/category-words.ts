import type { Diagnostic } from '../base/diagnostic.js';
import type { Range } from '../base/text-range.js';
import { sayScript } from '../messages/script.js';
import { findCategory } from '../trade/categories.js';
import { shortForTwo } from '../trade/category-words.js';

/** A category typed on the spot, and what stands behind it that belongs in a definition. */
export interface WrittenCategory {
  readonly word: string;
  readonly text: string;
}

/** Parts `prop "2; sharp"` into its category and the text of a definition; null when no known category stands in front. */
export function partCategory(written: string): WrittenCategory | null {
  if (findCategory(written)) return { word: written, text: '' };
  const found = /^([^"\u201c\u201d;,:]+?)\s*[;,:]?\s*(?:["\u201c](.*?)["\u201d]?|([;,:].*|\d+\b.*))$/.exec(written);
  const text = found?.[2] ?? found?.[3]?.replace(/^[;,:]\s*/, '') ?? '';
  const word = found?.[1]?.trim() ?? '';
  return text !== '' && findCategory(word) ? { word, text } : null;
}

/** Says when a word for a category is short for two of them. */
export function checkShortWord(written: string, at: Range, messages: Diagnostic[]): void {
  const row = shortForTwo.find(({ word }) => word === written.trim().toLowerCase());
  if (row) messages.push(sayScript('category-short-for-two', { written, read: row.read, other: row.other }, at));
}
