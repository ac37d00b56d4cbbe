import { define, type MessageTable, speaker } from './define.js';

/** Messages of the page layer. */
export const pageMessages = {
  'page-word-cut': define<{ word: string }>('info', 'A word is wider than its line', ({ word }) => ({
    reason: `Expected words that fit the line, found "${shorten(word)}", which is wider; it is cut where the line ends.`,
    hint: 'Put a space or a line break in it where it may be parted.',
    actual: word,
  })),
  'page-sentence-split': define<{ page: number }>('info', 'A page ends inside a sentence', ({ page }) => ({
    reason: `Expected a sentence to end in the last third of page ${page}, found none; the page ends inside a sentence.`,
    hint: 'Part the paragraph in two, or end a sentence earlier, if the printed script matters.',
  })),
} as const satisfies MessageTable;

export const sayPage = speaker('page', pageMessages);

function shorten(word: string): string {
  const letters = [...word];
  return letters.length > 24 ? `${letters.slice(0, 24).join('')}…` : word;
}
