import type { Entry, Lexicon } from './lexicon.js';
import type { Phrase } from './phrases.js';
import type { Token } from './reading.js';

/** Where the knowledge of a word comes from: our lists, our lists with care, WordNet, or nowhere. */
export type Source = 'list' | 'weak' | 'wordnet' | 'unknown';

/** What the words of a phrase make of it before its use is seen. */
export interface Kind {
  /** Category letters, the likeliest first; empty when nothing is known. */
  readonly letters: string;
  readonly source: Source;
  /** Share of the word's use that is a thing to find, 0 to 9, by WordNet. */
  readonly share: number;
  /** Head in base form. */
  readonly head: string;
  /** Place of the first token of a compound that the lexicon knows ("hip flask"), else the head's. */
  readonly from: number;
  readonly classes: readonly string[];
}

/** Makes the function that looks phrases of a sentence up, each once. */
export function kindFinder(tokens: readonly Token[], lexicon: Lexicon): (phrase: Phrase) => Kind {
  let known: Map<Phrase, Kind> | null = null;
  return (phrase) => {
    const before = known?.get(phrase);
    if (before) return before;
    const kind = findKind(tokens, phrase, lexicon);
    known ??= new Map();
    known.set(phrase, kind);
    return kind;
  };
}

/** Looks a phrase up: as a compound of two or three words first, then by its head. */
export function findKind(tokens: readonly Token[], phrase: Phrase, lexicon: Lexicon): Kind {
  const head = tokens[phrase.head] as Token;
  const entry = headEntry(head, lexicon);
  for (const size of [2, 1]) {
    const from = phrase.head - size;
    if (from < phrase.start || !phrase.modifiers.includes(from)) continue;
    const compound = lexicon.find(
      `${tokens
        .slice(from, phrase.head)
        .map((token) => token.lower)
        .join(' ')} ${head.lemma}`,
    );
    if (compound && (compound.core || (compound.wordnet && !entry?.core)))
      return kindOf(compound, head.lemma, from, entry);
  }
  return entry
    ? kindOf(entry, head.lemma, phrase.head, entry)
    : { ...nothing, letters: isThingLike(head) ? 'p' : '', head: head.lemma, from: phrase.head };
}

const nothing: Omit<Kind, 'head' | 'from'> = { letters: '', source: 'unknown', share: 0, classes: [] };

/** A word of no list may be a thing, save for what ends like an idea, a person's name or a figure. */
function isThingLike(head: Token): boolean {
  return (
    head.tag === 'noun' &&
    /^[\p{Ll}-]{3,}$/u.test(head.text) &&
    !/(?:ness|ity|tion|sion|ment|ance|ence|ship|hood|ism|dom|ing|ology|ly)s?$/.test(head.lower)
  );
}

/** The entry of a head; of a hyphened word that the lexicon lacks, that of its last part. */
function headEntry(head: Token, lexicon: Lexicon): Entry | null {
  const own = lexicon.find(head.lemma);
  if (own?.noun) return own;
  const hyphen = head.lemma.lastIndexOf('-');
  return hyphen > 0 ? lexicon.find(head.lemma.slice(hyphen + 1)) : own;
}

function kindOf(entry: Entry, head: string, from: number, headEntry: Entry | null): Kind {
  const weak = entry.classes.includes('weak');
  const source: Source = entry.core ? (weak ? 'weak' : 'list') : entry.wordnet ? 'wordnet' : 'unknown';
  return {
    letters: entry.core || entry.wordnet,
    source,
    share: entry.share,
    head,
    from,
    classes:
      headEntry && headEntry !== entry
        ? [...entry.classes, ...headEntry.classes.filter((name) => name !== 'weak')]
        : entry.classes,
  };
}
