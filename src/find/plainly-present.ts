import type { Candidate } from './candidates.js';
import type { Clauses } from './clause-types.js';
import type { Lexicon } from './lexicon.js';
import type { Sentence, Token } from './reading.js';

const pointers = /^(?:this|that|these|those)$/;

/** False for speech that need not be taken apart, for speed: it points at nothing, orders nothing and is no call of a word or two. */
export function mayPoint({ tokens }: Sentence): boolean {
  if (tokens.length <= 4) return true;
  let orders = true;
  for (const { tag, lower, lemma } of tokens) {
    if (pointers.test(lower)) return true;
    if (orders && tag === 'verb' && lower === lemma) return true;
    if (tag === 'noun' || tag === 'auxiliary' || lower === 'to') orders = false;
  }
  return false;
}

/** True for one word that answers a question, as "Wolves." does "What for?"; asked "What is this?", it names what is there. */
export function answersInAWord({ kind, tokens }: Sentence, before: Sentence | null): boolean {
  if (kind !== 'speech' || tokens.length > 2 || before?.kind !== 'speech') return false;
  return before.tokens.at(-1)?.text === '?' && !pointers.test(before.tokens.at(-2)?.lower ?? '');
}

/** False for speech in which nothing can be plainly there: no pointing, no order, no call of a word or two. */
export function mayShow({ sentence, deeds }: Clauses): boolean {
  if (sentence.tokens.length <= 4) return true;
  if (deeds.some((deed) => !deed.subject && !deed.participle)) return true;
  return sentence.tokens.some(({ lower }) => pointers.test(lower));
}

/** Why a thing named in speech is plainly there, in words; null when it is only spoken of. */
export function whyPresent(candidate: Candidate, clauses: Clauses, lexicon: Lexicon): string | null {
  const { part, kind } = candidate;
  const { tokens } = clauses.sentence;
  if (kind.source !== 'list' && kind.source !== 'weak') return null;
  if (!/^[pwcdfvatm]/.test(kind.letters) && kind.head !== 'blood') return null;
  if (ordered(candidate, tokens, lexicon)) return 'somebody is told to handle it';
  const determiner = part.phrase.determiner?.lower ?? '';
  if (pointers.test(determiner)) return 'it is pointed at';
  if (shown(tokens, part.phrase.start)) return 'it is pointed at';
  const asked = tokens.some((token) => pointers.test(token.lower) && token.tag === 'determiner');
  if (asked && /^(?:your|my)$/.test(determiner) && part.role === 'preposition') return 'it is pointed at';
  const praised = part.phrase.modifiers.some((at) =>
    /^(?:nice|lovely|great|fine|ugly|pretty|beautiful)$/.test((tokens[at] as Token).lower),
  );
  if (clauses.deeds.length === 0 && part.opens === 'start' && determiner === '' && (praised || isCalled(kind, tokens)))
    return 'it is called for or looked at';
  return null;
}

/** "Torch!", "Towel."; "Boots." speaks of what somebody has on or should take off, "Deer." of what is not there. */
const isCalled = ({ letters }: Candidate['kind'], tokens: readonly Token[]) =>
  tokens.length <= 2 && !/^[ca]/.test(letters);

/** "Drop the gun", "Pass me the wrench": the verb opens the sentence and has no subject. */
function ordered(candidate: Candidate, tokens: readonly Token[], lexicon: Lexicon): boolean {
  const { part } = candidate;
  const deed = part.deed;
  if (part.role !== 'object' || !deed || deed.unreal || deed.participle || deed.subject) return false;
  const verb = tokens[deed.at] as Token;
  if (verb.lower !== verb.lemma) return false;
  if (
    /^(?:kill|bury|book|take|keep|bring|buy|use)$/.test(verb.lemma) &&
    verb.lemma !== 'use' &&
    part.phrase.determiner?.lower !== 'the'
  )
    return false;
  const known = lexicon.find(verb.lemma)?.classes ?? [];
  if (!known.includes('handling') && !known.includes('wearing')) return false;
  return tokens
    .slice(0, deed.at)
    .every((token) => token.tag !== 'noun' && token.tag !== 'auxiliary' && token.lower !== 'to');
}

/** "That's a spanner", "It is a sandwich": pointed at by a pronoun. */
function shown(tokens: readonly Token[], start: number): boolean {
  const be = tokens[start - 1];
  const pointer = tokens[start - 2];
  if (!be || !pointer) return false;
  return /^(?:'s|is|are)$/.test(be.lower.replace('’', "'")) && pointers.test(pointer.lower);
}
