import { keepAnswers } from '../../base/keep-answers.js';
import { wordGroups } from '../../trade/implications/word-groups.js';
import type { Token } from '../reading.js';

/** A list of words as cues write it, opened: base forms, and whether anyone or nothing counts. */
export interface WordList {
  readonly words: ReadonlySet<string>;
  readonly person: boolean;
  readonly none: boolean;
}

const pronounsOfPeople = new Set(
  'he she they we i you who him her them me us someone somebody everyone everybody anyone nobody both himself herself themselves'.split(
    ' ',
  ),
);
const people = new Set(divide(wordGroups.PEOPLE ?? ''));

/** Divides a list at its white space. */
export function divide(list: string): string[] {
  return list.split(/\s+/).filter((word) => word !== '');
}

/** Opens a list of a cue; groups in capitals are put in. */
export const openWordList = keepAnswers((list): WordList => {
  const words = new Set<string>();
  let person = false;
  let none = false;
  for (const word of divide(list)) {
    if (word === 'PERSON') person = true;
    else if (word === 'NONE') none = true;
    else if (wordGroups[word] !== undefined) for (const one of divide(wordGroups[word])) words.add(one);
    else words.add(word);
  }
  return { words, person, none };
});

/** True when the token means a person: a name, a pronoun, or a noun for people. */
export function isPerson(token: Token): boolean {
  if (token.person !== null) return true;
  if (token.tag === 'pronoun') return pronounsOfPeople.has(token.lower);
  if (token.tag === 'name') return true;
  return people.has(token.lemma) || people.has(token.lower) || /(?:man|men|woman|women|boy|girl)s?$/.test(token.lower);
}

/** True when the list holds the token, or holds anyone and the token is a person. */
export function holds(list: WordList, token: Token): boolean {
  return list.words.has(token.lemma) || list.words.has(token.lower) || (list.person && isPerson(token));
}
