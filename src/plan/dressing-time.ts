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
