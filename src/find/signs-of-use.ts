import type { Clauses, Deed, Part, Subject } from './clause-types.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';

/** What is done with a thing. */
export interface SignsOfUse {
  /** Object of a verb of handling. */
  readonly handled: boolean;
  /** Something is done with it: "with a screwdriver". */
  readonly instrument: boolean;
  /** "X in her hand", "X over his shoulder". */
  readonly held: boolean;
  /** Object of a verb of wearing, "in a coat", "a cap over his ears". */
  readonly worn: boolean;
  /** Object of the clause's verb. */
  readonly object: boolean;
  readonly objectOfOther: boolean;
  readonly eaten: boolean;
  readonly subjectOfDeed: boolean;
  /** It is the subject of what only people do. */
  readonly actsAsPerson: boolean;
  readonly standing: boolean;
  /** The place where something is: "on the X", "under the X". */
  readonly placed: boolean;
  /** The verb touches it and leaves it where it is. */
  readonly touchedOnly: boolean;
  readonly spokenOf: boolean;
  readonly unreal: boolean;
  /** The verb that governs it. */
  readonly verb: string | null;
}

const placing =
  /^(?:on|onto|out of|under|beneath|behind|beside|in|inside|into|at|over|above|across|against|from|off|round|around|near|by|through|past|to|towards?|between|among|along|below|atop|within|upon|underneath)$/;

const has = (lexicon: Lexicon, word: string, list: string) => lexicon.find(word)?.classes.includes(list) ?? false;

/** Reads what the clause does with a noun phrase. */
export function readUse(part: Part, clauses: Clauses, lexicon: Lexicon): SignsOfUse {
  const { tokens } = clauses.sentence;
  const root = rootPart(part);
  const { deed } = root;
  const verb = deed?.lemma ?? null;
  const handling = verb !== null && has(lexicon, verb, 'handling');
  const object = root.role === 'object' || (root.role === 'subject' && deed?.passive === true);
  const byPerson = !deed?.subject || isPerson(deed.subject, tokens, lexicon);
  const partner =
    part.role === 'subject'
      ? clauses.parts.find((one) => one.listedWith === part && one.role === 'subject')
      : undefined;
  const doer = partner ?? part;
  const own = clauses.deeds.find((one) => one.subject?.phrase === doer.phrase);
  const does = (list: string) => own !== undefined && has(lexicon, own.lemma, list);
  return {
    handled: object && handling && byPerson,
    instrument:
      (root.preposition === 'with' || (root.preposition === 'off' && verb === 'light')) &&
      root.role === 'preposition' &&
      deed !== null &&
      byPerson,
    held: isHeld(tokens, part.phrase.end, lexicon),
    worn: isWorn(part, root, verb, tokens, lexicon),
    object,
    objectOfOther: object && !handling,
    eaten: object && /^(?:eat|cook|fry|bite|gut|slice|chew|carve|microwave|roast|boil|serve)$/.test(verb ?? ''),
    subjectOfDeed: root.role === 'subject' && part.ofPart === null,
    actsAsPerson:
      own?.passive === false &&
      (does('handling') || /^(?:say|speak|nod|shout|whisper|smile|wink|walk|run)$/.test(own.lemma)),
    standing: part.role === 'subject' && does('hanging') && !isHeldUp(own),
    touchedOnly: verb !== null && has(lexicon, verb, 'touching'),
    placed: root.role === 'preposition' && placing.test(root.preposition ?? ''),
    spokenOf: object && verb !== null && has(lexicon, verb, 'speaking-of'),
    unreal: deed?.unreal ?? false,
    verb,
  };
}

/** The part whose use counts: the list's first, or what an "of" completes. */
export function rootPart(part: Part): Part {
  if (part.listedWith) return rootPart(part.listedWith);
  return part.ofPart ? rootPart(part.ofPart) : part;
}

const personPronoun = /^(?:he|she|they|i|you|we|who|somebody|someone|everybody|everyone|nobody|one|both|another)$/;

