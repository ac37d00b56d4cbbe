import type { Wears } from '../breakdown/types.js';
import { changeMinutes } from '../trade/shooting-times.js';
import { findStateChanges } from '../trade/state-changes.js';

/** Minutes to dress a person for a first scene: longer for wet or bloody clothes; none when no clothes are told. */
export function dressingMinutes({ garments }: Wears): number {
  const worn = garments.filter((one) => !one.absent);
  if (worn.length === 0) return 0;
  return worn.some((one) => isMessy(one.stateIn)) ? changeMinutes.bloodOrWig : changeMinutes.full;
}

/** True for a state in which clothes are put on slowly and with help. */
export function isMessy(state: string | null): boolean {
  return state !== null && findStateChanges(state).some((row) => row.kind === 'wet' || row.kind === 'bloody');
}

/** Minutes to dress a person from the end of one scene for the start of another: none when nothing differs, or when one of the two looks is not told. */
export function minutesBetween(from: Wears, to: Wears): number {
  if (from.garments.length === 0 || to.garments.length === 0) return 0;
  const left = new Map(from.garments.filter((one) => !one.absent).map((one) => [one.id, one.stateOut ?? one.stateIn]));
  const next = to.garments.filter((one) => !one.absent);
  const newOnes = next.filter((one) => !left.has(one.id));
  const altered = next.filter((one) => left.has(one.id) && left.get(one.id) !== one.stateIn);
  const gone = [...left.keys()].filter((id) => !next.some((one) => one.id === id)).length;
  const states = altered.flatMap((one) => [one.stateIn, left.get(one.id) ?? null]).filter((state) => state !== null);
  if (states.some(isMessy)) return changeMinutes.bloodOrWig;
  if (newOnes.length === 0 && altered.length === 0 && gone === 0) return 0;
  return newOnes.length * 2 > next.length ? changeMinutes.full : changeMinutes.simple;
}
