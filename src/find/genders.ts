import type { Lexicon } from './lexicon.js';
import { type Gender, genderOfWord, type Nameless } from './nameless.js';
import type { Sentence, Token } from './reading.js';

/** Pronouns that tell of one woman or one man. */
export const genders: Readonly<Record<string, Gender>> = {
  he: 'm',
  him: 'm',
  his: 'm',
  himself: 'm',
  she: 'f',
  her: 'f',
  hers: 'f',
  herself: 'f',
};

/** The people that the first `end` words of a sentence name, each once, in order. */
export function peopleNamed(tokens: readonly Token[], end: number): string[] {
  const people: string[] = [];
  for (let at = 0; at < end; at++) {
    const person = tokens[at]?.person ?? null;
    if (person !== null && !people.includes(person)) people.push(person);
  }
  return people;
}

/** Under which the gender of a noun for people is learnt; no name begins so. */
export const keyOf = ({ head }: Nameless): string => `\u0000${head.lemma}`;

/** Learns who is a woman and who a man: from the names, and from the pronouns that can mean nobody else. */
export function learnGenders(
  sentences: readonly Sentence[],
  nameless: ReadonlyMap<Sentence, readonly Nameless[]>,
  lexicon: Lexicon,
): Map<string, Gender> {
  const votes = new Map<string, number>();
  const vote = (person: string, by: number) => votes.set(person, (votes.get(person) ?? 0) + by);
  let before: Sentence | null = null;
  let alone: string | null = null;
  for (const sentence of sentences) {
    if (sentence.kind !== 'action') continue;
    const { tokens } = sentence;
    const people = peopleNamed(tokens, tokens.length);
    const others = nameless.get(sentence) ?? [];
    for (const person of people) if (!votes.has(person)) vote(person, genderOfName(person, lexicon) * 3);
    const [other] = others;
    if (people.length === 0 && other && others.length === 1 && other.gender === null && !other.several) {
      // "The judge tears a sheet off her clipboard": this script's judge is a woman.
      const pronoun = tokens.slice(other.at).find((token) => genders[token.lower]);
      if (pronoun) vote(keyOf(other), voteOf(pronoun));
    }
    // "Doran climbs down. He stretches."
    const opening = genders[tokens[0]?.lower ?? ''] && before?.paragraph === sentence.paragraph && people.length === 0;
    if (opening && alone !== null) vote(alone, voteOf(tokens[0] as Token));
    const pronoun = ownPronoun(tokens, people[0], others);
    if (pronoun && people[0]) vote(people[0], voteOf(pronoun));
    const isAlone = people.length === 1 && others.length === 0 && !tokens.some(isObject);
    alone = isAlone ? (people[0] as string) : null;
    before = sentence;
  }
  return new Map([...votes].filter(([, sum]) => sum !== 0).map(([person, sum]) => [person, sum > 0 ? 'f' : 'm']));
}

const voteOf = ({ lower }: Token) => (genders[lower] === 'f' ? 1 : -1);

/**
 * The first pronoun behind the first person of a sentence, where nobody else is told of up to there: "Doran wipes his hands and nods to
 * Tilda". "The girl in Clem's pullover hugs her doll" tells nothing of Clem.
 */
function ownPronoun(tokens: readonly Token[], person: string | undefined, others: readonly Nameless[]): Token | null {
  if (person === undefined) return null;
  let isNamed = false;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as Token;
    if (others.some((one) => one.at === at)) return null;
    if (token.person !== null && token.person !== person) return null;
    isNamed ||= token.person === person;
    // "Doran offers her a cup": somebody else.
    if (isNamed && genders[token.lower]) return isObject(token) ? null : token;
  }
  return null;
}

const isObject = ({ lower, tag }: Token) => lower === 'him' || (lower === 'her' && tag === 'pronoun');

/** 1 for a woman's name, -1 for a man's, 0 when the name does not tell. */
function genderOfName(name: string, lexicon: Lexicon): number {
  for (const word of name.toLowerCase().split(/[\s.]+/)) {
    const classes = lexicon.find(word)?.classes ?? [];
    if (classes.includes('women')) return 1;
    if (classes.includes('men')) return -1;
  }
  if (/^(?:madame|auntie|señora|duchess|countess)\b/.test(name.toLowerCase())) return 1;
  // BOATMAN, WOMAN IN SCRUBS: called by a word for people.
  const last = /^(?:.* )??(\S+)(?= (?:in|with|on|at|from) |$)/.exec(name.toLowerCase())?.[1] ?? '';
  const told = lexicon.find(last)?.core.startsWith('x') ? genderOfWord(last) : null;
  return told === null ? 0 : told === 'f' ? 1 : -1;
}
