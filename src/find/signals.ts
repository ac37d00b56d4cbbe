import type { Clauses, Part } from './clause-types.js';
import type { Lexicon } from './lexicon.js';
import { readWords, type SignsInWords } from './signs-in-words.js';
import { readUse, type SignsOfUse } from './signs-of-use.js';

/** What a sentence tells of one noun phrase. */
export interface Signals {
  readonly use: SignsOfUse;
  readonly words: SignsInWords;
}

/** Reads the signs of use around a noun phrase. */
export function readSignals(part: Part, clauses: Clauses, lexicon: Lexicon): Signals {
  return { use: readUse(part, clauses, lexicon), words: readWords(part, clauses, lexicon) };
}
