import type { Reading } from './choose-tag.js';
import type { Tag, Token } from './reading.js';
import { canBeNoun, type Draft, startsPhrase } from './word-neighbours.js';

/** "can" helps a verb only where a verb may follow it: "a tin can and" has none. */
const canHelp = (next: Draft | undefined) =>
  next !== undefined &&
  (next.uses.verb?.form === 'base' ||
    next.uses.adverb ||
    next.uses.closed === 'pronoun' ||
    next.person !== null ||
    next.uses.closed === 'auxiliary');

const movingWords = new Set('out off in over up down back around away on'.split(' '));

/** "the porter behind her carries a cage": what could be hers is the verb that the clause waits for. */
function isVerbOfClause({ uses }: Draft, after: Draft | undefined): boolean {
  const { verb, noun } = uses;
  if (verb?.form !== 's' || verb.share < 5 || (noun?.entry.core ?? '') !== '') return false;
  return after === undefined || after.uses.closed !== null || after.uses.shape === 'sign';
}

/** Chooses the class of a word of the closed classes: what it is by itself, unless its neighbours make it another. */
export function chooseClosed(
  closed: Tag,
  drafts: readonly Draft[],
  at: number,
  before: readonly Token[],
  reading: Reading,
): Tag {
  const draft = drafts[at] as Draft;
  const previous = before.at(-1)?.tag ?? null;
  const next = drafts[at + 1];
  if (draft.lower === 'low' && /^(?:cow|cattle|calf|ox|bull|herd)$/.test(before.at(-1)?.lemma ?? '')) return 'verb';
  if (draft.lower === 'hard' && next?.uses.noun?.entry.core) return 'adjective';
  if (closed === 'auxiliary' && draft.lower === 'can' && (reading.phrase === 'open' || !canHelp(next))) return 'noun';
  if (closed === 'preposition' && draft.uses.particle && (!next || !startsPhrase(next) || previous === 'adverb'))
    return movingWords.has(draft.lower) && previous === 'verb'
      ? 'particle'
      : next && startsPhrase(next)
        ? 'preposition'
        : 'particle';
  if (
    closed === 'determiner' &&
    /^(?:that|both|all|each|another|this|these|those|some|more|several|few|many|most)$/.test(draft.lower)
  ) {
    if (next && !startsPhrase(next) && next.uses.closed !== 'number')
      return draft.lower === 'that' && previous === 'noun' ? 'pronoun' : 'pronoun';
  }
  if (
    closed === 'possessive' &&
    draft.lower === 'her' &&
    (next?.uses.shape !== 'word' ||
      next.uses.closed !== null ||
      next.person !== null ||
      (reading.subject && !reading.finite && reading.inPreposition && isVerbOfClause(next, drafts[at + 2])))
  )
    return 'pronoun';
  const ends = draft.lower === 'home' || !(next && canBeNoun(next));
  if (closed === 'adverb' && reading.phrase === 'open' && draft.uses.noun && ends) return 'noun';
  return closed;
}
