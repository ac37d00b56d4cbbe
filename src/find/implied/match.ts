import type { Sentence, Token } from '../reading.js';
import { findDescribed, findObjects, findSubject, phraseStart } from './clause.js';
import type { CueIndex, IndexedCue, Where } from './cue-index.js';
import { isUnreal } from './unreal.js';
import { isOnlyVerb, isPassive, isPerfect, isVerbAfterAll } from './verb-forms.js';
import { holds, isPerson, openWordList, type WordList } from './word-list.js';

/** A cue that stands in a sentence. */
export interface CueMatch<Owner> {
  readonly owner: Owner;
  readonly cue: IndexedCue<Owner>;
  readonly sentence: Sentence;
  /** The word that raised it. */
  readonly token: Token;
  readonly subject: Token | null;
  readonly object: Token | null;
  /** The stretch of the sentence to quote. */
  readonly start: number;
  readonly end: number;
}

/** All cues that stand in a sentence, from left to right, word senses guarded. */
export function matchCues<Owner>(sentence: Sentence, index: CueIndex<Owner>): CueMatch<Owner>[] {
  const matches: CueMatch<Owner>[] = [];
  const cues = index[sentence.kind === 'parenthetical' ? 'action' : sentence.kind];
  for (let at = 0; at < sentence.tokens.length; at++) {
    const { lemma, lower } = sentence.tokens[at] as Token;
    matchWord(sentence, at, cues.get(lemma), matches);
    if (lemma !== lower) matchWord(sentence, at, cues.get(lower), matches);
  }
  return matches;
}

function matchWord<Owner>(
  sentence: Sentence,
  at: number,
  cues: readonly IndexedCue<Owner>[] | undefined,
  matches: CueMatch<Owner>[],
): void {
  if (cues === undefined) return;
  const seen: Seen = { verb: undefined, state: undefined };
  for (const cue of cues) {
    const first = sentence.tokens[at - cue.anchor];
    if (cue.anchor > 0 && !(first && holds(cue.opener, first))) continue;
    const match = matchAt(sentence, at - cue.anchor, cue, seen);
    if (match) matches.push(match);
  }
}

interface Around {
  readonly subject: Token | null;
  readonly objects: readonly Token[];
  /** The stretch to quote. */
  readonly first: number;
  readonly last: number;
  /** Where the words of the cue begin within it; modifiers before it count as near. */
  readonly core: number;
}

/** What stands around a verb or a state, the same for all cues of one place; undefined before the first asks. */
interface Seen {
  verb: Around | null | undefined;
  state: Around | null | undefined;
}

function matchAt<Owner>(sentence: Sentence, at: number, cue: IndexedCue<Owner>, seen: Seen): CueMatch<Owner> | null {
  const { tokens } = sentence;
  const around = lookAround(sentence, at, cue, seen);
  if (!around || around.subject?.lower === 'nobody') return null;
  for (const [where, list] of cue.limits.lists) if (!allows(where, list, tokens, around)) return null;
  if (isUnreal(tokens, around)) return null;
  const token = tokens[at] as Token;
  const object = around.objects.at(-1) ?? null;
  const quoteEnd =
    cue.on === 'verb' && object && object.end - token.end < 40 ? object.end : tokenEnd(tokens, around.last);
  const start = (tokens[around.first] as Token).start;
  return {
    owner: cue.owner,
    cue,
    sentence,
    token,
    subject: around.subject,
    object,
    start,
    end: Math.max(quoteEnd, tokenEnd(tokens, around.last)),
  };
}

function tokenEnd(tokens: readonly Token[], at: number): number {
  return (tokens[at] as Token).end;
}

function lookAround<Owner>({ tokens, kind }: Sentence, at: number, cue: IndexedCue<Owner>, seen: Seen): Around | null {
  if (cue.on === 'verb') {
    if (seen.verb === undefined) seen.verb = aroundVerb(tokens, at);
    return seen.verb;
  }
  if (cue.on === 'state') {
    if (seen.state === undefined) seen.state = aroundState(tokens, at);
    return seen.state;
  }
  if (cue.on === 'noun') return aroundNoun(tokens, at, cue.limits.modifier === true, kind === 'heading');
  return aroundPhrase(tokens, at, cue.rest);
}

/** An event: a finite verb, an "-ing" form, or a passive. */
function aroundVerb(tokens: readonly Token[], at: number): Around | null {
  const token = tokens[at] as Token;
  const acts =
    token.tag === 'verb' || (token.tag === 'participle' && token.lower.endsWith('ing')) || isVerbAfterAll(tokens, at);
  if (acts)
    return { subject: findSubject(tokens, at), objects: findObjects(tokens, at), first: at, last: at, core: at };
  if (token.tag !== 'participle') return null;
  if (isPerfect(tokens, at)) {
    return { subject: findSubject(tokens, at), objects: findObjects(tokens, at), first: at, last: at, core: at };
  }
  if (!isPassive(tokens, at)) return null;
  const sufferer = findSubject(tokens, at);
  return { subject: null, objects: sufferer ? [sufferer] : [], first: at, last: at, core: at };
}

