import stringWidth from 'string-width';

/** Printable Latin letters, digits and common punctuation: one cell for each UTF-16 unit. */
const oneCellEach = /^[\u0020-\u007e\u00a0-\u00ac\u00ae-\u02ff\u2010-\u2027\u2030-\u205e]*$/;
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Whether every character takes one cell and is a character by itself; its only white space is the space. */
export function isOneCellEach(text: string): boolean {
  return oneCellEach.test(text);
}

/** How many cells of a fixed-width face the text takes: combining marks none, wide letters and emoji two. */
export function measureText(text: string): number {
  return oneCellEach.test(text) ? text.length : stringWidth(text);
}

/** The characters as a reader counts them, so that a cut never parts a letter from its accents. */
export function splitGraphemes(text: string): string[] {
  return oneCellEach.test(text) ? text.split('') : Array.from(graphemes.segment(text), (part) => part.segment);
}
