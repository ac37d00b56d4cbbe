import { soakingVerbs, soiledBy, soilingPlaces, soilingVerbs } from '../trade/soiling.js';
import type { Clauses, Part } from './clause-types.js';
import type { Phrase } from './phrases.js';

/** What is kept clean for each take; a floor or a table is wiped. */
const spoils = /^(?:props|costumes|graphics)$/;

/** The state in which a thing is left by what the sentence gets on it ("Blood runs onto his shirt", "She spills wine on her dress"), or null. */
export function soilingOf(part: Part, category: string, { parts, sentence }: Clauses): string | null {
  const { deed, preposition, role } = part;
  if (deed === null || role !== 'preposition' || !spoils.test(category)) return null;
  if (deed.unreal || !soilingVerbs.has(deed.lemma) || !soilingPlaces.has(preposition ?? '')) return null;
  // What brandy is poured into holds it; what it soaks into is spoilt.
  if (preposition === 'into' && !soakingVerbs.has(deed.lemma)) return null;
  const object = parts.find((one) => one.role === 'object' && one.deed === deed);
  const matter: Phrase | null = object?.phrase ?? deed.subject?.phrase ?? null;
  return matter === null ? null : soiledBy(sentence.tokens[matter.head]?.lemma ?? '');
}
