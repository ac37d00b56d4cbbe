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
const doubtful = (kind: Kind) => kind.source !== 'list';

/** The rules; their weights are fitted to sentences that people have broken down. */
export const rules: readonly Rule[] = [
  { id: 'list', words: 'a thing of our lists', weight: 2.2, holds: listed },
  { id: 'weak', words: 'a word with other meanings', weight: -1.2, holds: (kind) => kind.source === 'weak' },
  {
    id: 'wn-low',
    words: 'WordNet: seldom a thing',
    weight: -3,
    holds: (kind) => kind.source === 'wordnet' && kind.share <= 3,
  },
  {
    id: 'wn-mid',
    words: 'WordNet: often a thing',
    weight: -1.2,
    holds: (kind) => kind.source === 'wordnet' && kind.share >= 4 && kind.share <= 6,
  },
  {
    id: 'wn-high',
    words: 'WordNet: a thing',
    weight: 0,
    holds: (kind) => kind.source === 'wordnet' && kind.share >= 7,
  },
  { id: 'unknown', words: 'a word of no list', weight: -4, holds: (kind) => kind.source === 'unknown' },
  { id: 'handled', words: 'somebody handles it', weight: 1.8, holds: (_, s) => s.handled },
  { id: 'instrument', words: 'something is done with it', weight: 1.5, holds: (_, s) => s.instrument },
  { id: 'held', words: 'it is held or on a body', weight: 1.8, holds: (_, s) => s.held },
  { id: 'worn', words: 'it is worn', weight: 1, holds: (kind, s) => s.worn && kind.letters.includes('c') },
  { id: 'owned', words: 'it belongs to somebody', weight: 0.5, holds: (_, s) => s.owned },
  { id: 'other-object', words: 'something is done to it', weight: 0.3, holds: (_, s) => s.objectOfOther },
  { id: 'doer', words: 'it does something', weight: 0.5, holds: (_, s) => s.subjectOfDeed },
  {
    id: 'doer-doubtful',
    words: 'a doubtful word does something',
    weight: -0.3,
    holds: (kind, s) => doubtful(kind) && s.subjectOfDeed,
  },
  { id: 'standing', words: 'it stands there', weight: 0.5, holds: (_, s) => s.standing },
  { id: 'placed', words: 'it tells where', weight: -0.3, holds: (_, s) => s.placed },
  {
    id: 'placed-doubtful',
    words: 'a doubtful word tells where',
    weight: -0.5,
    holds: (kind, s) => doubtful(kind) && s.placed,
  },
  { id: 'fragment', words: 'it stands as a line of its own', weight: 0.8, holds: (_, s) => s.fragment },
  { id: 'a', words: 'it comes with "a"', weight: 0.3, holds: (_, s) => s.article === 'a' },
  { id: 'number', words: 'it is counted', weight: 0.4, holds: (_, s) => s.article === 'number' },
  {
    id: 'bare',
    words: 'it has no article',
    weight: -0.6,
    holds: (_, s) => s.article === 'none' && !s.plural && !s.owned,
  },
  { id: 'plural', words: 'there are several', weight: 0.2, holds: (_, s) => s.plural },
  { id: 'state', words: 'its state is told', weight: 0.6, holds: (_, s) => s.state },
  { id: 'material', words: 'its material is told', weight: 0.8, holds: (_, s) => s.material },
  { id: 'simile', words: 'a comparison', weight: -5, holds: (_, s) => s.simile },
  { id: 'negated', words: 'it is said to be absent', weight: -4, holds: (_, s) => s.negated },
  { id: 'spoken-of', words: 'it is only spoken or thought of', weight: -1.5, holds: (_, s) => s.spokenOf },
  { id: 'unreal', words: 'it may or may not happen', weight: -0.7, holds: (_, s) => s.unreal },
  { id: 'of-nothing', words: 'a picture or a smell of it', weight: -3, holds: (_, s) => s.ofNothing },
  { id: 'of-quantity', words: 'it is measured', weight: 0.6, holds: (_, s) => s.ofQuantity },
  { id: 'of-other', words: 'it only tells what another thing is of', weight: -0.6, holds: (_, s) => s.ofOther },
  { id: 'listed-with', words: 'it is listed with another', weight: 0.2, holds: (_, s) => s.listed },
  { id: 'capitals', words: 'the writer put it in capitals', weight: 1.5, holds: (_, s) => s.capitals },
];

const base = -0.6;

/** The rules that hold, strongest first, and the confidence that they give, 0 to 1. */
export function weighEvidence(
  kind: Kind,
  signals: Signals,
): { readonly confidence: number; readonly fired: readonly Rule[] } {
  const fired = rules.filter((rule) => rule.holds(kind, signals));
  const odds = fired.reduce((sum, rule) => sum + rule.weight, base);
  return { confidence: 1 / (1 + Math.exp(-odds)), fired };
}
