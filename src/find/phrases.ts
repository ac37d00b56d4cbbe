import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';

/** Who or what a phrase belongs to: "Nora's", "her", "the boy's". */
export interface Owner {
  readonly person: string | null;
  /** The pronoun in lower case: his, her, their, my … */
  readonly pronoun: string | null;
  readonly phrase: Phrase | null;
}

/** A noun phrase of a sentence; numbers are places of tokens. */
export interface Phrase {
  readonly start: number;
  readonly end: number;
  readonly head: number;
  readonly determiner: Token | null;
  readonly owner: Owner | null;
  /** Places of the tokens between the determiner and the head. */
  readonly modifiers: readonly number[];
}

/** Finds the noun phrases of a sentence, from left to right; owners ("the boy's") come before what they own. */
export function findPhrases(tokens: readonly Token[], lexicon: Lexicon): Phrase[] {
  const phrases: Phrase[] = [];
  let at = 0;
  while (at < tokens.length) {
    const phrase = readPhrase(tokens, at, phrases);
    const given = phrase ? splitReceiver(phrase, tokens, lexicon) : [];
    phrases.push(...given);
    at = phrase ? phrase.end : at + 1;
  }
  return phrases;
}

function readPhrase(tokens: readonly Token[], start: number, before: readonly Phrase[]): Phrase | null {
  let at = start;
  let determiner: Token | null = null;
  let owner: Owner | null = null;
  const first = tokens[at] as Token;
  if (first.tag === 'name') return readOwnedByName(tokens, start, before);
  if (first.tag === 'possessive' && isTail(first)) {
    const possessor = before.at(-1);
    owner = { person: null, pronoun: null, phrase: possessor?.end === start ? possessor : null };
    at++;
  } else if (first.tag === 'possessive') {
    owner = { person: null, pronoun: first.lower, phrase: null };
    determiner = first;
    at++;
  } else if (first.tag === 'determiner') {
    determiner = first;
    at++;
  }
  return closePhrase(tokens, { start, at, determiner, owner });
}

const giving = /^(?:give|hand|pass|toss|throw|show|offer|bring|buy|sell|lend|send|serve|feed|pour|slip|pay|fetch)$/;

/** "gives the driver money": who gets it and what he gets are two, where the last noun needs no article. */
function splitReceiver(phrase: Phrase, tokens: readonly Token[], lexicon: Lexicon): Phrase[] {
  const at = phrase.head - 1;
  const verb = tokens[phrase.start - 1];
  const [receiver, gift] = [tokens[at], tokens[phrase.head] as Token];
  if (receiver?.tag !== 'noun' || phrase.determiner === null || !giving.test(verb?.lemma ?? '')) return [phrase];
  if (verb?.tag !== 'verb' && verb?.tag !== 'participle') return [phrase];
  const { core = '', classes = [] } = lexicon.find(receiver.lemma) ?? {};
  const lives = /^[xa]/.test(core) || classes.includes('person-nouns');
  const thing = lexicon.find(gift.lemma);
  const mass =
    thing?.core.startsWith('f') || thing?.classes.includes('matter') || /^(?:money|cash|bread)$/.test(gift.lemma);
  if (!lives || !(isPlural(gift) || mass)) return [phrase];
  const first = { ...phrase, head: at, end: at + 1, modifiers: phrase.modifiers.filter((place) => place < at) };
  return [first, { start: at + 1, end: phrase.end, head: phrase.head, determiner: null, owner: null, modifiers: [] }];
}

const isTail = (token: Token) => /^['’]s?$/i.test(token.lower);

/** A name is no phrase here, but what it owns is. */
function readOwnedByName(tokens: readonly Token[], start: number, before: readonly Phrase[]): Phrase | null {
  let at = start;
  while (tokens[at]?.tag === 'name') at++;
  const tail = tokens[at];
  if (tail?.tag !== 'possessive' || !isTail(tail)) return readPhraseAfterName(tokens, start, at, before);
  const owner = { person: (tokens[at - 1] as Token).person, pronoun: null, phrase: null };
  return closePhrase(tokens, { start, at: at + 1, determiner: null, owner });
}

/** A make or brand before a thing: "a pink Buick", "the Gladstone bag". Only unknown names do so. */
function readPhraseAfterName(
  tokens: readonly Token[],
  start: number,
  at: number,
  before: readonly Phrase[],
): Phrase | null {
  if ((tokens[start] as Token).person !== null || tokens[at]?.tag !== 'noun' || before.at(-1)?.end === start)
    return null;
  return closePhrase(tokens, { start, at: start, determiner: null, owner: null });
}

interface Opening {
  readonly start: number;
  readonly at: number;
  readonly determiner: Token | null;
  readonly owner: Owner | null;
}

function closePhrase(tokens: readonly Token[], { start, at, determiner, owner }: Opening): Phrase | null {
  let head = -1;
  const inside: number[] = [];
  let here = at;
  for (; here < tokens.length; here++) {
    const token = tokens[here] as Token;
    if (token.tag === 'noun' || (token.tag === 'name' && token.person === null)) {
      if (head >= 0 && (tokens[head] as Token).tag === 'noun' && breaksCompound(tokens, head)) break;
      head = here;
      inside.push(here);
    } else if (head < 0 && (token.tag === 'adjective' || token.tag === 'number')) inside.push(here);
    else if (head < 0 && token.tag === 'adverb' && tokens[here + 1]?.tag === 'adjective') continue;
    else if (head < 0 && here > start && isShortQuote(tokens, here)) continue;
    else if (head < 0 && joinsModifiers(tokens, here, inside.length)) continue;
    else if (token.tag === 'adjective' && tokens[here + 1]?.tag === 'noun' && tokens[here - 1]?.tag === 'noun') {
      if (here - 1 === head && isPlural(tokens[head] as Token)) break;
      inside.push(here);
    } else break;
  }
  if (head < 0) return null;
  return { start, end: head + 1, head, determiner, owner, modifiers: inside.filter((place) => place < head) };
}

/** A quotation mark before a word or two that it sets apart. */
function isShortQuote(tokens: readonly Token[], at: number): boolean {
  if (!/^["“]$/.test((tokens[at] as Token).text)) return false;
  return [2, 3, 4].some((size) => /^["”]$/.test(tokens[at + size]?.text ?? ''));
}

/** A plural noun ends its phrase: "the guests champagne" are two. */
function breaksCompound(tokens: readonly Token[], head: number): boolean {
  const token = tokens[head] as Token;
  return isPlural(token) && !/(?:ss|news|sports|glass|arms|jeans)$/.test(token.lower);
}

const isPlural = (token: Token) => token.lemma !== token.lower;

/** A comma or "and" between adjectives: "a long, slow scrape", "a black and white cat". */
function joinsModifiers(tokens: readonly Token[], at: number, size: number): boolean {
  const token = tokens[at] as Token;
  if (size === 0 || tokens[at - 1]?.tag !== 'adjective') return false;
  if (token.text !== ',' && token.lower !== 'and') return false;
  const after = tokens[at + 1]?.tag;
  return after === 'adjective' && /^(?:noun|adjective)$/.test(tokens[at + 2]?.tag ?? '');
}
