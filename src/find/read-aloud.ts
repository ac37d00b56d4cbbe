import type { Clauses } from './clause-types.js';
import type { Sentence, Token } from './reading.js';

const signs = new Set(['"', '“', '”', ':', 'dear', 'that', 'i', 'my', 'me', 'you', 'your']);
const reporting =
  /^(?:say|tell|read|write|explain|report|announce|claim|state|promise|warn|insist|swear|think|know|remember|believe|learn|hope|wish)$/;
const carrying = /^(?:letter|note|telegram|postcard|message|email|text|diary|inscription)$/;

/** What a paragraph has been about so far: a quotation that is not closed yet, a letter that is given in its own words. */
interface Stand {
  readonly scene: number;
  readonly paragraph: number;
  open: boolean;
  letter: boolean;
}

/** Places of tokens whose words are only written, said or told: from `from` to before `to`. */
export interface ReadAloud {
  readonly from: number;
  readonly to: number;
}

const all: ReadAloud = { from: 0, to: Number.POSITIVE_INFINITY };
const after = (from: number): ReadAloud => ({ from, to: Number.POSITIVE_INFINITY });

/**
 * Makes the reader that tells, sentence by sentence in the order of the script, which words are only written, said or told: a quotation
 * over several sentences, a letter without quotation marks, what a letter says. Null when none are.
 */
export function readsAloud(): (clauses: Clauses) => ReadAloud | null {
  let stand: Stand = { scene: -1, paragraph: -1, open: false, letter: false };
  return ({ sentence }) => {
    if (sentence.kind !== 'action') return null;
    if (sentence.scene !== stand.scene || sentence.paragraph !== stand.paragraph) stand = nextStand(stand, sentence);
    if (!stand.letter && !sentence.tokens.some(({ lower }) => signs.has(lower))) return stand.open ? all : null;
    return quotedFrom(sentence, stand) ?? letterFrom(sentence, stand) ?? toldFrom(sentence.tokens);
  };
}

/** A letter goes on in the next paragraph as long as it speaks of me and you: "I am writing this from the coast." */
function nextStand(before: Stand, { scene, paragraph, tokens }: Sentence): Stand {
  const goesOn = before.letter && scene === before.scene && paragraph === before.paragraph + 1;
  return { scene, paragraph, open: false, letter: goesOn && speaksOfItself(tokens, 0) };
}

/** The part of a quotation over several sentences that stands in this one; keeps account of what stays open. */
function quotedFrom({ tokens }: Sentence, stand: Stand): ReadAloud | null {
  const wasOpen = stand.open;
  let first = -1;
  let last = -1;
  for (let at = 0; at < tokens.length; at++) {
    const { text } = tokens[at] as Token;
    if (text !== '"' && text !== '“' && text !== '”') continue;
    // A board of 6" is no quotation.
    if (text === '"' && !stand.open && tokens[at - 1]?.tag === 'number') continue;
    if (first < 0) first = at;
    last = at;
    stand.open = text === '"' ? !stand.open : text === '“';
  }
  if (wasOpen) return first < 0 ? all : { from: 0, to: first };
  return stand.open && last >= 0 ? after(last) : null;
}

/** "It reads: Dear Anna, I have sold the car." From "Dear" on all is letter; else as long as it speaks of me and you. */
function letterFrom({ tokens }: Sentence, stand: Stand): ReadAloud | null {
  const dear = tokens.findIndex(({ text }, at) => text === 'Dear' && isSalutation(tokens, at));
  if (dear >= 0) {
    stand.letter = true;
    return after(dear);
  }
  if (stand.letter) return all;
  const colon = tokens.findIndex(({ text }) => text === ':');
  const begun = colon > 0 && isBegun(tokens, colon);
  return begun && speaksOfItself(tokens, colon + 1) ? after(colon + 1) : null;
}

const isSalutation = (tokens: readonly Token[], at: number) =>
  (at === 0 || /^[:.—–-]$/.test(tokens[at - 1]?.text ?? '')) &&
  tokens.slice(at + 1, at + 5).some(({ text }) => /^[,:—–-]$/.test(text));

/** "It reads:", "A note on the door:". */
const isBegun = (tokens: readonly Token[], colon: number) =>
  reporting.test(tokens[colon - 1]?.lemma ?? '') ||
  tokens.slice(0, colon).some(({ tag, lemma }) => tag === 'noun' && carrying.test(lemma));

const speaksOfItself = (tokens: readonly Token[], from: number) =>
  tokens.slice(from).some(({ lower }) => /^(?:i|i'm|i've|me|my|you|your|we|our|us)$/.test(lower));

/** "The letter says that the horse is lame." */
function toldFrom(tokens: readonly Token[]): ReadAloud | null {
  const that = tokens.findIndex(
    ({ lower }, at) => lower === 'that' && at > 0 && reporting.test((tokens[at - 1] as Token).lemma),
  );
  const isClause = that > 0 && tokens.slice(that + 1).some(({ tag }) => tag === 'verb' || tag === 'auxiliary');
  return isClause && isVerb(tokens[that - 1] as Token) ? after(that) : null;
}

const isVerb = ({ tag }: Token) => tag === 'verb' || tag === 'participle';
