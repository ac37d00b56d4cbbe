import type { Clauses, Part } from './clause-types.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';

/** What the sentence tells of one noun phrase. */
export interface Signals {
  /** A person has it in hand: object of a handling verb, "with the X", "X in her hand". */
  readonly handled: boolean;
  readonly instrument: boolean;
  readonly held: boolean;
  /** It is on a body: object of a wearing verb, "in a coat", "a cap over his ears". */
  readonly worn: boolean;
  readonly owned: boolean;
  readonly objectOfOther: boolean;
  readonly subjectOfDeed: boolean;
  readonly standing: boolean;
  /** The place where something is: "on the X", "under the X". */
  readonly placed: boolean;
  readonly fragment: boolean;
  readonly article: 'a' | 'the' | 'number' | 'other' | 'none';
  readonly plural: boolean;
  readonly state: boolean;
  readonly material: boolean;
  readonly simile: boolean;
  readonly negated: boolean;
  readonly spokenOf: boolean;
  readonly unreal: boolean;
  readonly ofNothing: boolean;
  readonly ofQuantity: boolean;
  readonly ofPart: boolean;
  readonly ofOther: boolean;
  readonly listed: boolean;
  /** The subject is an idea, or the sentence is told of the past or of what may be. */
  readonly abstract: boolean;
  readonly capitals: boolean;
  /** Letter of the verb or preposition situation for messages. */
  readonly verb: string | null;
}

const has = (lexicon: Lexicon, word: string, name: string) => lexicon.find(word)?.classes.includes(name) ?? false;

/** Reads the signs of use around a noun phrase. */
export function readSignals(part: Part, clauses: Clauses, lexicon: Lexicon): Signals {
  const { tokens } = clauses.sentence;
  const root = rootOf(part);
  const deed = root.deed;
  const verb = deed?.lemma ?? null;
  const { phrase } = part;
  const handlingVerb = verb !== null && has(lexicon, verb, 'handling');
  const isObject = root.role === 'object' || (root.role === 'subject' && deed?.passive === true);
  const byPerson = deed === null || deed.subject === null || isPerson(deed.subject, tokens, lexicon);
  const held = isHeld(tokens, phrase.end, lexicon);
  const worn = isWorn(part, root, verb, tokens, lexicon);
  const ofHead = part.ofPart ? (tokens[part.ofPart.phrase.head] as Token).lemma : null;
  const before = tokens[phrase.start - 1]?.lower ?? '';
  return {
    handled: isObject && handlingVerb && byPerson && !(part.ofPart && !ofHead),
    instrument: root.preposition === 'with' && root.role === 'preposition' && deed !== null && byPerson,
    held,
    worn,
    owned: phrase.owner !== null,
    objectOfOther: isObject && !handlingVerb,
    subjectOfDeed: root.role === 'subject' && part.ofPart === null,
    standing: standsThere(part, tokens, clauses, lexicon),
    placed:
      root.role === 'preposition' &&
      /^(?:on|onto|out of|under|beneath|behind|beside|in|inside|into|at|over|above|across|against|from|off|round|around|near|by|through|past|to|towards?|between|among|along|below|atop|within|upon|underneath)$/.test(
        root.preposition ?? '',
      ),
    fragment: clauses.deeds.length === 0 && part.role === 'loose',
    article: articleOf(part, tokens),
    plural: (tokens[phrase.head] as Token).lemma !== (tokens[phrase.head] as Token).lower,
    state: phrase.modifiers.some((place) => has(lexicon, (tokens[place] as Token).lower, 'states')),
    material: phrase.modifiers.some((place) => has(lexicon, (tokens[place] as Token).lower, 'materials')),
    simile: /^(?:like|as|than)$/.test(part.preposition ?? '') || (before === 'as' && part.preposition === null),
    negated:
      phrase.determiner?.lower === 'no' ||
      part.preposition === 'without' ||
      (part.preposition === 'of' && ofHead === 'out'),
    spokenOf: isObject && verb !== null && has(lexicon, verb, 'speaking-of'),
    unreal: deed?.unreal ?? false,
    ofNothing: ofHead !== null && has(lexicon, ofHead, 'of-nothing'),
    ofQuantity: (ofHead !== null && measures(ofHead, lexicon)) || part.preposition === 'full of',
    ofPart: ofHead !== null && has(lexicon, ofHead, 'parts-of'),
    ofOther: ofHead !== null && !measures(ofHead, lexicon) && !has(lexicon, ofHead, 'parts-of'),
    listed: part.listedWith !== null,
    abstract: isAbstract(deed, tokens, lexicon),
    capitals: isCapitals(tokens, phrase.head),
    verb,
  };
}

