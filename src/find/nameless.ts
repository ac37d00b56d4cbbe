import { isPerson } from './implied/word-list.js';
import type { Lexicon } from './lexicon.js';
import type { Sentence, Token } from './reading.js';

export type Gender = 'f' | 'm';

/** People whom a sentence names by a common noun: "a girl", "the guards". */
export interface Nameless {
  readonly head: Token;
  /** Place of the head in its sentence. */
  readonly at: number;
  readonly paragraph: number;
  /** What the noun tells; null when it does not. */
  readonly gender: Gender | null;
  readonly several: boolean;
  /** Behind a preposition, or the owner of something: seldom whom the next pronoun means. */
  readonly oblique: boolean;
}

const womanly =
  /(?:woman|women|girl|maid|mother|lady|nun|wife|widow|bride|queen|ess|daughter|sister|aunt|niece|nan|gran)$/;
const manly =
  /(?:[a-z]man|[a-z]men|man|men|boy|father|gentleman|monk|husband|groom|king|lad|bloke|fellow|son|brother|uncle|nephew|waiter|priest|vicar)$/;
const open = /^(?:noun|adjective|number|determiner|possessive|participle|adverb)$/;

/** The nameless people of a sentence, in order; those that only describe somebody of a name left out. */
export function findNameless({ tokens, paragraph }: Sentence, lexicon: Lexicon): Nameless[] {
  const nameless: Nameless[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const head = tokens[at] as Token;
    if (head.tag !== 'noun' || tokens[at + 1]?.tag === 'noun' || !isPersonNoun(head, lexicon)) continue;
    let start = at;
    while (start > 0 && open.test((tokens[start - 1] as Token).tag)) start--;
    if (describesNamed(tokens, start, at)) continue;
    const owner = tokens[at + 1]?.tag === 'possessive' && /^['’]/.test(tokens[at + 1]?.lower ?? '');
    nameless.push({
      head,
      at,
      paragraph,
      gender: genderOf(head),
      several: head.lower !== head.lemma || (lexicon.find(head.lemma)?.classes.includes('groups') ?? false),
      oblique: tokens[start - 1]?.tag === 'preposition' || owner,
    });
  }
  return nameless;
}

/** True for a noun that means people: ours, those of the lists of extras, and what ends like one. */
export function isPersonNoun(token: Token, lexicon: Lexicon): boolean {
  if (token.person !== null) return false;
  return isPerson(token) || (lexicon.find(token.lemma)?.core.startsWith('x') ?? false);
}

const genderOf = ({ lemma }: Token) => genderOfWord(lemma);

/** What a noun for people tells of whom it names; null when it does not. */
export function genderOfWord(word: string): Gender | null {
  if (womanly.test(word)) return 'f';
  return manly.test(word) ? 'm' : null;
}

/** "OLD MARTIN, the boatman", "her son TOM": no person of their own. */
function describesNamed(tokens: readonly Token[], start: number, at: number): boolean {
  const named = (place: number) => (tokens[place]?.person ?? null) !== null;
  if (named(at + 1) || (/^[,:]$/.test(tokens[at + 1]?.text ?? '') && named(at + 2))) return true;
  if (tokens[start - 1]?.text !== ',') return false;
  // "IDA (40), the guard's wife", "TILDA, 30s, a woman".
  let before = start - 2;
  while (/^(?:[(),]|\d+s?)$/.test(tokens[before]?.text ?? '')) before--;
  return named(before);
}
