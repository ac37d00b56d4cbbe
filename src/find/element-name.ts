import type { Lexicon } from './lexicon.js';
import type { Phrase } from './phrases.js';
import type { Token } from './reading.js';
import { nounBases } from './word-forms.js';

/** The words of a noun phrase that may stand in an element's name. */
export interface NameWords {
  /** The head as typed, in lower case, and in the singular. */
  readonly head: string;
  readonly singular: string;
  /** Nouns, proper names, colours, materials and kinds before the head: they stay ("storm lantern", "yellow oilskin"). */
  readonly telling: readonly string[];
  /** Sizes and places: they tell apart only where there are two ("small suitcase", "big suitcase"). */
  readonly sizes: readonly string[];
  /** The name that calls an animal, or null. */
  readonly called: string | null;
}

/** Takes the name of a thing from its noun phrase; `from` is the place where a compound that the lexicon knows begins. */
export function readName(tokens: readonly Token[], phrase: Phrase, from: number, lexicon: Lexicon): NameWords {
  const head = tokens[phrase.head] as Token;
  const telling: string[] = [];
  const sizes: string[] = [];
  const owner = phrase.owner?.phrase;
  if (owner && /^an?$/.test(owner.determiner?.lower ?? ''))
    telling.push(ownerWord((tokens[owner.head] as Token).lower));
  for (const place of phrase.modifiers) {
    const token = tokens[place] as Token;
    if (token.tag === 'name' && /\p{Ll}/u.test(token.text)) telling.push(token.text);
    else if (place >= from || isKind(token, tokens[place - 1], lexicon) || isBound(token, lexicon))
      telling.push(token.lower);
    else if (lexicon.find(token.lower)?.classes.includes('colours')) sizes.push(token.lower);
  }
  const called = isCalled(head, lexicon) ? titleCase(head.text) : null;
  return { head: called ? head.lemma : head.lower, singular: head.lemma, telling, sizes, called };
}

const ownerWord = (word: string) => (word.endsWith('s') ? `${word}'` : `${word}'s`);

const boundParticiple =
  /^(?:rocking|measuring|sleeping|walking|fishing|shopping|sewing|washing|dressing|swimming|climbing|boxing|riding|wedding|folding|filing|vending|parking|frying|baking|knitting|writing|reading|hunting|shaving|drinking|skipping|steering|spinning|sliding|carving|chopping|mixing|ironing|landing|driving|running|racing|hiking|bathing)$/;

/** An animal under its own name: the base form is no form of the word. */
function isCalled(head: Token, lexicon: Lexicon): boolean {
  if (!/^\p{Lu}/u.test(head.text) || head.lemma === head.lower) return false;
  return !nounBases(head.lower).includes(head.lemma) && (lexicon.find(head.lemma)?.core.startsWith('a') ?? false);
}

const titleCase = (text: string) => text.slice(0, 1) + text.slice(1).toLowerCase();

/** A colour, a pattern or a make; "good as new" and "good two metres" tell none. */
function isKind(token: Token, before: Token | undefined, lexicon: Lexicon): boolean {
  if (!lexicon.find(token.lower)?.classes.includes('kinds')) return false;
  return !/^(?:good|best)$/.test(token.lower) || before?.tag === 'possessive';
}

/** Nouns, and adjectives that make another thing of it: "storm lantern", "rubber gloves", "rocking chair"; never "the nearest horse". */
function isBound(token: Token, lexicon: Lexicon): boolean {
  const entry = lexicon.find(token.lower);
  const classes = entry?.classes ?? [];
  if (classes.includes('states') || classes.includes('colours') || /est$|-(?:dead|alive)$/.test(token.lower))
    return false;
  if (classes.includes('materials') || classes.includes('replicas')) return true;
  if (token.tag === 'noun') return (entry?.adjective ?? -1) < 5 || (entry?.core ?? '') !== '';
  return token.tag === 'adjective' && boundParticiple.test(token.lower);
}