function isPerson(subject: Subject, tokens: readonly Token[], lexicon: Lexicon): boolean {
  if (subject.person !== null) return true;
  if (subject.pronoun !== null) return personPronoun.test(subject.pronoun);
  const entry = subject.phrase ? lexicon.find((tokens[subject.phrase.head] as Token).lemma) : null;
  if (!entry) return false;
  return (entry.core || entry.wordnet).startsWith('x') || entry.classes.includes('person-nouns');
}

/** "held by a girl". */
const isHeldUp = (deed: Deed | undefined) => deed?.passive === true && /^(?:hold|bear)$/.test(deed.lemma);

/** "in her hand", "over his shoulder", "between two fingers", "under each arm" after the phrase. */
function isHeld(tokens: readonly Token[], end: number, lexicon: Lexicon): boolean {
  const preposition = tokens[end];
  if (
    preposition?.tag !== 'preposition' ||
    !/^(?:in|under|over|between|across|on|behind|around|round|at|against|to)$/.test(preposition.lower)
  )
    return false;
  const first = tokens[end + 1];
  const owned =
    first?.tag === 'possessive' ||
    first?.tag === 'number' ||
    (first?.tag === 'noun' && /^hands?$/.test(first.lower)) ||
    /^(?:each|either|both)$/.test(first?.lower ?? '');
  if (!owned) return false;
  const noun = tokens.slice(end + 1, end + 5).find((token) => token.tag === 'noun');
  return noun !== undefined && has(lexicon, noun.lemma, 'body');
}

function isWorn(part: Part, root: Part, verb: string | null, tokens: readonly Token[], lexicon: Lexicon): boolean {
  if (root.role === 'object' && verb !== null && has(lexicon, verb, 'wearing'))
    return !(laying.test(verb) && isLaid(tokens, part.phrase.end, lexicon));
  const dressing = /^(?:dress|clothe|clad|wrap|button|muffle|swathe|bundle|sweat)$/.test(verb ?? '');
  if (dressing && /^(?:in|into|through)$/.test(root.preposition ?? '')) return true;
  if (verb === 'change' && root.preposition === 'into') return true;
  if (root.preposition === 'into' && slipsInto(root, tokens, lexicon)) return true;
  if (root.preposition === 'in' && root.phrase.determiner?.lower !== 'the') {
    const start = root.phrase.owner?.phrase?.start ?? root.phrase.start;
    const now = /^(?:now|still|already|again)$/.test(tokens[start - 2]?.lower ?? '') ? 1 : 0;
    const before = tokens[start - 2 - now];
    return before === undefined || /^(?:punctuation|name|noun|verb|participle|pronoun|auxiliary)$/.test(before.tag);
  }
  return (
    isHeld(tokens, part.phrase.end, lexicon) && !/^(?:in|between|under)$/.test(tokens[part.phrase.end]?.lower ?? '')
  );
}

const laying = /^(?:put|take|push|roll|raise|lower|tuck|hoist|hug|clutch)$/;

/** "puts a hat on the chair": a place follows that is no part of a body. */
function isLaid(tokens: readonly Token[], end: number, lexicon: Lexicon): boolean {
  const preposition = tokens[end];
  if (preposition?.tag !== 'preposition' || tokens[end + 1]?.tag !== 'determiner') return false;
  if (!/^(?:on|onto|in|into|under|behind|beside|from)$/.test(preposition.lower)) return false;
  const noun = tokens.slice(end + 2, end + 5).find((token) => token.tag === 'noun');
  return noun !== undefined && !has(lexicon, noun.lemma, 'body');
}

/** "slips into a black gown", never "slips a coin into his glove". */
function slipsInto({ deed, phrase }: Part, tokens: readonly Token[], lexicon: Lexicon): boolean {
  if (!/^(?:slip|shrug|wriggle|struggle|climb|step|squeeze|zip)$/.test(deed?.lemma ?? '')) return false;
  const between = phrase.start - 1 - (deed?.at ?? 0);
  const isNext = between === 1 || (between === 2 && tokens[phrase.start - 2]?.tag === 'adverb');
  return isNext && (lexicon.find((tokens[phrase.head] as Token).lemma)?.core.startsWith('c') ?? false);
}
