import type { Resolve } from './clause-types.js';
import { isPerson } from './implied/word-list.js';
import type { Lexicon } from './lexicon.js';
import type { Sentence, Token } from './reading.js';

type Gender = 'f' | 'm';

const genders: Readonly<Record<string, Gender>> = {
  he: 'm',
  him: 'm',
  his: 'm',
  himself: 'm',
  she: 'f',
  her: 'f',
  hers: 'f',
  herself: 'f',
};

/** Tells whom the pronouns of a script mean, sentence by sentence, in the order of the text. */
export interface Referents {
  /** Moves on to a sentence and gives its resolver. */
  readonly enter: (sentence: Sentence) => Resolve;
}

/** Learns who is a woman and who a man from names, titles and the pronouns near them. */
export function learnReferents(sentences: readonly Sentence[], lexicon: Lexicon): Referents {
  const gender = learnGenders(sentences, lexicon);
  let scene = -1;
  let recent: readonly string[] = [];
  return {
    enter: (sentence) => {
      if (sentence.scene !== scene) recent = [];
      scene = sentence.scene;
      const before = recent;
      recent = remember(recent, sentence);
      return (at) => resolve(sentence, at, before, gender);
    },
  };
}

function learnGenders(sentences: readonly Sentence[], lexicon: Lexicon): Map<string, Gender> {
  const votes = new Map<string, number>();
  const vote = (person: string, by: number) => votes.set(person, (votes.get(person) ?? 0) + by);
  for (const sentence of sentences) {
    if (sentence.kind !== 'action') continue;
    const people = peopleNamed(sentence.tokens, sentence.tokens.length);
    for (const person of people) if (!votes.has(person)) vote(person, genderOfName(person, lexicon) * 3);
    if (people.length !== 1) continue;
    const [person] = people;
    const named = sentence.tokens.findIndex((token) => token.person !== null);
    const pronoun = sentence.tokens.slice(named).find((token) => genders[token.lower]);
    if (pronoun && person) vote(person, genders[pronoun.lower] === 'f' ? 1 : -1);
  }
  return new Map([...votes].filter(([, sum]) => sum !== 0).map(([person, sum]) => [person, sum > 0 ? 'f' : 'm']));
}

/** The people that the first `end` words of a sentence name, each once, in order. */
export function peopleNamed(tokens: readonly Token[], end: number): string[] {
  const people: string[] = [];
  for (let at = 0; at < end; at++) {
    const person = tokens[at]?.person ?? null;
    if (person !== null && !people.includes(person)) people.push(person);
  }
  return people;
}

/** 1 for a woman's name, -1 for a man's, 0 when the name does not tell. */
function genderOfName(name: string, lexicon: Lexicon): number {
  for (const word of name.toLowerCase().split(/[\s.]+/)) {
    const classes = lexicon.find(word)?.classes ?? [];
    if (classes.includes('women')) return 1;
    if (classes.includes('men')) return -1;
  }
  return 0;
}

/** The people named last come first. */
function remember(recent: readonly string[], sentence: Sentence): readonly string[] {
  const named = peopleNamed(sentence.tokens, sentence.tokens.length);
  if (sentence.kind === 'speech' && sentence.speaker)
    return [sentence.speaker, ...recent.filter((one) => one !== sentence.speaker)];
  if (named.length === 0) return recent;
  return [...named, ...recent.filter((one) => !named.includes(one))];
}

/** People named before the pronoun in its sentence come first, then those named last before it. */
function resolve(
  sentence: Sentence,
  at: number,
  recent: readonly string[],
  gender: ReadonlyMap<string, Gender>,
): string | null {
  const token = sentence.tokens[at] as Token;
  if (token.person) return token.person;
  if (sentence.kind !== 'action') return /^(?:i|me|my|mine|myself)$/.test(token.lower) ? sentence.speaker : null;
  const wanted = genders[token.lower];
  if (!wanted) return null;
  const fits = (person: string) => (gender.get(person) ?? wanted) === wanted;
  for (let before = 0; before < at; before++) {
    const named = sentence.tokens[before]?.person;
    if (named && fits(named)) return named;
  }
  return strangerBefore(sentence, at) ? null : (recent.find(fits) ?? null);
}

/** "a stranger stands there, a bundle in his arms": the pronoun means the nameless one. */
function strangerBefore({ tokens }: Sentence, at: number): boolean {
  return tokens.some(
    (token, place) =>
      place < at &&
      token.tag === 'noun' &&
      /^(?:an?|another)$/.test(
        tokens.slice(Math.max(0, place - 4), place).find(({ tag }) => tag === 'determiner')?.lower ?? '',
      ) &&
      isPerson(token),
  );
}
