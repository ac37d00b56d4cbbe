import type { Script } from '../script/types.js';
import { personBefore } from './appositions.js';
import type { Clauses } from './clause-types.js';
import { readCount } from './element-count.js';
import type { Lexicon } from './lexicon.js';
import { readMeantPeople } from './meant-people.js';
import type { Mention } from './mentions.js';
import type { Sentence, Token } from './reading.js';
import type { Named } from './same-element.js';
import { cutOfPeople } from './strangers.js';
import type { PersonFind } from './types.js';

/** People whom the action shows and no cue or `cast:` knows: named ones are cast, the rest extras with their counts. */
export function findPeople(
  clauses: readonly Clauses[],
  extras: readonly Named[],
  script: Script,
  lexicon: Lexicon,
): PersonFind[] {
  const meant = readMeantPeople(extras, clauses);
  const nameless = extras.flatMap((one, at) => {
    const { sentence, start, end } = one.mention;
    if (onlyDescribes(one.mention, extras[at - 1]?.mention)) return [];
    return meant.get(one.mention)?.map((person) => asCast(sentence, person, start, end)) ?? asExtras(one);
  });
  const people = [...nameless, ...named(clauses, script), ...introduced(clauses, lexicon)];
  return people.sort((a, b) => a.at.start.offset - b.at.start.offset);
}

/** "The RENT MAN, a thin fellow, nods": one man. */
function onlyDescribes({ sentence, start, end }: Mention, before: Mention | undefined): boolean {
  if (!before || before.sentence !== sentence || before.part.phrase.determiner?.lower !== 'the') return false;
  const { text } = sentence;
  const isSet = /^an? /i.test(text.slice(start, end)) && text.slice(before.end, start) === ', ';
  return (
    isSet &&
    /^(?: (?:with|in|of) [^,.;]*)?(?:[,.]$|[,.] \p{Ll})/u.test(text.slice(end)) &&
    !/^, (?:and|or|an?|the|his|her) /.test(text.slice(end))
  );
}

/** Where the action first names each person whom it introduces. */
function named(clauses: readonly Clauses[], script: Script): PersonFind[] {
  const told = new Set(script.people.map(({ name }) => name));
  const finds: PersonFind[] = [];
  for (const { sentence } of clauses) {
    if (sentence.kind !== 'action') continue;
    sentence.tokens.forEach(({ person, start }, at) => {
      if (person === null || told.has(person)) return;
      told.add(person);
      let last = at;
      while (sentence.tokens[last + 1]?.person === person) last++;
      finds.push(asCast(sentence, person, start, (sentence.tokens[last] as Token).end));
    });
  }
  return finds;
}

function asCast(sentence: Sentence, name: string, start: number, end: number): PersonFind {
  const [words, at] = [sentence.text.slice(start, end), sentence.place(start, end)];
  return { scene: sentence.scene, name, kind: 'cast', count: null, presence: 'seen', words, at, confidence: 0.7 };
}

function asExtras({ mention, name }: Named): PersonFind[] {
  if (mention.confidence < cutOfPeople || personBefore(mention) !== null) return [];
  const { sentence, part, start, end, confidence } = mention;
  if (sentence.tokens[part.phrase.end]?.person || isNamedBehind(sentence.tokens, part.phrase.end)) return [];
  const count = readCount(part, sentence.tokens) ?? (isOne(mention) ? 1 : null);
  const words = sentence.text.slice(start, end);
  const at = sentence.place(start, end);
  return [{ scene: sentence.scene, name, kind: 'extras', count, presence: 'seen', words, at, confidence }];
}

/** "Her husband, TOM (63), sits", "a cleaner, old JOSEF, mops": told by name at once; "the guard, TOM and BEV" are three. */
function isNamedBehind(tokens: readonly Token[], end: number): boolean {
  if (tokens[end]?.text !== ',') return false;
  const first = tokens[end + 1]?.tag === 'adjective' ? end + 2 : end + 1;
  const person = tokens[first]?.person ?? null;
  if (person === null) return false;
  let behind = first;
  while (tokens[behind]?.person === person) behind++;
  const sign = tokens[behind];
  if (sign === undefined || /^[.(—–]$/.test(sign.text)) return true;
  return sign.text === ',' && (tokens[behind + 1]?.person ?? null) === null;
}

/** "a girl", "the mayor": a single person, and no crowd. */
function isOne({ part, kind, name, sentence }: Mention): boolean {
  const determiner = part.phrase.determiner?.lower ?? '';
  const many = kind.classes.some((one) => /^(?:groups|quantities)$/.test(one)) || groups.test(name.singular);
  if (many || name.head !== name.singular || /^(?:every|each|no|any|some)$/.test(determiner)) return false;
  return /^(?:an?|the|another|this|that)$/.test(determiner) || sentence.tokens[part.phrase.head]?.tag === 'name';
}

const groups =
  /^(?:crowd|group|gang|band|party|squad|team|crew|congregation|audience|choir|mob|posse|class|queue|family|couple|pair|police|staff|public|people|procession|orchestra|jury|cast|troop|company|traffic)$/;

/** Names in capitals, or given names that do something, that no cue and no `cast:` knows. */
function introduced(clauses: readonly Clauses[], lexicon: Lexicon): PersonFind[] {
  const finds: PersonFind[] = [];
  for (const { sentence } of clauses) {
    if (sentence.kind !== 'action') continue;
    for (let at = 0; at < sentence.tokens.length; at++) {
      const size = nameAt(sentence.tokens, at, lexicon);
      if (size === 0) continue;
      const first = sentence.tokens[at] as Token;
      const last = sentence.tokens[at + size - 1] as Token;
      finds.push(asCast(sentence, titleCase(sentence.text.slice(first.start, last.end)), first.start, last.end));
      at += size - 1;
    }
  }
  return finds;
}

/** How many tokens from `at` are a person's name; 0 when they are none. */
function nameAt(tokens: readonly Token[], at: number, lexicon: Lexicon): number {
  let size = 0;
  while (isUnknownName(tokens[at + size])) size++;
  if (size === 0 || isUnknownName(tokens[at - 1]) || isSurname(tokens, at)) return 0;
  const own = tokens.slice(at, at + size);
  // "a Morris Minor", "a St Bernard": a kind of thing.
  if (/^an?$/.test(tokens[at - 1]?.lower ?? '') && own.some((token) => /\p{Ll}/u.test(token.text))) return 0;
  const given = own.some((token) =>
    /^(?:women|men)$/.test(
      (lexicon.find(token.lower)?.classes ?? []).find((one) => one === 'women' || one === 'men') ?? '',
    ),
  );
  const next = tokens[at + size];
  const after = tokens[at + size + 1];
  const aged = (next?.text === ',' || next?.text === '(') && /^\d/.test(after?.text ?? '');
  const capitals =
    own.every((token) => /^\p{Lu}{2,}$/u.test(token.text)) && tokens.some((token) => /\p{Ll}{2}/u.test(token.text));
  return aged || (given && (capitals || next?.tag === 'verb' || next?.tag === 'possessive')) ? size : 0;
}

/** MARISOL REYES is the MARISOL of the cues. */
function isSurname(tokens: readonly Token[], at: number): boolean {
  const [before, own] = [tokens[at - 1], tokens[at]];
  return before?.tag === 'name' && before.person !== null && own?.start === before.end + 1;
}

const isUnknownName = (token: Token | undefined) => token?.tag === 'name' && token.person === null;

const titleCase = (text: string) =>
  /\p{Ll}/u.test(text) ? text : text.toLowerCase().replace(/(^|[\s-])\p{L}/gu, (start) => start.toUpperCase());
