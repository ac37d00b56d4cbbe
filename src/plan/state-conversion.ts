import { foldName } from '../base/slug.js';
import type { BookElement } from '../book/types.js';
import { findDryingTime, isCloth, isPaper } from '../trade/drying-times.js';
import { findStateChanges, pressingHours, type StateChange } from '../trade/state-changes.js';

/** What must be known of a thing to reckon how long it takes to bring it from one state to another. */
export interface ConversionGround {
  readonly name: string;
  readonly book: BookElement | null;
  /** Is there a drier machine? */
  readonly drier: boolean;
  /** True for clothes, whatever their name tells of the cloth. */
  readonly worn: boolean;
}

/** What must be known of a need or an entry; `drier`: is there a drier machine? */
export function conversionGround(
  { name, category }: { readonly name: string; readonly category: string | null },
  book: BookElement | null,
  drier: boolean,
): ConversionGround {
  return { name, book, drier, worn: category === 'costumes' };
}

/** Hours that a conversion takes at best and at worst; `wayBack` tells whether it can be undone later. */
export interface ConversionTime {
  readonly low: number;
  readonly high: number;
  readonly wayBack: boolean;
  /** True when no word of a state is known and the hours are a guess. */
  readonly guessed: boolean;
}

/** When a material is not known, it may be any of these: hours from the quickest cloth to the slowest. */
const unknownMaterial = { low: 8, high: 36 };

/**
 * Hours to bring a copy from one state to another between scenes, or null when there is no way: nothing torn becomes
 * whole. `forward` says that the story goes the same way; a state whose words are unknown is taken to be reachable
 * forward, and backward only at best.
 */
export function reckonConversion(
  from: string | null,
  to: string | null,
  forward: boolean,
  ground: ConversionGround,
): ConversionTime | null {
  if (from === to || (from !== null && to !== null && foldName(from) === foldName(to))) {
    return { low: 0, high: 0, wayBack: true, guessed: false };
  }
  const [leaving, entering] = [kindsOf(from), kindsOf(to)];
  // Soaked paper goes on drying and wavy in the story; it does not go back to what it was.
  const driesOn = forward && to !== null && !entering.some((row) => row.kind === 'placed' && isAsNew(to));
  const undo = leaving.filter((row) => !entering.includes(row)).map((row) => undoHours(row, from, ground, driesOn));
  const stays = leaving.filter((row) => entering.includes(row));
  if (undo.some((hours) => hours === null)) return null;
  // Torn at the sleeve becomes torn in half, never the other way.
  if (!forward && stays.some((row) => undoHours(row, from, ground) === null)) return null;
  const guessed = isUnknown(from, leaving, ground) || isUnknown(to, entering, ground);
  const reach = entering.filter((row) => !leaving.includes(row)).map((row) => reachHours(row, to, ground));
  const made = to === null ? null : bookState(to, ground)?.makeHours;
  const reachSum = made ?? reach.reduce((sum, hours) => sum + hours, 0);
  const low = undo.reduce((sum, hours) => sum + (hours?.low ?? 0), reachSum);
  const high = undo.reduce((sum, hours) => sum + (hours?.high ?? 0), reachSum);
  const wayBack = entering.every((row) => leaving.includes(row) || undoHours(row, to, ground) !== null);
  return { low, high: guessed && !forward ? Number.POSITIVE_INFINITY : high, wayBack, guessed };
}

function isAsNew(state: string): boolean {
  return /\b(?:new|clean|whole|intact|fresh)\b/i.test(state);
}

function kindsOf(state: string | null): readonly StateChange[] {
  return state === null ? [] : findStateChanges(state);
}

function bookState(state: string, ground: ConversionGround) {
  return ground.book?.states.find((one) => foldName(one.state) === foldName(state)) ?? null;
}

function isUnknown(state: string | null, kinds: readonly StateChange[], ground: ConversionGround): boolean {
  return state !== null && kinds.length === 0 && bookState(state, ground)?.undo == null;
}

function undoHours(
  row: StateChange,
  state: string | null,
  ground: ConversionGround,
  driesOn = false,
): { low: number; high: number } | null {
  const said = state === null ? null : bookState(state, ground)?.undo;
  if (said === 'never') return null;
  if (typeof said === 'number') return { low: said, high: said };
  const material = ground.book?.material ?? null;
  if (row.kind === 'crumpled' && isPressed(material, ground.name, ground.worn)) return pressingHours;
  if (row.undo !== 'drying') return row.undo;
  if (!driesOn && isPaper(material, ground.name)) return null;
  const drying = findDryingTime(material, ground.name);
  if (!drying) return unknownMaterial;
  if (ground.drier && drying.machine !== null) return { low: drying.machine, high: drying.machine };
  return { low: drying.low, high: drying.high };
}

/** True for what an iron makes as it was: cloth, and clothes of which nobody told that they are of anything else. */
export function isPressed(material: string | null, name: string, worn: boolean): boolean {
  return isCloth(material, name) || (worn && findDryingTime(material, name) === null);
}

function reachHours(row: StateChange, state: string | null, ground: ConversionGround): number {
  return (state === null ? null : bookState(state, ground)?.makeHours) ?? row.reachHours;
}
