import { keepAnswers } from '../base/keep-answers.js';

/** What the lexicon knows of one word, in base form or as typed. */
export interface Entry {
  /** Category letters from our own lists, the first the likeliest. */
  readonly core: string;
  /** Category letters from WordNet, the first the likeliest. */
  readonly wordnet: string;
  /** How much of the word's use is a thing to find, 0 to 9, by WordNet. */
  readonly share: number;
  /** How much of its use is as a verb, 0 to 9; -1 when it is no verb. */
  readonly verb: number;
  /** How much of its use is as an adjective, 0 to 9; -1 when it is none. */
  readonly adjective: number;
  /** True when it is a noun of any kind. */
  readonly noun: boolean;
  /** Names of the word lists it stands in: `weak`, `prepositions`, `handling` … */
  readonly classes: readonly string[];
}

/** The words of the finder. */
export interface Lexicon {
  /** The entry of a word in lower case, or null. */
  readonly find: (word: string) => Entry | null;
}

/** Opens the derived lexicon: sorted lines `word, tab, what is known`. Nothing is parsed until it is asked for. */
export function openLexicon(bytes: Uint8Array): Lexicon {
  const text = new TextDecoder().decode(bytes);
  return {
    find: keepAnswers((word) => {
      const line = searchLine(text, word);
      return line === null ? null : readEntry(line);
    }),
  };
}

/** What stands after the tab on the line of a word, found by halving; null when there is no such line. */
function searchLine(text: string, word: string): string | null {
  let low = 0;
  let high = text.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const start = text.lastIndexOf('\n', middle - 1) + 1;
    const order = compareKey(text, start, word);
    if (order === 0) return text.slice(start + word.length + 1, text.indexOf('\n', start));
    if (order < 0) low = text.indexOf('\n', middle) + 1;
    else high = start;
  }
  return null;
}

/** Orders the key of the line that begins at `start` against a word, by code units. */
function compareKey(text: string, start: number, word: string): number {
  for (let i = 0; i < word.length; i++) {
    const difference = text.charCodeAt(start + i) - word.charCodeAt(i);
    if (difference !== 0) return text.charCodeAt(start + i) === 9 ? -1 : difference;
  }
  return text.charCodeAt(start + word.length) === 9 ? 0 : 1;
}

function readEntry(line: string): Entry {
  const entry = { core: '', wordnet: '', share: 0, verb: -1, adjective: -1, noun: false, classes: [] as string[] };
  for (const field of line.split(' ')) {
    const rest = field.slice(1);
    if (field.startsWith('+')) entry.core = rest;
    else if (field.startsWith('=')) {
      entry.wordnet = rest.replace(/\d/, '');
      entry.share = Number(/\d/.exec(rest)?.[0] ?? 0);
    } else if (field.startsWith('v')) entry.verb = Number(rest);
    else if (field.startsWith('a')) entry.adjective = Number(rest);
    else if (field.startsWith('.')) entry.classes.push(rest);
    else if (field === 'n') entry.noun = true;
  }
  if (entry.core || entry.wordnet) entry.noun = true;
  return entry;
}
