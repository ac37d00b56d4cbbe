/** Words that end in a full stop without ending a sentence. */
const abbreviations = new Set(
  'mr mrs ms dr st prof sgt lt capt col gen rev jr sr hon no vs etc e.g i.e a.m p.m approx ft min sec vol dept'.split(
    ' ',
  ),
);

const stop = /([.!?\u2026\u3002\uff01\uff1f])[.!?\u2026]*["'\u2019\u201d\u00bb)\]*_]*$/u;
const opensLow = /^["'\u2018\u201c\u00ab([*_\u2026.\u2014\u2013-]*\p{Ll}/u;

/**
 * Whether a sentence ends with this word, seen with the word that follows (null: nothing follows).
 * In doubt it says no: a page then breaks a sentence earlier.
 */
export function endsSentence(word: string, next: string | null): boolean {
  const found = stop.exec(word);
  if (!found) return false;
  if (next !== null && opensLow.test(next)) return false;
  if (found[1] !== '.' || word.includes('..')) return true;
  const bare = word
    .slice(0, found.index)
    .replace(/^[^\p{L}\p{N}]+/u, '')
    .toLowerCase();
  if (abbreviations.has(bare)) return next === null;
  // One letter and a stop is an initial, save for the pronoun.
  return !(/^\p{L}$/u.test(bare) && bare !== 'i') || next === null;
}
