import type { Reading } from './choose-tag.js';
import type { Tag } from './reading.js';
import { type Draft, startsPhrase } from './word-neighbours.js';

/** "points to watch": after a verb of going or showing, "to" tells where, if no object follows. */
export function isGoal(drafts: readonly Draft[], at: number): boolean {
  const verb = drafts[at - 2]?.uses.verb?.lemma ?? '';
  const next = drafts[at + 1];
  if (!/^(?:point|cross|walk|ride|dash|rush|nod|gesture|creep|crawl|limp|stagger)$/.test(verb)) return false;
  return (drafts[at] as Draft).uses.noun?.entry.core !== '' && (next === undefined || !startsPhrase(next));
}

/** "Her son, five, drinks bleach", "Greta (ninety) smokes". */
export const isAfterAge = (drafts: readonly Draft[], at: number) =>
  (drafts[at - 1]?.text === ')' && drafts[at - 2]?.uses.closed === 'number') ||
  (drafts[at - 1]?.text === ',' && drafts[at - 2]?.uses.closed === 'number' && drafts[at - 3]?.text === ',');

/** "lets it ring out": a bare infinitive after a verb of letting and its object. */
export function isLet(drafts: readonly Draft[], at: number): boolean {
  const object = drafts[at - 1];
  if (object?.uses.closed !== 'pronoun' && object?.person === null) return false;
  return /^(?:let|make|watch|see|hear|help|feel)$/.test(drafts[at - 2]?.uses.verb?.lemma ?? '');
}

/** A participle with its preposition behind a noun tells of it: "pushed up in her hair". */
export function isTold(next: Draft | undefined, after: Draft | undefined): boolean {
  if (next?.uses.verb?.form !== 'ed' || next.uses.noun !== null || after === undefined) return false;
  return after.uses.preposition || after.uses.particle;
}

/** "kneels and scoops": right behind a word that is only a verb and "and" stands a second verb. */
export function isJoined(drafts: readonly Draft[], at: number): boolean {
  const before = drafts[at - 2]?.uses;
  return (
    drafts[at - 1]?.lower === 'and' && before?.verb?.form === 's' && before.noun === null && before.closed === null
  );
}

/** The next of a chain of verbs: only a verb, or one with its object: "stamps, empties the bucket". */
export function isChained(drafts: readonly Draft[], at: number): boolean {
  const uses = drafts[at]?.uses;
  if (uses?.verb?.form !== 's') return false;
  return uses.noun === null || /^(?:determiner|possessive)$/.test(drafts[at + 1]?.uses.closed ?? '');
}

/** "in bicycle clips and goggles": one more of what somebody wears. */
export function isSecondGarment(drafts: readonly Draft[], at: number): boolean {
  const noun = drafts[at]?.uses.noun;
  if (drafts[at - 1]?.lower !== 'and' || !noun?.entry.core.startsWith('c')) return false;
  if (/^(?:determiner|possessive|pronoun)$/.test(drafts[at + 1]?.uses.closed ?? '')) return false;
  const before = drafts[at - 2];
  return before?.uses.noun != null && (before.compound || before.uses.noun.entry.core.startsWith('c'));
}

/** The second of three verbs: "snatches it off, yelps, and drops it". */
export function isInChain(drafts: readonly Draft[], at: number): boolean {
  if (drafts[at - 1]?.text !== ',' || drafts[at + 1]?.text !== ',' || drafts[at + 2]?.lower !== 'and') return false;
  const last = drafts[at + 3];
  return last?.uses.verb?.form === 's' && /^(?:determiner|possessive|pronoun)$/.test(drafts[at + 4]?.uses.closed ?? '');
}

/** "Anna, stitches in her eyebrow, waits": what a comma sets behind a name is no verb of it. */
export function isSetBehindName(drafts: readonly Draft[], at: number): boolean {
  if (drafts[at - 1]?.text !== ',' || drafts[at - 2]?.person == null) return false;
  return (drafts[at]?.uses.noun?.entry.core ?? '') !== '' && drafts[at + 1]?.uses.preposition === true;
}

/** "a table, snowshoes on nails", "Bill, city shoes wrapped in bags, waits": in a list, what can be worn is no verb. */
export function isListedGarment(drafts: readonly Draft[], at: number): boolean {
  const uses = drafts[at]?.uses;
  if (uses?.noun?.entry.core !== 'c' || uses.noun.entry.classes.includes('weak')) return false;
  const isListed = drafts[at - 1]?.text === ',' || (drafts[at - 2]?.text === ',' && drafts[at - 1]?.uses.noun !== null);
  const next = drafts[at + 1];
  const isBehindAge = next?.text === ',' && drafts[at - 1]?.text === ',' && drafts[at - 2]?.text === ')';
  return isListed && (isBehindAge || next?.uses.preposition === true || isTold(next, drafts[at + 2]));
}

/**
 * "A waiter smokes", "a woman in dungarees butters bread": what could be a plural is the verb, where "a" begins the phrase or a plural
 * ends the one before.
 */
export function isVerbOfOne(drafts: readonly Draft[], at: number): boolean {
  const { verb, noun } = (drafts[at] as Draft).uses;
  if (verb?.form !== 's' || !noun?.plural) return false;
  const before = drafts[at - 1]?.uses.noun;
  if (before?.plural) return canBeObject(drafts[at + 1]) && isSingular(drafts, at);
  for (let here = at - 1; here >= 0; here--) {
    const { uses, lower } = drafts[here] as Draft;
    if (uses.closed !== null) return lower === 'a' || lower === 'an' || lower === 'another';
    if (uses.shape !== 'word') return false;
  }
  return false;
}

const canBeObject = (draft: Draft | undefined) => draft !== undefined && startsPhrase(draft);

/** True when "a" or "an" opens the clause. */
function isSingular(drafts: readonly Draft[], at: number): boolean {
  let start = at;
  while (start > 0 && drafts[start - 1]?.uses.shape !== 'sign') start--;
  return /^an?$/.test(drafts[start]?.lower ?? '');
}

/** "A constable unslings his rifle": a word that no list knows, in "-s", before an object, where the clause waits for its verb. */
export function unknownVerb(drafts: readonly Draft[], at: number, reading: Reading): Tag | null {
  const { uses, lower, text } = drafts[at] as Draft;
  if (!reading.subject || reading.finite || !/[^s'’]s$/.test(lower) || text !== lower) return null;
  if (uses.noun !== null || uses.verb !== null || uses.adjective >= 0) return null;
  return /^(?:determiner|possessive)$/.test(drafts[at + 1]?.uses.closed ?? '') ? 'verb' : null;
}
