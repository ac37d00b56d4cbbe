import type { Kind } from './kinds.js';
import type { Signals } from './signals.js';

/** One reason for or against listing a thing. */
export interface Rule {
  readonly id: string;
  /** In plain words, for `explain`. */
  readonly words: string;
  /** Added to the log odds when it holds. */
  readonly weight: number;
  readonly holds: (kind: Kind, signals: Signals) => boolean;
}

const listed = (kind: Kind) => kind.source === 'list';
const weak = (kind: Kind) => kind.source === 'weak';
const unknown = (kind: Kind) => kind.source === 'unknown';
const tail = (kind: Kind) => kind.source === 'wordnet';
const bare = (signals: Signals) => signals.words.article === 'none' && !signals.words.plural && !signals.words.owned;

/** The rules; their weights are fitted to sentences that people have broken down. */
export const rules: readonly Rule[] = [
  { id: 'list', words: 'a thing of our lists', weight: 1.4, holds: listed },
  { id: 'weak', words: 'a word with other meanings', weight: 0.1, holds: weak },
  { id: 'wn-low', words: 'WordNet: seldom a thing', weight: -0.9, holds: (k) => tail(k) && k.share <= 3 },
  {
    id: 'wn-mid',
    words: 'WordNet: often a thing',
    weight: -0.1,
    holds: (k) => tail(k) && k.share >= 4 && k.share <= 6,
  },
  { id: 'wn-high', words: 'WordNet: a thing', weight: 1.1, holds: (k) => tail(k) && k.share >= 7 },
  { id: 'unknown', words: 'a word of no list', weight: -1.0, holds: unknown },
  {
    id: 'wn-person',
    words: 'WordNet: a kind of person',
    weight: -0.8,
    holds: (k) => tail(k) && k.letters.startsWith('x'),
  },
  {
    id: 'wn-person-idle',
    words: 'WordNet: a person who does nothing here',
    weight: 0.1,
    holds: (k, s) => tail(k) && k.letters.startsWith('x') && !s.use.actsAsPerson,
  },
  { id: 'of-contents', words: 'another thing is full of it', weight: -1.8, holds: (_, s) => s.words.ofContents },
  { id: 'handled', words: 'somebody handles it', weight: 1.6, holds: (_, s) => s.use.handled },
  {
    id: 'handled-weak',
    words: 'a word with other meanings is handled',
    weight: 0.6,
    holds: (k, s) => weak(k) && s.use.handled,
  },
  { id: 'handled-tail', words: 'an uncommon word is handled', weight: 0.1, holds: (k, s) => tail(k) && s.use.handled },
  {
    id: 'handled-unknown',
    words: 'a word of no list is handled or worn',
    weight: 0.1,
    holds: (k, s) => unknown(k) && (s.use.handled || s.use.instrument || s.use.held || s.use.verb === 'wear'),
  },
  { id: 'instrument', words: 'something is done with it', weight: 1.7, holds: (_, s) => s.use.instrument },
  { id: 'held', words: 'it is held or on a body', weight: 0.8, holds: (_, s) => s.use.held },
  { id: 'worn', words: 'it is worn', weight: 2.1, holds: (k, s) => s.use.worn && k.letters.includes('c') },
  { id: 'owned', words: 'it belongs to somebody', weight: -0.5, holds: (_, s) => s.words.owned },
  { id: 'other-object', words: 'something is done to it', weight: 0.3, holds: (_, s) => s.use.objectOfOther },
  { id: 'doer', words: 'it does something', weight: 1.9, holds: (_, s) => s.use.subjectOfDeed },
  {
    id: 'doer-weak',
    words: 'a word with other meanings does something',
    weight: -0.2,
    holds: (k, s) => weak(k) && s.use.subjectOfDeed,
  },
  {
    id: 'doer-tail',
    words: 'an uncommon word does something',
    weight: -0.1,
    holds: (k, s) => tail(k) && s.use.subjectOfDeed,
  },
  { id: 'standing', words: 'it stands there', weight: 0.6, holds: (_, s) => s.use.standing },
  { id: 'placed', words: 'it tells where', weight: 0.8, holds: (_, s) => s.use.placed },
  {
    id: 'placed-weak',
    words: 'a word with other meanings tells where',
    weight: -1.8,
    holds: (k, s) => weak(k) && s.use.placed && !s.words.ofQuantity,
  },
  { id: 'placed-tail', words: 'an uncommon word tells where', weight: -0.3, holds: (k, s) => tail(k) && s.use.placed },
  { id: 'fragment', words: 'it stands as a line of its own', weight: 0.2, holds: (_, s) => s.words.fragment },
  { id: 'a', words: 'it comes with "a"', weight: 0.1, holds: (_, s) => s.words.article === 'a' },
  { id: 'the', words: 'it comes with "the"', weight: -0.5, holds: (_, s) => s.words.article === 'the' },
  { id: 'number', words: 'it is counted', weight: -0.3, holds: (_, s) => s.words.article === 'number' },
  { id: 'bare', words: 'it has no article', weight: -1.3, holds: (k, s) => bare(s) && !/^[efsmzuq]/.test(k.letters) },
  {
    id: 'bare-weak',
    words: 'a word with other meanings has no article',
    weight: 0.0,
    holds: (k, s) => weak(k) && bare(s),
  },
  { id: 'plural', words: 'there are several', weight: -0.5, holds: (_, s) => s.words.plural },
  { id: 'state', words: 'its state is told', weight: 0.6, holds: (_, s) => s.words.state },
  { id: 'material', words: 'its material is told', weight: 1.3, holds: (_, s) => s.words.material },
  { id: 'simile', words: 'a comparison', weight: -4.5, holds: (_, s) => s.words.simile },
  { id: 'negated', words: 'it is said to be absent', weight: -4, holds: (_, s) => s.words.negated },
  { id: 'spoken-of', words: 'it is only spoken or thought of', weight: -3.5, holds: (_, s) => s.use.spokenOf },
  { id: 'unreal', words: 'it may or may not happen', weight: -1.2, holds: (_, s) => s.use.unreal },
  { id: 'of-nothing', words: 'a picture or a smell of it', weight: -3.5, holds: (_, s) => s.words.ofNothing },
  { id: 'of-quantity', words: 'it is measured', weight: 0.7, holds: (_, s) => s.words.ofQuantity },
  { id: 'of-part', words: 'a part of it is there', weight: 1.2, holds: (_, s) => s.words.ofPart },
  { id: 'of-other', words: 'it only tells what another thing is of', weight: -1.7, holds: (_, s) => s.words.ofOther },
  { id: 'colon', words: 'it stands in a list after a colon', weight: 0.9, holds: (_, s) => s.words.afterColon },
  {
    id: 'fragment-weak',
    words: 'a word with other meanings stands as a line of its own',
    weight: -0.2,
    holds: (k, s) => weak(k) && s.words.fragment,
  },
  { id: 'listed-with', words: 'it is listed with another', weight: 0.3, holds: (_, s) => s.words.listed },
  { id: 'capitals', words: 'the writer put it in capitals', weight: 1.5, holds: (_, s) => s.words.capitals },
  { id: 'complement', words: 'it is said of something else', weight: -2.1, holds: (_, s) => s.words.complement },
  { id: 'likened', words: 'a person is likened to it', weight: -4, holds: (_, s) => s.words.likened },
  { id: 'surface', words: 'it is a surface', weight: -3, holds: (_, s) => s.words.surface },
  { id: 'abstract', words: 'its clause tells of no picture', weight: -1.5, holds: (_, s) => s.words.abstract },
];

/** Where the odds begin. */
export const base = 0.2;

/** The rules that hold, in the order of the table, and the confidence that they give, 0 to 1. */
export function weighEvidence(
  kind: Kind,
  signals: Signals,
): { readonly confidence: number; readonly fired: readonly Rule[] } {
  const fired: Rule[] = [];
  let odds = base;
  for (const rule of rules) {
    if (!rule.holds(kind, signals)) continue;
    fired.push(rule);
    odds += rule.weight;
  }
  return { confidence: 1 / (1 + Math.exp(-odds)), fired };
}
