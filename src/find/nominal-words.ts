import type { Tag, Token } from './reading.js';
import { canBeNoun, type Draft } from './word-neighbours.js';

/** The class of a word that is no verb where it stands: an adjective before or behind its noun, else a noun. */
export function asNominal(drafts: readonly Draft[], at: number, previous: Token | null): Tag {
  const { uses } = drafts[at] as Draft;
  const next = drafts[at + 1];
  const more = next !== undefined && canBeNoun(next);
  const isAlone = at === 0 && /^[.!]$/.test(next?.text ?? '') && !uses.noun?.entry.core;
  if (uses.adjective >= 5 && (next?.person != null || isAlone)) return 'adjective';
  const said = previous?.tag === 'auxiliary' || previous?.tag === 'pronoun';
  if (uses.adjective >= 5 && (more || !uses.noun || said)) return 'adjective';
  if (uses.adjective >= 5 && next?.lower === 'to' && !uses.noun?.entry.core) return 'adjective';
  // "a packet, empty", "apron white to the hem": a state or a colour behind its noun.
  const told = uses.noun?.entry.classes.some((one) => one === 'states' || one === 'colours') ?? false;
  if (told && !more && uses.adjective >= 4 && previous !== null && previous.tag !== 'preposition') return 'adjective';
  if (uses.adjective >= 0 && isSetBehindPerson(drafts, at)) return 'adjective';
  const after = previous?.tag === 'noun' || previous?.tag === 'verb' || previous?.tag === 'participle';
  if (uses.adjective >= 4 && !more && after && !uses.noun?.entry.core) return 'adjective';
  if (uses.noun) return 'noun';
  if (uses.adjective >= 0) return 'adjective';
  if (uses.verb) return 'verb';
  return 'noun';
}

/** "A porter, young, waits": between commas behind a person. */
function isSetBehindPerson(drafts: readonly Draft[], at: number): boolean {
  if (drafts[at - 1]?.text !== ',' || drafts[at + 1]?.text !== ',') return false;
  return drafts[at - 2]?.uses.noun?.entry.core.startsWith('x') ?? false;
}
