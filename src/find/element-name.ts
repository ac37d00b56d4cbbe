import type { Lexicon } from './lexicon.js';
import type { Phrase } from './phrases.js';
import type { Token } from './reading.js';

/** The words of a noun phrase that may stand in an element's name. */
export interface NameWords {
  /** The head as typed, in lower case, and in the singular. */
  readonly head: string;
  readonly singular: string;
  /** Nouns and proper names before the head: they always tell a thing apart ("storm lantern"). */
  readonly telling: readonly string[];
  /** Colours and sizes: they tell apart only where there are two ("red scarf", "blue scarf"). */
  readonly colours: readonly string[];
}

/** Takes the name of a thing from its noun phrase; `from` is the place where a compound that the lexicon knows begins. */
export function readName(tokens: readonly Token[], phrase: Phrase, from: number, lexicon: Lexicon): NameWords {
  const head = tokens[phrase.head] as Token;
  const telling: string[] = [];
  const colours: string[] = [];
  const owner = phrase.owner?.phrase;
  if (owner && /^an?$/.test(owner.determiner?.lower ?? '')) telling.push(`${(tokens[owner.head] as Token).lower}'s`);
  for (const place of phrase.modifiers) {
    const token = tokens[place] as Token;
    if (token.tag === 'name' && /\p{Ll}/u.test(token.text)) telling.push(token.text);
    else if (place >= from || isBound(token, lexicon)) telling.push(token.lower);
    else if (lexicon.find(token.lower)?.classes.includes('colours')) colours.push(token.lower);
  }
  return { head: head.lower, singular: head.lemma, telling, colours };
}

const boundParticiple =
  /^(?:rocking|sleeping|walking|fishing|shopping|sewing|washing|dressing|swimming|climbing|boxing|riding|wedding|folding|filing|vending|parking|frying|baking|knitting|writing|reading|hunting|shaving|drinking|skipping|steering|spinning|sliding|carving|chopping|mixing|ironing|landing|driving|running|racing|hiking|bathing)$/;

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
