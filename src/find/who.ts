import type { CategoryName } from '../trade/categories.js';
import type { Clauses, Part, Subject } from './clause-types.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';
import { peopleNamed } from './referents.js';
import type { Signals } from './signals.js';
import { rootPart } from './signs-of-use.js';

const inHandOrOnBody = /^(?:props|food|costumes|makeup)$/;

/** The person who handles or wears what a phrase names, or null. */
export function whoHas(
  part: Part,
  signals: Signals,
  category: CategoryName,
  clauses: Clauses,
  lexicon: Lexicon,
): string | null {
  const inHand = signals.use.handled || signals.use.instrument || signals.use.held || signals.use.worn;
  if (
    category === 'dressing' ||
    category === 'plants' ||
    category === 'graphics' ||
    category === 'vehicles' ||
    category === 'animals' ||
    category === 'extras'
  ) {
    return inHand || signals.words.owned ? (agentOf(part, clauses, lexicon) ?? ownerOf(part, clauses)) : null;
  }
  const head = clauses.sentence.tokens[part.phrase.head]?.lemma ?? '';
  if (category === 'effects' && atmosphere.test(head)) return null;
  const owner = ownerOf(part, clauses);
  if (isFallenOn(part, signals)) return owner;
  if (owner !== null && (category === 'costumes' || category === 'makeup')) return owner;
  if (part.role === 'subject' && part.ofPart === null && !signals.use.held) return owner;
  const agent = agentOf(part, clauses, lexicon);
  if (agent !== null) return agent;
  if (owner !== null) return owner;
  if (category === 'makeup') return nearBody(part, clauses) ?? onlyPersonSoFar(part, clauses);
  if (!inHandOrOnBody.test(category) || hasOtherSubject(part)) return null;
  return nearBody(part, clauses) ?? onlyPersonSoFar(part, clauses);
}

/** Nobody has the weather and the air. */
const atmosphere =
  /^(?:fog|mist|haze|smoke|rain|snow|wind|breeze|lightning|thunder|steam|storm|dust|hail|sleet|drizzle|downpour|gale|blizzard|sunlight|moonlight|rainbow)$/;

/** "falls on Grandad's tomatoes": nobody has them in hand. */
function isFallenOn(part: Part, { use }: Signals): boolean {
  return (
    use.placed &&
    !use.held &&
    /^(?:fall|land|slip|trip|stumble|crash|step|tread|collapse|roll|run)$/.test(part.deed?.lemma ?? '')
  );
}

/** Who does what the clause tells: its subject, or the owner of the hand that does it. */
function agentOf(part: Part, clauses: Clauses, lexicon: Lexicon): string | null {
  const subject = rootPart(part).deed?.subject ?? null;
  if (subject === null) return null;
  return subject.person ?? handOf(subject, clauses, lexicon);
}

/** "Nora's fingers fly over the laptop". */
function handOf({ phrase }: Subject, clauses: Clauses, lexicon: Lexicon): string | null {
  const owner = phrase?.owner;
  if (!phrase || !owner) return null;
  const head = clauses.sentence.tokens[phrase.head] as Token;
  if (!lexicon.find(head.lemma)?.classes.includes('body')) return null;
  return owner.person ?? (owner.pronoun ? clauses.resolve(phrase.start) : null);
}

function ownerOf(part: Part, clauses: Clauses): string | null {
  const { owner } = part.phrase;
  if (!owner) return null;
  return owner.person ?? (owner.pronoun ? clauses.resolve(part.phrase.start) : null);
}

/** A thing or a nameless person does it. */
function hasOtherSubject(part: Part): boolean {
  const subject = part.deed?.subject;
  return part.role === 'object' && subject !== null && subject !== undefined && subject.person === null;
}

/** "a cap low over his ears": the body near it is the wearer's. */
function nearBody(part: Part, clauses: Clauses): string | null {
  const { tokens } = clauses.sentence;
  for (let at = part.phrase.end; at < Math.min(tokens.length, part.phrase.end + 6); at++) {
    const token = tokens[at] as Token;
    if (/^[.;:,]/.test(token.text)) return null;
    if (token.tag === 'possessive' && !/^['’]/.test(token.lower)) return clauses.resolve(at);
    if (token.person !== null && tokens[at + 1]?.tag === 'possessive') return token.person;
  }
  return null;
}

/** The only person named in the sentence up to the phrase. */
function onlyPersonSoFar(part: Part, clauses: Clauses): string | null {
  const named = peopleNamed(clauses.sentence.tokens, part.phrase.start);
  return named.length === 1 ? (named[0] ?? null) : null;
}
