import type { Slot } from './slot-types.js';

/** What a scene owes to its neighbours in the story, seen from the order of shooting. */
export type Duty =
  /** The neighbour is shot before: copy it. */
  | { readonly kind: 'match'; readonly scene: Slot; readonly what: string }
  /** The neighbour is shot later: what is decided here binds it. */
  | { readonly kind: 'sets'; readonly scene: Slot; readonly what: string };

/** One scene in the life of a thing or garment. */
export interface TrackEntry {
  readonly slot: Slot;
  readonly storyOrder: number;
  readonly storyDay: string;
  readonly stateIn: string | null;
  readonly stateOut: string | null;
  /** Who has or wears it; empty when it is somewhere by itself. */
  readonly by: readonly string[];
  readonly worn: boolean;
  /** True for a garment whose absence matters here. */
  readonly absent: boolean;
  readonly action: string | null;
  readonly duties: readonly Duty[];
}

/** The life of one thing, in both orders. */
export interface ContinuityTrack {
  readonly id: string;
  readonly name: string;
  readonly garment: boolean;
  readonly inStory: readonly TrackEntry[];
  readonly inShooting: readonly TrackEntry[];
}
