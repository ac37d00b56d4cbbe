import stringWidth from 'string-width';

/** Printable Latin letters, digits and common punctuation: one cell for each UTF-16 unit. */
const oneCellEach = /^[\u0020-\u007e\u00a0-\u00ac\u00ae-\u02ff\u2010-\u2027\u2030-\u205e]*$/;
/** The common ideographs and kana: two cells each. */
const twoCells = /^[\u3041-\u3096\u30a1-\u30fa\u4e00-\u9fff]$/;
const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Text is segmented in stretches of this many UTF-16 units: the time of a segmenter grows faster than its text. */
const stretch = 256;

/** Whether every character takes one cell and is a character by itself; its only white space is the space. */
export function isOneCellEach(text: string): boolean {
  return oneCellEach.test(text);
}

/** How many cells of a fixed-width face the text takes: combining marks none, wide letters and emoji two. */
export function measureText(text: string): number {
  if (oneCellEach.test(text)) return text.length;
  if (twoCells.test(text)) return 2;
  if (text.length <= stretch) return stringWidth(text, { countAnsiEscapeCodes: true });
  const parts = splitGraphemes(text);
  return parts.length === 1 ? measureMarked(text) : parts.reduce((sum, part) => sum + measureText(part), 0);
}

/** One character under hundreds of marks: no more than its beginning is measured. */
function measureMarked(text: string): number {
  return stringWidth(text.slice(0, stretch), { countAnsiEscapeCodes: true });
}

/** The characters as a reader counts them, so that a cut never parts a letter from its accents. */
export function splitGraphemes(text: string): string[] {
  if (oneCellEach.test(text)) return text.split('');
  const parts: string[] = [];
  let size = stretch;
  for (let at = 0; at < text.length; ) {
    const found = Array.from(graphemes.segment(text.slice(at, at + size)), (part) => part.segment);
    // The last one may go on in the next stretch.
    if (at + size < text.length) found.pop();
    size = found.length === 0 ? size * 2 : stretch;
    for (const part of found) {
      parts.push(part);
      at += part.length;
    }
  }
  return parts;
}
