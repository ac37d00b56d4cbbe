import type { Implication, ImpliedQuestion } from '../../trade/implications/implication.js';
import type { Sentence, Token } from '../reading.js';
import type { Find } from '../types.js';
import type { Evidence } from './evidence.js';
import { headOf, nameWords, type Present } from './present.js';
import { openWordList } from './word-list.js';

/** What of the script may answer a question that its words raise. */
export interface Told {
  readonly sentences: readonly Sentence[];
  readonly elements: readonly Find[];
  readonly present: Present;
}

type Raised = Evidence<Implication>;

/** How many sentences of the scene after the words may still answer: "She opens the parcel. Inside, a doll." */
const reach = 2;
const garments = openWordList('GARMENT').words;

/**
 * True when the script answers a question itself: in the same sentence or the next two, by a thing of the scene, for what
 * holds in the whole script in any sentence that names the thing again, and for a garment by any later word of it.
 */
export function isAnswered(raised: Raised, question: ImpliedQuestion, told: Told): boolean {
  const { head, scene } = raised;
  const things = openWordList(question.unlessPresent).words;
  for (const word of things) if (word !== head && told.present[scene]?.has(word)) return true;
  if (isSomeoneThere(things, scene, told)) return true;
  if (question.answeredBy === 'any later word') return isSeenLater(raised, told);
  const { words } = openWordList(question.unless);
  if (words.size === 0) return false;
  if (raised.sentence && tells(raised.sentence, words, head)) return true;
  return question.answeredBy === 'the script' ? isToldSomewhere(raised, words, told) : isToldNext(raised, words, told);
}

/** "Is the driver seen?" where DRIVER has lines or is named. */
function isSomeoneThere(words: ReadonlySet<string>, scene: number, { sentences }: Told): boolean {
  return (
    words.size > 0 &&
    sentences.some(
      (one) =>
        one.scene === scene &&
        ((one.speaker !== null && words.has(one.speaker.toLowerCase())) ||
          (one.kind === 'action' && one.tokens.some(({ tag, lower }) => tag === 'name' && words.has(lower)))),
    )
  );
}

function tells({ tokens }: Sentence, words: ReadonlySet<string>, head: string): boolean {
  return tokens.some(({ lemma, lower }) => lower !== head && (words.has(lemma) || words.has(lower)));
}

/** The next sentences answer when they go on about the thing. */
function isToldNext({ sentence, head, object }: Raised, words: ReadonlySet<string>, { sentences }: Told): boolean {
  if (sentence === null) return false;
  const from = sentences.indexOf(sentence) + 1;
  for (const one of sentences.slice(from, from + reach)) {
    if (one.scene !== sentence.scene || one.kind === 'speech') return false;
    if (one.tokens.some((token) => goesOn(token, head, object)) && tells(one, words, head)) return true;
  }
  return false;
}

function goesOn({ lower, lemma }: Token, head: string, object: Token | null): boolean {
  return lower === 'it' || lower === 'inside' || lemma === head || lower === head || lemma === object?.lemma;
}

/** Another sentence of action that names the thing and tells; of somebody else's it may not speak. */
function isToldSomewhere({ head, token }: Raised, words: ReadonlySet<string>, { sentences }: Told): boolean {
  const noun = token?.lemma ?? head;
  return sentences.some(
    (one) => one.kind !== 'speech' && one.tokens.some(({ lemma }) => lemma === noun) && tells(one, words, head),
  );
}

/** The garment of the words comes again later in the script. */
function isSeenLater({ words, at }: Raised, { sentences, elements }: Told): boolean {
  const garment = nameWords(words).find((word) => garments.has(word));
  if (garment === undefined) return false;
  const after = at.end.offset;
  return (
    elements.some((one) => one.at.start.offset >= after && headOf(one.name) === garment) ||
    sentences.some(
      (one) =>
        one.kind !== 'speech' &&
        one.place(0, one.text.length).start.offset >= after &&
        one.tokens.some(({ lemma, tag }) => tag === 'noun' && lemma === garment),
    )
  );
}
