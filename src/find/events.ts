import type { CategoryName } from '../trade/categories.js';
import type { Clauses, Deed } from './clause-types.js';
import { findKind } from './kinds.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';

/** An event that a verb (or a body state) names. */
export interface Event {
  /** Place of the token that stands for it. */
  readonly at: number;
  readonly category: CategoryName;
  readonly by: string | null;
  readonly confidence: number;
  readonly rule: string;
}

/** What kind of subject does it. */
type Doer = 'person' | 'vehicle' | 'animal' | 'thing' | 'nobody';

/** Finds what verbs and body states name as events: stunts, sounds, effects, make-up. */
export function findEvents(clauses: Clauses, lexicon: Lexicon): Event[] {
  if (clauses.sentence.kind !== 'action') return [];
  const events: Event[] = [];
  const add = (event: Event | null) => {
    if (event && !events.some((one) => one.at === event.at)) events.push(event);
  };
  for (const deed of clauses.deeds) add(eventOf(deed, clauses, lexicon));
  return events;
}

function eventOf(deed: Deed, clauses: Clauses, lexicon: Lexicon): Event | null {
  const { tokens } = clauses.sentence;
  if (deed.unreal) return null;
  const who = doerOf(deed, tokens, lexicon);
  const named = (name: string) => lexicon.find(deed.lemma)?.classes.includes(name) ?? false;
  const hit = objectKind(deed, clauses, lexicon);
  const make = (category: CategoryName, rule: string, confidence = 0.7): Event => ({
    at: deed.at,
    category,
    by: deed.subject?.person ?? null,
    confidence,
    rule,
  });
  if (
    named('stunt-verbs') &&
    !deed.passive &&
    (who === 'person' || who === 'vehicle' || who === 'nobody') &&
    hit !== 'thing'
  )
    return make('stunts', 'a person or vehicle does what can hurt');
  if (/^(?:throw|hurl|fling|knock|drag|shove|slam|kick|hit|beat|choke|yank)$/.test(deed.lemma) && hit === 'person')
    return make('stunts', 'somebody is handled roughly');
  if (deed.lemma === 'fall' && who === 'person' && falls(deed, tokens)) return make('stunts', 'a person falls');
  if (
    /^(?:jump|drop|swing|crash|climb|fall|slide|roll|fly)$/.test(deed.lemma) &&
    who === 'person' &&
    hit === null &&
    fromHeight(deed, tokens)
  )
    return make('stunts', 'a person goes through the air or off a height');
  if (/^(?:slam|crash|hit|roll|flip|spin|ram|smash|fly|mount)$/.test(deed.lemma) && who === 'vehicle')
    return make('stunts', 'a vehicle does what can hurt');
  if (named('picture-verbs') && who !== 'nobody') return make('visual-effects', 'only a changed picture shows it');
  if (who === 'animal' && /^(?:speak|say|talk|sing|wink|whisper|reply)$/.test(deed.lemma))
    return make('visual-effects', 'an animal does what only a person can');
  if (
    named('effect-verbs') &&
    !deed.passive &&
    (who === 'thing' || who === 'nobody' || who === 'vehicle') &&
    !(who === 'nobody' && deed.participle)
  )
    return make(deed.lemma === 'smash' ? 'sound' : 'effects', 'a thing does what must be made on set');
  if (deed.lemma === 'bleed') return make('makeup', 'somebody bleeds');
  if (deed.lemma === 'vomit') return make('effects', 'somebody vomits');
  if (
    (named('sound-verbs') || named('sounds')) &&
    !deed.passive &&
    hit === null &&
    (who === 'thing' || who === 'animal')
  )
    return make('sound', 'a thing or an animal is heard');
  return null;
}

function doerOf(deed: Deed, tokens: readonly Token[], lexicon: Lexicon): Doer {
  const { subject } = deed;
  if (!subject) return 'nobody';
  if (subject.person) return 'person';
  if (subject.pronoun)
    return /^(?:it|this|that|something|nothing|everything)$/.test(subject.pronoun) ? 'thing' : 'person';
  if (!subject.phrase) return 'nobody';
  const kind = findKind(tokens, subject.phrase, lexicon);
  if (kind.letters.startsWith('x') || kind.classes.includes('person-nouns') || kind.classes.includes('groups'))
    return 'person';
  if (kind.letters.startsWith('v')) return 'vehicle';
  if (kind.letters.startsWith('a')) return 'animal';
  return 'thing';
}

/** What the verb does something to: a person (or a part of one), a thing, or nothing. */
function objectKind(deed: Deed, clauses: Clauses, lexicon: Lexicon): 'person' | 'thing' | null {
  const { tokens } = clauses.sentence;
  for (let at = deed.at + 1; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    if (token.tag === 'adverb') continue;
    if (token.tag === 'name' && tokens[at + 1]?.tag !== 'possessive') return 'person';
    if (token.tag === 'pronoun')
      return /^(?:him|her|them|himself|herself|themselves|you|me)$/.test(token.lower) ? 'person' : 'thing';
    const part = clauses.parts.find((one) => one.phrase.start === at && one.role === 'object');
    if (!part) return null;
    const kind = findKind(tokens, part.phrase, lexicon);
    const body = kind.classes.includes('body');
    return kind.letters.startsWith('x') || kind.classes.includes('person-nouns') || body ? 'person' : 'thing';
  }
  return null;
}

function restOf(deed: Deed, tokens: readonly Token[]): string[] {
  const rest: string[] = [];
  for (const token of tokens.slice(deed.at + 1, deed.at + 7)) {
    if (/^[.;,]/.test(token.text)) break;
    rest.push(token.lower);
  }
  return rest;
}

function falls(deed: Deed, tokens: readonly Token[]): boolean {
  const rest = restOf(deed, tokens);
  if (/^(?:asleep|silent|quiet|in|apart|ill|short|for|still|behind)$/.test(rest[0] ?? '')) return false;
  return true;
}

function fromHeight(deed: Deed, tokens: readonly Token[]): boolean {
  const rest = restOf(deed, tokens);
  if (/^(?:bed|chair|sofa|seat|knees|feet)$/.test(rest.at(-1) ?? '')) return false;
  return rest.some((word) => /^(?:through|off|over|from|into|onto|across|down|overboard|out)$/.test(word));
}
