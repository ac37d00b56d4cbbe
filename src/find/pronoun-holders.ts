import { doerIn } from './holder.js';
import type { Lexicon } from './lexicon.js';
import { liesThere, type PronounThing } from './pronoun-things.js';
import type { Token } from './reading.js';
import type { StrangerNames } from './strangers.js';
import type { Find } from './types.js';

/** Finds of things that somebody handles under a pronoun ("She catches it"), where nobody had them in hand before. */
export function holdersByPronoun(
  pronouns: readonly PronounThing[],
  strangers: StrangerNames,
  lexicon: Lexicon,
): Find[] {
  return pronouns.flatMap(({ clause, deed, at, meant }): Find[] => {
    const { find } = meant;
    const isHeld = /^(?:props|food|graphics|costumes)$/.test(find.category) || liesThere(meant);
    if (find.by !== null || !isHeld || deed.subject === null) return [];
    if (!lexicon.find(deed.lemma)?.classes.includes('handling')) return [];
    const { person, stranger } = doerIn(deed.subject, clause, lexicon);
    const by = person ?? (stranger ? (strangers.get(stranger) ?? null) : null);
    if (by === null) return [];
    const { sentence } = clause;
    const start = (sentence.tokens[deed.at] as Token).start;
    const end = (sentence.tokens[at] as Token).end;
    const rules = ['a pronoun means the thing last in hand', 'somebody handles it'];
    const words = sentence.text.slice(start, end);
    return [{ ...find, by, count: null, state: null, words, at: sentence.place(start, end), rules }];
  });
}

/** A letter that lies there is a prop once somebody picks it up. */
export function takeUp(finds: readonly Find[], pronouns: readonly PronounThing[], lexicon: Lexicon): readonly Find[] {
  const taken = new Set(
    pronouns.flatMap(({ deed, meant }) => {
      const isTaken = liesThere(meant) && lexicon.find(deed.lemma)?.classes.includes('handling');
      return isTaken ? [meant.find.name] : [];
    }),
  );
  if (taken.size === 0) return finds;
  const why = 'somebody takes it up';
  return finds.map((find) =>
    find.category === 'dressing' && taken.has(find.name)
      ? { ...find, category: 'props', rules: [...find.rules, why] }
      : find,
  );
}
