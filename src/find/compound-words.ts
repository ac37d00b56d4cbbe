import type { Reading } from './choose-tag.js';
import type { Tag, Token } from './reading.js';
import { afterVerb, type Draft } from './word-neighbours.js';
import type { WordUses } from './word-uses.js';

/** The class of a word of a compound of our lists, where it could be a verb: "in bicycle clips", "a hearing aid"; null for other words. */
export function compoundTag(
  drafts: readonly Draft[],
  at: number,
  before: Token | undefined,
  reading: Reading,
): Tag | null {
  const draft = drafts[at] as Draft;
  const next = drafts[at + 1];
  if (next?.compound && draft.uses.verb?.form === 'ing') return before?.tag === 'auxiliary' ? null : 'adjective';
  if (!draft.compound || !/^(?:noun|adjective)$/.test(before?.tag ?? '')) return null;
  const mayHaveObject = /^(?:determiner|possessive|pronoun)$/.test(next?.uses.closed ?? '') || next?.person != null;
  return mayHaveObject && !reading.finite ? null : 'noun';
}

/** "hangs up her washing", "spreads dripping on it"; "is washing dishes" is no thing. */
export function isThingOfDoing({ noun }: WordUses, previous: Token | null, next: Draft | undefined): boolean {
  if (!noun?.entry.core || previous?.tag === 'auxiliary' || previous?.text === ',') return false;
  return !afterVerb(next) || (previous?.tag === 'verb' && spreading.test(previous.lemma));
}
const spreading = /^(?:spread|eat|fetch|carry|bring|take|buy|fry|pour|scrape|fold|sort|iron)$/;
