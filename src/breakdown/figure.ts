import { nightWear, oneAtATime } from '../trade/outer-garments.js';
import type { Outfit } from './closet.js';
import type { DressedPiece } from './costume-plot.js';
import type { Identity } from './element-register.js';
import { partsOf, sameThing } from './same-thing.js';

/** One person's clothes while a scene is read. */
export interface Figure {
  readonly person: string;
  readonly firstSeen: number | null;
  readonly outfit: Outfit;
  /** True when no earlier scene has shown this change yet. */
  readonly fresh: boolean;
  change: number;
  changeOut: number;
  /** True when a note of this scene gives the whole list. */
  listedHere: boolean;
  readonly pieces: Map<Identity, DressedPiece>;
}

/** What happened to a garment, with what happens next. */
export function addAction(before: string | null, action: string): string {
  return before ? `${before}, then ${action}` : action;
}

/** True for two garments of one kind that differ: a red dress and a blue one. */
export function areRivals(a: Identity, b: Identity): boolean {
  const [first, second] = [partsOf(a.name), partsOf(b.name)];
  if (
    first.head !== second.head ||
    !oneAtATime.has(first.head) ||
    first.modifiers.length === 0 ||
    second.modifiers.length === 0
  )
    return false;
  return !sameThing(a.name, b.name);
}

/** True for what people wear in bed. */
export function isForBed(identity: Identity): boolean {
  return nightWear.has(partsOf(identity.name).head) || /\bdressing gown$/i.test(identity.name);
}
