import type { Clauses, Part } from './clause-types.js';
import type { Lexicon } from './lexicon.js';
import type { Token } from './reading.js';
import { rootPart } from './signs-of-use.js';

/** What the words around a noun say of it. */
export interface SignsInWords {
  readonly owned: boolean;
  readonly fragment: boolean;
  readonly article: 'a' | 'the' | 'number' | 'other' | 'none';
  readonly plural: boolean;
  readonly state: boolean;
  readonly material: boolean;
  readonly simile: boolean;
  readonly negated: boolean;
  readonly ofNothing: boolean;
  readonly ofQuantity: boolean;
  readonly ofPart: boolean;
  /** "shelves of bowls": several of it, named after another thing. */
  readonly ofContents: boolean;
  readonly ofOther: boolean;
  readonly listed: boolean;
  /** In the list after a colon. */
  readonly afterColon: boolean;
  /** "is a X": said of something else. */
  readonly complement: boolean;
  /** "a bear of a man". */
  readonly likened: boolean;
  /** "against the glass": a surface, not a thing. */
  readonly surface: boolean;
  /** The subject is an idea: "Hope is a light". */
  readonly abstract: boolean;
  readonly capitals: boolean;
}

const has = (lexicon: Lexicon, word: string, list: string) => lexicon.find(word)?.classes.includes(list) ?? false;

/** Reads what the words of a noun phrase and its neighbours say of it. */
export function readWords(part: Part, clauses: Clauses, lexicon: Lexicon): SignsInWords {
  const { tokens } = clauses.sentence;
  const { phrase } = part;
  const head = tokens[phrase.head] as Token;
  const before = tokens[phrase.start - 1]?.lower ?? '';
  const modified = (list: string) =>
    phrase.modifiers.some((place) => has(lexicon, (tokens[place] as Token).lower, list));
  const ofHead = part.ofPart ? (tokens[part.ofPart.phrase.head] as Token).lemma : null;
  const of = (list: string) => ofHead !== null && has(lexicon, ofHead, list);
  const contents = !of('of-nothing') && phrase.determiner === null && head.lemma !== head.lower;
  const measured = of('quantities') || of('containers') || ofHead === 'hold' || ofHead === 'grip';
  return {
    owned: phrase.owner !== null && !isOfKind(part, tokens),
    fragment: clauses.deeds.length === 0 && part.role === 'loose',
    article: articleOf(part, tokens),
    plural: head.lemma !== head.lower,
    state: modified('states'),
    material: modified('materials'),
    simile:
      /^(?:like|as|than)$/.test(rootPart(part).preposition ?? '') ||
      (before === 'as' && part.preposition === null) ||
      isMeasure(part, tokens),
    negated:
      phrase.determiner?.lower === 'no' ||
      isHadByNobody(part, tokens) ||
      part.preposition === 'without' ||
      (part.preposition === 'out of' && part.deed?.lemma === 'run'),
    ofNothing:
      of('of-nothing') ||
      /^(?:smell|reek|stink|taste|speak|talk|dream|think|made|sound|complain|warn)\w* of$/.test(part.preposition ?? ''),
    ofQuantity: measured || part.preposition === 'full of',
    ofPart: of('parts-of'),
    ofContents: ofHead !== null && !measured && !of('parts-of') && contents,
    ofOther: ofHead !== null && !measured && !of('parts-of') && !contents,
    listed: part.listedWith !== null,
    afterColon: clauses.colon !== null && phrase.start > clauses.colon && part.deed === null,
    complement: isComplement(part, clauses, lexicon),
    likened: !of('of-nothing') && !has(lexicon, head.lemma, 'of-nothing') && isLikened(part, clauses),
    surface:
      phrase.determiner?.lower === 'the' &&
      phrase.modifiers.length === 0 &&
      part.preposition !== null &&
      head.lower === head.lemma &&
      has(lexicon, head.lemma, 'materials'),
    abstract: isAbstract(part.deed, tokens, lexicon),
    capitals: !clauses.shouting && isCapitals(tokens, phrase.head),
  };
}

/** "the length of a man", "the size of a car". */
const isMeasure = ({ phrase, ofPart }: Part, tokens: readonly Token[]) =>
  ofPart !== null &&
  /^an?$/.test(phrase.determiner?.lower ?? '') &&
  ofPart.phrase.determiner?.lower === 'the' &&
  /^(?:length|size|width|height|weight|shape|colour|color|age|thickness)$/.test(
    (tokens[ofPart.phrase.head] as Token).lower,
  );

/** "It is a gun", "her eyes are saucers": said of something else. "There are several cups" tells what is there. */
function isComplement({ phrase }: Part, { parts, sentence }: Clauses, lexicon: Lexicon): boolean {
  const { tokens } = sentence;
  if (!/^(?:is|are|was|were|be|been|'s|'re|’s)$/.test(tokens[phrase.start - 1]?.lower ?? '')) return false;
  if (/^(?:an?|the|this|that|his|her|its|their|my|your|our)$/.test(phrase.determiner?.lower ?? '')) return true;
  const before = parts.find((one) => one.phrase.end === phrase.start - 1);
  return before !== undefined && has(lexicon, (tokens[before.phrase.head] as Token).lemma, 'body');
}

const none = /^(?:neither|nobody|none)$/;

/** "Neither wears a life jacket"; what nobody touches is there. */
function isHadByNobody({ deed, role, phrase }: Part, tokens: readonly Token[]): boolean {
  if (deed === null && /^(?:has|have|had)$/.test(tokens[phrase.start - 1]?.lower ?? ''))
    return none.test(tokens[0]?.lower ?? '');
  if (role !== 'object' || !/^(?:wear|have|carry|hold|own|bring)$/.test(deed?.lemma ?? '')) return false;
  return none.test(deed?.subject?.pronoun ?? '') || none.test(tokens[0]?.lower ?? '');
}

/** "a visitors' book": a book of a kind, and nobody's. */
function isOfKind({ phrase }: Part, tokens: readonly Token[]): boolean {
  const owner = phrase.owner?.phrase;
  if (!owner || !/^an?$/.test(owner.determiner?.lower ?? '')) return false;
  return (tokens[owner.head] as Token).lower.endsWith('s');
}

function articleOf(part: Part, tokens: readonly Token[]): SignsInWords['article'] {
  const word = part.phrase.determiner?.lower;
  if (word === 'a' || word === 'an' || isOfKind(part, tokens)) return 'a';
  if (word === 'the') return 'the';
  if (tokens[part.phrase.modifiers[0] ?? -1]?.tag === 'number') return 'number';
  return word === undefined ? 'none' : 'other';
}

function isLikened(part: Part, clauses: Clauses): boolean {
  const whole = part.ofPart ? part : clauses.parts.find((one) => one.ofPart === part);
  if (!whole?.ofPart || whole.phrase.modifiers.length > 0) return false;
  return [whole.phrase, whole.ofPart.phrase].every((phrase) => /^an?$/.test(phrase.determiner?.lower ?? ''));
}

function isAbstract(deed: Part['deed'], tokens: readonly Token[], lexicon: Lexicon): boolean {
  const subject = deed?.subject?.phrase;
  return subject ? has(lexicon, (tokens[subject.head] as Token).lemma, 'ideas') : false;
}

function isCapitals(tokens: readonly Token[], head: number): boolean {
  if (!/^\p{Lu}{2}[\p{Lu}\-'’]*$/u.test((tokens[head] as Token).text)) return false;
  return tokens.some((token) => /\p{Ll}{2}/u.test(token.text));
}
