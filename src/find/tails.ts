import type { Tag, Token } from './reading.js';
import { canBeNoun, type Draft } from './word-neighbours.js';

/** "'s" after a pronoun is a verb, after a noun or name the possessive, and in "somebody's coat". */
export function tailTag(drafts: readonly Draft[], at: number, before: Token | undefined): Tag {
  if ((drafts[at] as Draft).lower !== "'s" || before === undefined) return 'auxiliary';
  if (before.tag !== 'pronoun') return 'possessive';
  const next = drafts[at + 1];
  return /(?:body|one)$/.test(before.lower) && next !== undefined && canBeNoun(next) ? 'possessive' : 'auxiliary';
}

/** The apostrophe of "the visitors' book": right behind a plural, before what it owns, where no quotation is open. */
export function isPluralTail(drafts: readonly Draft[], at: number, before: readonly Token[]): boolean {
  const { text, start } = drafts[at] as Draft;
  if (text !== "'" && text !== '’') return false;
  const owner = before.at(-1);
  const next = drafts[at + 1];
  if (owner?.tag !== 'noun' || owner.end !== start || !owner.lower.endsWith('s')) return false;
  if (next === undefined || next.start === start + 1 || !canBeNoun(next)) return false;
  return !before.some((one) => one.text === '‘' || (one.text === "'" && one.tag === 'punctuation'));
}
