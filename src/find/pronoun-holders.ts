import { doerIn } from './holder.js';
import type { Lexicon } from './lexicon.js';
import type { PronounThing } from './pronoun-things.js';
import type { Token } from './reading.js';
import type { StrangerNames } from './strangers.js';
import type { Find } from './types.js';

/** Finds of things that somebody handles under a pronoun ("She catches it"), where nobody had them in hand before. */
export function holdersByPronoun(
  pronouns: readonly PronounThing[],
  strangers: StrangerNames,
  lexicon: Lexicon,
): Find[] {
  return pronouns.flatMap(({ clause, deed, at, meant: { find } }): Find[] => {
    if (find.by !== null || !/^(?:props|food|graphics)$/.test(find.category) || deed.subject === null) return [];
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
