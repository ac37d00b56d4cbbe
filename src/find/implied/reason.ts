import type { Sentence } from '../reading.js';
import type { HazardFind } from '../types.js';

/** One reason to raise a hazard; `rank` orders reasons, the lowest first. */
export interface Reason extends Omit<HazardFind, 'children'> {
  readonly rank: number;
  /** The sentence of the action that holds the words; null for words of any other kind. */
  readonly sentence: Sentence | null;
  /** For the hazard of children: who it is, by name or in the words of the script; null for any other hazard. */
  readonly child: string | null;
}
