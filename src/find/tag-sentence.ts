import { chooseTag, type Reading } from './choose-tag.js';
import { follow } from './clause-account.js';
import type { PeopleNames } from './people-names.js';
import type { Sentence, Tag, Token } from './reading.js';
import { type RawWord, splitWords } from './split-words.js';
import type { Draft } from './word-neighbours.js';
import type { WordUses } from './word-uses.js';

/** What tagging needs to know of the language and of the people. */
export interface Tagger {
  readonly names: PeopleNames;
  readonly uses: (word: string) => WordUses;
  /** What kind of animal a name in lower case calls, when the action names an animal. */
  readonly pets: ReadonlyMap<string, string>;
}

/** Tags the words of one sentence from left to right. */
export function tagSentence(text: string, kind: Sentence['kind'], tagger: Tagger): Token[] {
  const drafts = draftWords(text, tagger);
  const reading: Reading = {
    inPreposition: false,
    subject: false,
    finite: false,
    plural: false,
    joined: false,
    phrase: 'none',
    speech: kind === 'speech',
    owed: false,
  };
  const tokens: Token[] = [];
  for (let at = 0; at < drafts.length; at++) {
    const draft = drafts[at] as Tagged;
    const { text, lower, person } = draft;
    const pet = person === null && text !== lower ? tagger.pets.get(lower) : undefined;
    const tag = pet === undefined ? chooseTag(drafts, at, tokens, reading) : 'noun';
    follow(reading, tag, draft, tokens[at - 1]?.tag ?? null);
    draft.tag = tag;
    draft.lemma = pet ?? lemmaOf(draft, tag);
    tokens.push(draft);
  }
  return tokens;
}

/** A word with all it can be, which becomes the token once its class is chosen: one object a word, for speed. */
type Tagged = Draft & { tag: Tag; lemma: string };

function draftWords(text: string, tagger: Tagger): Tagged[] {
  const words = splitOwners(splitWords(text), tagger.names);
  const lowers = words.map((word) => (word.isOwner ? "'s" : plainLower(word.text)));
  const drafts: Tagged[] = [];
  let person: string | null = null;
  let until = 0;
  for (let at = 0; at < words.length; at++) {
    if (at >= until) {
      const match = tagger.names.match(words, lowers, at);
      person = match?.person ?? null;
      until = at + (match?.size ?? 0);
    }
    const { text, start, end } = words[at] as CutWord;
    const lower = lowers[at] as string;
    const uses = tagger.uses(lower);
    const compound = person === null && uses.noun !== null && isCompound(drafts[at - 1], uses, lower, tagger);
    drafts.push({ text, lower, lemma: lower, tag: 'other', start, end, person, uses, compound });
  }
  return drafts;
}

/** Asked only where the tags are in doubt: the second word can be a verb, or the first a participle. */
function isCompound(first: Draft | undefined, second: WordUses, lower: string, tagger: Tagger): boolean {
  if (first === undefined || first.person !== null || first.uses.closed !== null) return false;
  const { noun, verb } = first.uses;
  if (verb?.form !== 'ing' && (noun === null || second.verb === null)) return false;
  return /^[pcwdvfkag]/.test(tagger.uses(`${first.lower} ${lower}`).noun?.entry.core ?? '');
}

type CutWord = RawWord & { readonly isOwner?: true };

/** "Tims knee": a known name with the apostrophe forgotten, before what may be its own, is cut like "Tim's". */
function splitOwners(words: readonly RawWord[], names: PeopleNames): readonly CutWord[] {
  if (!words.some(({ text }) => mayOwn(text))) return words;
  return words.flatMap((word, at) => {
    const { text, start, end } = word;
    if (!mayOwn(text) || names.canonical(text)) return [word];
    if (!/^\p{L}/u.test(words[at + 1]?.text ?? '')) return [word];
    if (names.match([{ text }], [plainLower(text)], 0)) return [word];
    const stem = { text: text.slice(0, -1), start, end: end - 1 };
    if (!names.match([stem], [plainLower(stem.text)], 0)) return [word];
    return [stem, { text: text.slice(-1), start: end - 1, end, isOwner: true as const }];
  });
}

const mayOwn = (text: string) => text.endsWith('s') && /^\p{Lu}[\p{L}-]{2,}s$/u.test(text);

function plainLower(text: string): string {
  const lower = text.toLowerCase();
  return lower.includes('’') ? lower.replaceAll('’', "'") : lower;
}

function lemmaOf(draft: Draft, tag: Tag): string {
  if (tag === 'noun') return draft.uses.noun?.lemma ?? draft.lower;
  if (tag === 'verb' || tag === 'participle') return draft.uses.verb?.lemma ?? draft.lower;
  return draft.lower;
}