const measures = (head: string, lexicon: Lexicon) =>
  has(lexicon, head, 'quantities') || has(lexicon, head, 'containers');

/** The part whose use counts: the list's first, or what an "of" completes when that only measures. */
function rootOf(part: Part): Part {
  if (part.listedWith) return rootOf(part.listedWith);
  return part.ofPart ? rootOf(part.ofPart) : part;
}

function isPerson(
  subject: { person: string | null; pronoun: string | null; phrase: Part['phrase'] | null },
  tokens: readonly Token[],
  lexicon: Lexicon,
): boolean {
  if (subject.person !== null) return true;
  if (subject.pronoun !== null)
    return /^(?:he|she|they|i|you|we|who|somebody|someone|everybody|everyone|nobody|one|both|another)$/.test(
      subject.pronoun,
    );
  const head = subject.phrase ? (tokens[subject.phrase.head] as Token).lemma : '';
  const entry = lexicon.find(head);
  if (!entry) return false;
  return (
    entry.core.startsWith('x') ||
    entry.classes.includes('person-nouns') ||
    (entry.core === '' && entry.wordnet.startsWith('x'))
  );
}

/** "X in her hand", "X over his shoulder", "X between two fingers". */
function isHeld(tokens: readonly Token[], end: number, lexicon: Lexicon): boolean {
  const preposition = tokens[end];
  if (
    preposition?.tag !== 'preposition' ||
    !/^(?:in|under|over|between|across|on|behind|around|round|at|against|to)$/.test(preposition.lower)
  )
    return false;
  const first = tokens[end + 1];
  if (
    first?.tag !== 'possessive' &&
    first?.tag !== 'number' &&
    !(first?.tag === 'noun' && /^hands?$/.test(first.lower))
  )
    return false;
  for (let at = end + 1; at < Math.min(tokens.length, end + 5); at++) {
    if (tokens[at]?.tag === 'noun') return has(lexicon, (tokens[at] as Token).lemma, 'body');
  }
  return false;
}

function isWorn(part: Part, root: Part, verb: string | null, tokens: readonly Token[], lexicon: Lexicon): boolean {
  if (root.role === 'object' && verb !== null && has(lexicon, verb, 'wearing')) return true;
  if (
    verb !== null &&
    /^(?:dress|clothe|clad|wrap|button|muffle|swathe|bundle)$/.test(verb) &&
    /^(?:in|into)$/.test(root.preposition ?? '')
  )
    return true;
  if (root.preposition === 'in' && !/^the$/.test(root.phrase.determiner?.lower ?? '')) {
    const before = tokens[root.phrase.start - 2];
    return (
      before === undefined ||
      before.tag === 'punctuation' ||
      before.tag === 'name' ||
      before.tag === 'noun' ||
      before.tag === 'verb' ||
      before.tag === 'participle' ||
      before.tag === 'pronoun'
    );
  }
  return (
    isHeld(tokens, part.phrase.end, lexicon) && !/^(?:in|between|under)$/.test(tokens[part.phrase.end]?.lower ?? '')
  );
}

function standsThere(part: Part, tokens: readonly Token[], clauses: Clauses, lexicon: Lexicon): boolean {
  if (part.role !== 'subject') return false;
  const deed = clauses.deeds.find((one) => one.subject?.phrase === part.phrase);
  return deed !== undefined && has(lexicon, deed.lemma, 'hanging') && tokens[deed.at]?.tag !== 'noun';
}

/** "Hope is a light", "Time drags its spurs": no thing of the clause is there. */
function isAbstract(deed: Part['deed'], tokens: readonly Token[], lexicon: Lexicon): boolean {
  const subject = deed?.subject?.phrase;
  if (!subject) return false;
  return has(lexicon, (tokens[subject.head] as Token).lemma, 'ideas');
}

function articleOf(part: Part, tokens: readonly Token[]): Signals['article'] {
  const word = part.phrase.determiner?.lower;
  if (word === 'a' || word === 'an') return 'a';
  if (word === 'the') return 'the';
  if (tokens[part.phrase.modifiers[0] ?? -1]?.tag === 'number') return 'number';
  return word === undefined ? 'none' : 'other';
}

function isCapitals(tokens: readonly Token[], head: number): boolean {
  const { text } = tokens[head] as Token;
  if (!/^\p{Lu}{2}[\p{Lu}\-'’]*$/u.test(text)) return false;
  return tokens.some((token) => /\p{Ll}{2}/u.test(token.text));
}
