import type { Wears } from '../breakdown/types.js';
import type { CostumeRush } from './day-types.js';
import { dressingMinutes, minutesBetween } from './dressing-time.js';
import type { PlacedScene } from './light-windows.js';
import type { Slot } from './slot-types.js';

/** Changes of clothes between two scenes of one day, and dressing after the call, that have less time than they take. `call` is in hours as slots are. */
export function findRushes(placed: readonly PlacedScene[], call: number): CostumeRush[] {
  const people = new Set(placed.flatMap(({ scene }) => scene.wears.map((wears) => wears.person)));
  return [...people].flatMap((person) => {
    const worn = placed.flatMap((one) => {
      const wears = one.scene.wears.find((each) => each.person === person);
      return wears ? [{ ...one, wears }] : [];
    });
    const first = worn[0];
    const dressing = first ? rushFromCall(person, first, call) : [];
    const changes = worn.slice(1).flatMap((later, index) => {
      const earlier = worn[index] as (typeof worn)[number];
      const needed = minutesBetween(earlier.wears, later.wears);
      const there =
        earlier.slot.end === null || later.slot.start === null
          ? 0
          : Math.round((later.slot.start - workEnds(earlier.slot, earlier.slot.end)) * 60);
      return needed > there
        ? [{ person, from: earlier.slot, to: later.slot, minutesNeeded: needed, minutesThere: there }]
        : [];
    });
    return [...dressing, ...changes];
  });
}

/** The hour at which the work of a scene is done: its slot is stretched where the day has time to spare. */
function workEnds({ start, minutes }: Slot, end: number): number {
  return start === null ? end : Math.min(end, start + minutes / 60);
}

/** Whoever is in a scene soon after the call must be dressed by then. */
function rushFromCall(
  person: string,
  { slot, wears }: PlacedScene & { readonly wears: Wears },
  call: number,
): CostumeRush[] {
  const there = slot.start === null ? null : Math.round((slot.start - call) * 60);
  if (there === null) return [];
  const needed = dressingMinutes(wears);
  return needed > there ? [{ person, from: null, to: slot, minutesNeeded: needed, minutesThere: there }] : [];
}
