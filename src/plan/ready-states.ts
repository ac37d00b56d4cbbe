import { addDays, type CalendarDate, fromDayNumber } from '../base/calendar-date.js';
import { foldName } from '../base/slug.js';
import { findStateChanges } from '../trade/state-changes.js';
import { formatHours } from './copies.js';
import { copyWords } from './copy-words.js';
import type { Occasion } from './first-need.js';
import type { Need } from './need-types.js';
import { nameSlot } from './shooting-order.js';
import type { Slot } from './slot-types.js';
import { type ConversionGround, reckonConversion } from './state-conversion.js';

/** Copies that must look as a later part of the story leaves them before any scene that does so is shot. */
export interface ReadyState {
  readonly element: string;
  readonly copies: readonly string[];
  readonly state: string;
  readonly slot: Slot;
  /** The last day on which it can be begun. */
  readonly date: CalendarDate;
  /** What to do, in words. */
  readonly words: string;
}

/**
 * Which copies somebody must wet, tear or dirty before the day, for no scene shot earlier does it, and by when: the day before
 * the scene, for what is wet or sticky does not keep, or as much earlier as it must dry. What is only opened, lit or turned is
 * done on the day.
 */
export function listReadyStates(need: Need, ground: ConversionGround): ReadyState[] {
  const { id, name, uses, copies, usedUp, uncounted } = need;
  if (usedUp || uncounted) return [];
  const inStory = [...uses].sort((a, b) => a.storyOrder - b.storyOrder);
  const begins = inStory[0]?.stateIn ?? null;
  const known = new Set<string>();
  return uses.flatMap((use, index): ReadyState[] => {
    const fresh = (copies[index] ?? []).filter((copy) => !known.has(copy));
    for (const copy of fresh) known.add(copy);
    const { slot, stateIn: state } = use;
    if (fresh.length === 0 || state === null || state === begins || slot.date === null || isQuick(state)) return [];
    const hours = hoursToReach(state, ground);
    const date = beginBy(slot, slot.date, hours);
    const time = isLong(date, slot) ? `, and it takes up to ${formatHours(hours)}, drying with it` : '';
    const words = `${name}: have ${copyWords(fresh)} ready ${state} for ${nameSlot(slot)}: no scene shot before leaves it so${time}`;
    return [{ element: id, copies: fresh, state, slot, date, words }];
  });
}

function isQuick(state: string): boolean {
  const changes = findStateChanges(state);
  return changes.length > 0 && changes.every((row) => row.onCamera === 'reset');
}

/** Hours at their worst; what is dried was wet before, unless the book says how long it takes. */
function hoursToReach(state: string, ground: ConversionGround): number {
  const made = ground.book?.states.find((one) => foldName(one.state) === foldName(state))?.makeHours ?? null;
  if (made !== null) return made;
  const from = /\bdried\b/i.test(state) ? 'wet' : null;
  return reckonConversion(from, state, true, ground)?.high ?? 0;
}

/** Nobody knows at which hour of its day it is begun: the hours are counted from the end of that day. */
function beginBy(slot: Slot, date: CalendarDate, hours: number): CalendarDate {
  if (slot.start === null) return addDays(date, -1);
  return addDays(fromDayNumber(Math.floor((slot.start - hours) / 24)), -1);
}

function isLong(date: CalendarDate, { date: shot }: Slot): boolean {
  return shot !== null && date < addDays(shot, -1);
}

/** The days on which a thing must be there before its scenes, to be brought in time into the state they want. */
export function listReadyOccasions(need: Need, ground: ConversionGround): Occasion[] {
  if (ground.book?.ready) return [];
  return listReadyStates(need, ground)
    .filter((one) => isLong(one.date, one.slot))
    .map(({ date, state, slot }) => ({ date, words: `being made ready ${state} for scene ${slot.label}` }));
}
