import type { Tag, Token } from '../reading.js';
import { isPerson } from './word-list.js';

const inPhrase: ReadonlySet<Tag> = new Set(['noun', 'name', 'adjective', 'determiner', 'possessive', 'number']);
const heads: ReadonlySet<Tag> = new Set(['noun', 'name', 'pronoun']);
const light: ReadonlySet<Tag> = new Set(['adverb', 'auxiliary', 'particle', 'other']);

function isHead(token: Token | undefined): boolean {
  return token !== undefined && heads.has(token.tag);
}

/** Where the noun phrase begins whose head stands at `head`. */
export function phraseStart(tokens: readonly Token[], head: number): number {
  if (tokens[head]?.tag === 'pronoun') return head;
  let start = head;
  while (start > 0) {
    const before = tokens[start - 1] as Token;
    const bent =
      before.tag === 'participle' && /^(?:determiner|possessive|adjective)$/.test(tokens[start - 2]?.tag ?? '');
    if (!inPhrase.has(before.tag) && !bent) break;
    start--;
    if (before.tag === 'determiner') break;
    if (before.tag === 'possessive' && !/^['’]/.test(before.lower)) break;
  }
  return start;
}

/** The head of the subject of the verb at `verb`, or null when the clause has none. */
export function findSubject(tokens: readonly Token[], verb: number): Token | null {
  return findLeader(tokens, verb) ?? findNearest(tokens, verb);
}

/** "The queen, moss in her hair, eats": behind a comma the person at the head of the clause acts. */
function findLeader(tokens: readonly Token[], verb: number): Token | null {
  let before = verb - 1;
  while (before >= 0 && light.has((tokens[before] as Token).tag)) before--;
  if (tokens[before]?.text !== ',') return null;
  let start = before;
  while (start > 0 && !/^[.;:!?—–]$/.test((tokens[start - 1] as Token).text)) start--;
  const head = phraseHead(tokens, start);
  return head !== null && head < before && isPerson(tokens[head] as Token) ? (tokens[head] as Token) : null;
}

function findNearest(tokens: readonly Token[], verb: number): Token | null {
  let at = verb - 1;
  let adjacent = true;
  while (at >= 0) {
    const token = tokens[at] as Token;
    if (/^[.;:!?—–]$/.test(token.text)) return null;
    if (!isHead(token)) {
      adjacent &&= light.has(token.tag);
      at--;
      continue;
    }
    const start = phraseStart(tokens, at);
    const before = tokens[start - 1];
    const isObject = before?.tag === 'verb' || before?.tag === 'participle';
    if (before?.tag !== 'preposition' && !(isObject && !adjacent)) return token;
    if (isObject) adjacent = false;
    at = start - 1;
  }
  return null;
}

/** The heads of what follows the verb at `verb` without a preposition; what follows "of" and "and" counts too. */
export function findObjects(tokens: readonly Token[], verb: number): Token[] {
  const objects: Token[] = [];
  let at = verb + 1;
  while (at < tokens.length && /^(?:adverb|particle)$/.test(tokens[at]?.tag ?? '')) at++;
  while (at < tokens.length && objects.length < 4) {
    const head = phraseHead(tokens, at);
    if (head === null) break;
    objects.push(tokens[head] as Token);
    at = head + 1;
    const joint = tokens[at]?.lower;
    if (joint === 'of' || joint === 'and' || joint === ',') at++;
  }
  return objects;
}

/** The head of the noun phrase that begins at `at`, or null when none does. */
function phraseHead(tokens: readonly Token[], at: number): number | null {
  if (tokens[at]?.tag === 'pronoun') return at;
  let head: number | null = null;
  for (let here = at; here < tokens.length; here++) {
    const token = tokens[here] as Token;
    const opens = token.tag === 'determiner' || (token.tag === 'possessive' && !/^['’]/.test(token.lower));
    if (head !== null && opens) break;
    if (token.tag === 'noun' || token.tag === 'name') head = here;
    else if (!inPhrase.has(token.tag) && !(token.tag === 'participle' && head === null)) break;
  }
  return head;
}

/** What a describing word at `at` speaks of: the noun after it, else the subject before it. */
export function findDescribed(tokens: readonly Token[], at: number): Token | null {
  for (let here = at + 1; here < tokens.length; here++) {
    const token = tokens[here] as Token;
    if (token.tag === 'noun' || token.tag === 'name') return lastOfCompound(tokens, here);
    if (!/^(?:adjective|participle)$/.test(token.tag) && token.text !== 'and') break;
  }
  return findSubject(tokens, at);
}

function lastOfCompound(tokens: readonly Token[], at: number): Token {
  let here = at;
  while (tokens[here + 1]?.tag === 'noun') here++;
  return tokens[here] as Token;
}
