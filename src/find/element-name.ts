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

/** Takes the name of a thing from its noun phrase. */
export function readName(tokens: readonly Token[], phrase: Phrase, lexicon: Lexicon): NameWords {
  const head = tokens[phrase.head] as Token;
  const telling: string[] = [];
  const colours: string[] = [];
  const owner = phrase.owner?.phrase;
  if (owner && /^an?$/.test(owner.determiner?.lower ?? '')) telling.push(`${(tokens[owner.head] as Token).lower}'s`);
  for (const place of phrase.modifiers) {
    const token = tokens[place] as Token;
    if (token.tag === 'name') telling.push(token.text);
    else if (token.tag === 'noun' || isBound(token, lexicon)) telling.push(token.lower);
    else if (lexicon.find(token.lower)?.classes.includes('colours')) colours.push(token.lower);
  }
  return { head: head.lower, singular: head.lemma, telling, colours };
}

/** Adjectives that make another thing of it: "rubber gloves", "rocking chair", "hip flask". */
function isBound(token: Token, lexicon: Lexicon): boolean {
  const classes = lexicon.find(token.lower)?.classes ?? [];
  if (classes.includes('states') || classes.includes('colours')) return false;
  return (
    classes.includes('materials') ||
    classes.includes('replicas') ||
    (token.tag === 'adjective' &&
      /^\w+ing$/.test(token.lower) &&
      /^(?:rocking|sleeping|walking|fishing|shopping|sewing|washing|dressing|swimming|climbing|boxing|riding|wedding|folding|filing|vending|parking|frying|baking|knitting|writing|reading|hunting|shaving|drinking|skipping|steering|spinning|revolving|swivelling|sliding|rolling|carving|chopping|mixing|ironing|building|landing|driving|running|racing|hiking|ski-ing|bathing)$/.test(
        token.lower,
      ))
  );
}
