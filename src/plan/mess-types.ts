import type { Slot } from './slot-types.js';

/** A scene that spoils clothes or things is shot before a scene that wants them clean. */
export interface MessFirst {
  readonly scene: Slot;
  /** The scenes shot after it that want them clean, in shooting order. */
  readonly clean: readonly Slot[];
  /** Ids of the things and garments. */
  readonly things: readonly string[];
  /** True when the state of the thing itself says so; false when something near it may spoil it: a question. */
  readonly sure: boolean;
  readonly words: string;
}