function aroundNoun(tokens: readonly Token[], at: number, modifier: boolean, inHeading: boolean): Around | null {
  const token = tokens[at] as Token;
  const next = tokens[at + 1];
  const isNoun = token.tag === 'noun' || (token.tag === 'adjective' && modifier) || isShouted(token);
  // Words of a place in capitals are tagged by chance.
  if (!isNoun && !inHeading) return null;
  if (!modifier && next?.tag === 'noun' && token.lower === token.lemma && !isOnlyVerb(tokens, next)) return null;
  if (isOwnerOnly(tokens, at)) return null;
  return { subject: null, objects: [], first: modifierStart(tokens, at), last: at, core: at };
}

/** "a child's raincoat" is no child, "the child's hand" is one. */
function isOwnerOnly(tokens: readonly Token[], at: number): boolean {
  const next = tokens[at + 1];
  if (next?.tag !== 'possessive' || !/^['’]/.test(next.lower)) return false;
  const token = tokens[at] as Token;
  // "Pip, in rat's ears": a costume.
  if (tokens[at - 1]?.lower === 'in' && holds(beasts, token)) return true;
  const owned = findObjects(tokens, at + 1)[0];
  return owned !== undefined && !holds(bodyParts, owned) && (isPerson(token) || holds(beasts, token));
}

const bodyParts = openWordList('BODY');
const beasts = openWordList('ANIMALS VERMIN');

/** A thing in capitals may have been taken for a name. */
function isShouted(token: Token): boolean {
  return token.tag === 'name' && token.person === null && token.text === token.text.toUpperCase();
}

/** Keeps the words that tell a thing apart ("hunting rifle") and drops the article and the owner. */
function modifierStart(tokens: readonly Token[], head: number): number {
  let start = phraseStart(tokens, head);
  while (start < head && /^(?:determiner|possessive|name|pronoun)$/.test((tokens[start] as Token).tag)) start++;
  return start;
}

function aroundState(tokens: readonly Token[], at: number): Around | null {
  const { tag } = tokens[at] as Token;
  if (!/^(?:adjective|participle|adverb|verb|noun)$/.test(tag)) return null;
  const described = findDescribed(tokens, at);
  return { subject: described, objects: described ? [described] : [], first: at, last: at, core: at };
}

function aroundPhrase(tokens: readonly Token[], at: number, rest: IndexedCue<unknown>['rest']): Around | null {
  let here = at;
  for (const { list, gap } of rest) {
    const found = nextOf(tokens, here + 1, gap, list);
    if (found === null) return null;
    here = found;
  }
  return { subject: findSubject(tokens, at), objects: findObjects(tokens, here), first: at, last: here, core: at };
}

function nextOf(tokens: readonly Token[], from: number, gap: number, list: WordList): number | null {
  for (let at = from; at <= from + gap && at < tokens.length; at++) {
    const token = tokens[at] as Token;
    if (holds(list, token)) return at;
    if (token.tag === 'punctuation' && /^[.;:!?]$/.test(token.text)) return null;
  }
  return null;
}

/** True when a limit holds at a match. */
function allows(where: Where, list: WordList, tokens: readonly Token[], around: Around): boolean {
  const { subject, objects, last } = around;
  switch (where) {
    case 'subject':
      return subject === null ? list.none || list.person : holds(list, subject);
    case 'notSubject':
      return subject === null || !holds(list, subject);
    case 'object':
      return objects.length === 0 ? list.none : anyOf(objects, list);
    case 'notObject':
      return objects.length === 0 ? !list.none : !anyOf(objects, list);
    case 'next':
      return last + 1 < tokens.length && holds(list, tokens[last + 1] as Token);
    case 'notNext':
      return !(last + 1 < tokens.length && holds(list, tokens[last + 1] as Token));
    case 'prev':
      return isBefore(tokens, around, list);
    case 'notPrev':
      return !isBefore(tokens, around, list);
    case 'near':
      return isNear(tokens, around, list);
    case 'notNear':
      return !isNear(tokens, around, list);
  }
}

function anyOf(objects: readonly Token[], list: WordList): boolean {
  for (const object of objects) if (holds(list, object)) return true;
  return false;
}

/** In the phrase before the words of the cue, or one word before that. */
function isBefore(tokens: readonly Token[], { first, core }: Around, list: WordList): boolean {
  const from = Math.max(0, Math.min(first, phraseStart(tokens, core)) - 1);
  for (let at = from; at < core; at++) if (holds(list, tokens[at] as Token)) return true;
  return false;
}

function isNear(tokens: readonly Token[], { core, last }: Around, list: WordList): boolean {
  for (let at = 0; at < tokens.length; at++) {
    if ((at < core || at > last) && holds(list, tokens[at] as Token)) return true;
  }
  return false;
}
