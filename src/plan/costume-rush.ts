import type { Wears } from '../breakdown/types.js';
import { changeMinutes } from '../trade/shooting-times.js';
import { findStateChanges } from '../trade/state-changes.js';
import type { CostumeRush } from './day-types.js';
import type { PlacedScene } from './light-windows.js';

/** Changes of clothes between two scenes of one day that leave less time than they take. */
export function findRushes(placed: readonly PlacedScene[]): CostumeRush[] {
  const people = new Set(placed.flatMap(({ scene }) => scene.wears.map((wears) => wears.person)));
  return [...people].flatMap((person) => {
    const worn = placed.flatMap((one) => {
      const wears = one.scene.wears.find((each) => each.person === person);
      return wears ? [{ ...one, wears }] : [];
    });
    return worn.slice(1).flatMap((later, index) => {
      const earlier = worn[index] as (typeof worn)[number];
      const needed = minutesBetween(earlier.wears, later.wears);
      const there =
        earlier.slot.end === null || later.slot.start === null
          ? 0
          : Math.round((later.slot.start - earlier.slot.end) * 60);
      return needed > there
        ? [{ person, from: earlier.slot, to: later.slot, minutesNeeded: needed, minutesThere: there }]
        : [];
    });
  });
}

/** Minutes to dress a person from the end of one scene for the start of another: none when nothing differs. */
export function minutesBetween(from: Wears, to: Wears): number {
  const left = new Map(from.garments.filter((one) => !one.absent).map((one) => [one.id, one.stateOut ?? one.stateIn]));
  const next = to.garments.filter((one) => !one.absent);
  const newOnes = next.filter((one) => !left.has(one.id));
  const altered = next.filter((one) => left.has(one.id) && left.get(one.id) !== one.stateIn);
  const gone = [...left.keys()].filter((id) => !next.some((one) => one.id === id)).length;
  const states = altered.flatMap((one) => [one.stateIn, left.get(one.id) ?? null]).filter((state) => state !== null);
  const messy = states.some((state) =>
    findStateChanges(state).some((row) => row.kind === 'wet' || row.kind === 'bloody'),
  );
  if (messy) return changeMinutes.bloodOrWig;
  if (newOnes.length === 0 && altered.length === 0 && gone === 0) return 0;
  return newOnes.length * 2 > next.length ? changeMinutes.full : changeMinutes.simple;
}
