import type { Diagnostic } from '../base/diagnostic.js';
import { sayFind } from '../messages/find.js';
import type { Lexicon } from './lexicon.js';
import type { Sentence } from './reading.js';
import { wordUses } from './word-uses.js';

/** Fewer words than this tell nothing of a language. */
const enough = 30;
/** So many tell all that can be told. */
const plenty = 500;
/** In English prose some 5 to 10 words in a hundred are unknown, in its neighbours some 85 (measured on eight texts of our own). */
const most = 0.6;

/** Tells of a script that names no language and whose words are hardly ever English. */
export function tellForeignWords(sentences: readonly Sentence[], lexicon: Lexicon): Diagnostic[] {
  const uses = wordUses(lexicon);
  let words = 0;
  let unknown = 0;
  for (const { kind, tokens } of sentences) {
    if (words >= plenty) break;
    if (kind === 'heading') continue;
    for (const { lower, person } of tokens) {
      if (person !== null || !/^\p{L}/u.test(lower)) continue;
      const { closed, noun, verb, adjective, adverb } = uses(lower);
      words++;
      if (closed === null && !noun && !verb && adjective < 0 && !adverb) unknown++;
    }
  }
  if (words < enough || unknown / words <= most) return [];
  const [first] = sentences;
  return [sayFind('words-not-english', { unknown, words }, first?.place(0, first.text.length))];
}
