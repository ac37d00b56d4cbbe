import { eatingVerbs } from '../trade/state-verbs.js';
import type { Clauses, Deed, Part } from './clause-types.js';

/** True for food that somebody eats in these words: "eats a bun", "bites into a bun", "shoves cake into her mouth". */
export function isEaten({ deed, role, preposition }: Part, category: string, clause: Clauses): boolean {
  if (deed === null || category !== 'food' || deed.unreal || deed.passive) return false;
  if (eats(deed)) return role === 'object' || (role === 'preposition' && /^(?:into|at|on)$/.test(preposition ?? ''));
  return role === 'object' && clause.parts.some((one) => one.deed === deed && isMouth(one, clause));
}

/** True for a verb of eating that is done in the picture. */
export function eats({ lemma, unreal, passive }: Deed): boolean {
  return !unreal && !passive && eatingVerbs.has(lemma);
}

function isMouth({ phrase, preposition }: Part, { sentence }: Clauses): boolean {
  return /^(?:in|into)$/.test(preposition ?? '') && sentence.tokens[phrase.head]?.lemma === 'mouth';
}
