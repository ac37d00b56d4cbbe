import type { Clauses, Deed, Part } from './clause-types.js';
import { type Holder, isBody, nobody, ownerOfPhrase, whoIsAt } from './holder.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';
import { rootPart } from './signs-of-use.js';

/** Who has a thing that is itself the subject: "is held by a girl", "goes from Dee to Ray", "dangles from her wrist". */
export function holderBehindVerb(part: Part, clauses: Clauses, lexicon: Lexicon): Holder {
  // "A slice of pizza goes from hand to hand."
  const own = part.preposition === 'of' ? rootPart(part).phrase : part.phrase;
  for (const deed of clauses.deeds) {
    const isAwaited = part.deed === deed && part.role === 'object' && deed.subject === null;
    if (deed.subject?.phrase !== own && !isAwaited) continue;
    const found = isAwaited ? bodyBefore(deed, clauses, lexicon) : heldBehind(deed, clauses, lexicon);
    if (found) return found;
  }
  return bodyAfterBe(part, clauses, lexicon) ?? nobody;
}

/** "The watch is on his wrist now". */
function bodyAfterBe({ role, phrase }: Part, clauses: Clauses, lexicon: Lexicon): Holder | null {
  if (role !== 'subject') return null;
  const { tokens } = clauses.sentence;
  if (!/^(?:is|are|was|were)$/.test(tokens[phrase.end]?.lower ?? '')) return null;
  const at = tokens[phrase.end + 1]?.tag === 'adverb' ? phrase.end + 2 : phrase.end + 1;
  return /^(?:on|in|round|around|over|under|across|behind)$/.test(tokens[at]?.lower ?? '')
    ? bodyAt(at + 1, clauses, lexicon)
    : null;
}

const passing = /^(?:go|pass|travel|move|fall|drop|slip|slide|fly|tumble|swing)$/;
const clasped = /^(?:clasp|press|hug|hold|clutch|strap|tie|chain|pin|cuff)$/;
const resting =
  /^(?:dangle|hang|glint|gleam|glitter|sparkle|shine|flash|sit|rest|perch|lie|sleep|curl|cling|swing|bounce|jingle|jangle|tick|flutter|bulge|glow|trail|stick|poke|tremble|shake|flicker|bump|slap|bang|sling|strap|tie|wrap|drape|tuck|knot|loop|hook|clip|clamp|clench|press|wedge|balance|cup|push|pull)$/;

function heldBehind(deed: Deed, clauses: Clauses, lexicon: Lexicon): Holder | null {
  const { tokens } = clauses.sentence;
  const isPassive = deed.passive || !(tokens[deed.at] as Token).lower.endsWith('s');
  const moves = passing.test(deed.lemma);
  const rests = resting.test(deed.lemma);
  for (let at = deed.at + 1; at < Math.min(tokens.length, deed.at + 9); at++) {
    const { tag, lower, text } = tokens[at] as Token;
    if (tag === 'verb' || tag === 'conjunction' || /^[.;:!?]$/.test(text)) return null;
    if (tag !== 'preposition') continue;
    if (lower === 'by' && isPassive) return somebodyAt(at + 1, clauses, lexicon);
    if (lower === 'to' && deed.passive && clasped.test(deed.lemma))
      return bodyAt(at + 1, clauses, lexicon) ?? somebodyAt(at + 1, clauses, lexicon);
    if (lower === 'from' && moves) return somebodyAt(at + 1, clauses, lexicon);
    if (rests && /^(?:on|from|in|round|around|over|under|at|across|behind|against|between)$/.test(lower)) {
      const body = bodyAt(at + 1, clauses, lexicon);
      if (body) return body;
    }
  }
  return null;
}

function somebodyAt(at: number, clauses: Clauses, lexicon: Lexicon): Holder | null {
  const who = whoIsAt(at, clauses, lexicon);
  return who.person !== null || who.stranger !== null ? who : null;
}

/** The owner of the part of the body that the words at a place name. */
export function bodyAt(at: number, clauses: Clauses, lexicon: Lexicon): Holder | null {
  const phrase = clauses.parts.find((part) => part.phrase.start === at)?.phrase;
  return phrase?.owner && isBody(phrase, clauses, lexicon) ? ownerOfPhrase(phrase, clauses) : null;
}

/** "On Ben's shoulder sits a parrot". */
function bodyBefore(deed: Deed, clauses: Clauses, lexicon: Lexicon): Holder | null {
  if (!resting.test(deed.lemma)) return null;
  const [first] = clauses.parts;
  if (first?.role !== 'preposition' || first.phrase.end > deed.at) return null;
  return bodyAt(first.phrase.start, clauses, lexicon);
}
