import type { CategoryName } from '../trade/categories.js';
import { categoryByUse } from './by-use.js';
import { type Candidate, findCandidates } from './candidates.js';
import type { Clauses, Part } from './clause-types.js';
import { type NameWords, readName } from './element-name.js';
import { weighEvidence } from './evidence.js';
import type { Kind } from './kinds.js';
import type { Lexicon } from './lexicon.js';
import { mayShow, whyPresent } from './plainly-present.js';
import { quotedPlaces } from './quoted-words.js';
import type { Sentence, Token } from './reading.js';
import type { Signals } from './signals.js';
import { whoHas } from './who.js';
import { isTitleLine } from './written-words.js';

/** Below this no evidence from elsewhere makes an element of a mention. */
const hopeless = 0.05;

/** One place of the script that may name a thing, with what its sentence alone makes of it. */
export interface Mention {
  readonly sentence: Sentence;
  readonly part: Part;
  readonly kind: Kind;
  readonly signals: Signals;
  readonly name: NameWords;
  readonly category: CategoryName;
  /** In hand of somebody here. */
  readonly inHand: boolean;
  readonly by: string | null;
  /** The head word of the nameless person who has it, when nobody of a name does. */
  readonly stranger: Token | null;
  readonly worn: boolean;
  /** Its words in the sentence's text. */
  readonly start: number;
  readonly end: number;
  readonly confidence: number;
  /** The rules that fired, in plain words. */
  readonly rules: readonly string[];
}

/** The things that one sentence may name; in speech only those that are plainly there. */
export function readMentions(clauses: Clauses, taken: ReadonlySet<number>, lexicon: Lexicon): Mention[] {
  const spoken = clauses.sentence.kind !== 'action';
  if ((spoken && !mayShow(clauses)) || isTitleLine(clauses.sentence)) return [];
  const quoted = spoken ? null : quotedPlaces(clauses.sentence.tokens);
  const mentions: Mention[] = [];
  for (const candidate of findCandidates(clauses, lexicon)) {
    const { part, kind, signals } = candidate;
    if (taken.has(part.phrase.head) || quoted?.has(part.phrase.head)) continue;
    if (part.preposition === "'s" && /^[xz]/.test(kind.letters)) continue;
    if (spoken) {
      const why = whyPresent(candidate, clauses, lexicon);
      if (why) mentions.push(describe(candidate, clauses, lexicon, 0.6, ['named in speech', why]));
      continue;
    }
    const { confidence, fired } = weighEvidence(kind, signals);
    if (confidence < hopeless) continue;
    const rules = fired.map((rule) => rule.words);
    mentions.push(describe(candidate, clauses, lexicon, confidence, rules));
  }
  return mentions;
}

function describe(
  candidate: Candidate,
  clauses: Clauses,
  lexicon: Lexicon,
  confidence: number,
  rules: readonly string[],
): Mention {
  const { part, kind, signals } = candidate;
  const { sentence } = clauses;
  const { category, why } = categoryByUse(candidate, clauses, lexicon);
  const { start, end } = wordsOf(part, signals, sentence.tokens);
  const { person: by, stranger } = whoHas(part, signals, category, clauses, lexicon);
  return {
    sentence,
    part,
    kind,
    signals,
    category,
    by,
    stranger,
    confidence,
    name: readName(sentence.tokens, part.phrase, kind.from, lexicon),
    inHand: signals.use.handled || signals.use.instrument || (signals.use.held && !signals.use.worn),
    worn: category === 'costumes' && (by !== null || stranger !== null) && (signals.use.worn || !signals.use.handled),
    start,
    end,
    rules: why ? [...rules, why] : rules,
  };
}

/** The stretch of the words: the phrase, with the measure before its "of". */
function wordsOf(
  part: Part,
  signals: Signals,
  tokens: readonly Token[],
): { readonly start: number; readonly end: number } {
  const from = part.ofPart && signals.words.ofQuantity ? part.ofPart.phrase : part.phrase;
  const first = tokens[from.start] as Token;
  return { start: first.start, end: (tokens[part.phrase.head] as Token).end };
}
