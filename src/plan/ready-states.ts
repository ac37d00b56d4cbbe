import { addDays } from '../base/calendar-date.js';
import { findStateChanges } from '../trade/state-changes.js';
import { copyWords } from './copy-words.js';
import type { Need } from './need-types.js';
import { nameSlot } from './shooting-order.js';
import type { Slot } from './slot-types.js';

/** Copies that must look as a later part of the story leaves them before any scene that does so is shot. */
export interface ReadyState {
  readonly element: string;
  readonly copies: readonly string[];
  readonly state: string;
  readonly slot: Slot;
  /** What to do, in words. */
  readonly words: string;
}

/** Which copies somebody must wet, tear or dirty before the day, for no scene shot earlier does it. What is only opened, lit or turned is done on the day. */
export function listReadyStates(needs: readonly Need[]): ReadyState[] {
  return needs.filter((need) => !need.usedUp && !need.uncounted).flatMap(readyStatesOf);
}

function readyStatesOf({ id, name, uses, copies }: Need): ReadyState[] {
  const inStory = [...uses].sort((a, b) => a.storyOrder - b.storyOrder);
  const begins = inStory[0]?.stateIn ?? null;
  const known = new Set<string>();
  return uses.flatMap((use, index): ReadyState[] => {
    const fresh = (copies[index] ?? []).filter((copy) => !known.has(copy));
    for (const copy of fresh) known.add(copy);
    const { slot, stateIn: state } = use;
    if (fresh.length === 0 || state === null || state === begins || slot.date === null || isQuick(state)) return [];
    const words = `${name}: have ${copyWords(fresh)} ready ${state} for ${nameSlot(slot)}: no scene shot before leaves it so`;
    return [{ element: id, copies: fresh, state, slot, words }];
  });
}

function isQuick(state: string): boolean {
  const changes = findStateChanges(state);
  return changes.length > 0 && changes.every((row) => row.onCamera === 'reset');
}

/** The day before the scene: what is wet or sticky does not keep. */
export function readyBy({ slot }: ReadyState): Slot['date'] {
  return slot.date === null ? null : addDays(slot.date, -1);
}
