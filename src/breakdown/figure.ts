import { nightWear, oneAtATime } from '../trade/outer-garments.js';
import type { Outfit } from './closet.js';
import type { DressedPiece } from './costume-plot.js';
import type { Identity } from './element-register.js';
import type { SaidChange } from './said-change.js';
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
  /** True when the words say that a change which a note tells lies before this scene. */
  changedBefore: boolean;
  readonly pieces: Map<Identity, DressedPiece>;
  /** What is not worn from some point of this scene on, though it may have been before. */
  readonly leftOff: Map<Identity, DressedPiece>;
}

/** A person as they come into a scene. */
export function makeFigure(
  person: string,
  firstSeen: number | null,
  outfit: Outfit,
  pieces: Map<Identity, DressedPiece>,
): Figure {
  const { change, used } = outfit;
  return {
    person,
    firstSeen,
    outfit,
    fresh: !used,
    change,
    changeOut: change,
    listedHere: false,
    changedBefore: false,
    pieces,
    leftOff: new Map(),
  };
}

/** What happened to a garment, with what happens next. */
export function addAction(before: string | null, action: string): string {
  return before ? `${before}, then ${action}` : action;
}

/**
 * What of the clothes worn cannot be on together with a garment: what the words say is changed, all day clothes with night wear, else
 * what is of its kind.
 */
export function rivalsOf(
  identity: Identity,
  said: SaidChange | null,
  worn: readonly DressedPiece[],
): readonly DressedPiece[] {
  const on = worn.filter(({ absent }) => !absent);
  if (said === 'all') return on;
  if (said === 'one') return on.filter((piece) => partsOf(piece.identity.name).head === partsOf(identity.name).head);
  if (isForBed(identity)) return on.some((piece) => isForBed(piece.identity)) ? [] : on;
  return on.filter((piece) => piece.known === 'found' && areRivals(piece.identity, identity));
}

/** True for two garments of one kind that differ: a red dress and a blue one. */
function areRivals(a: Identity, b: Identity): boolean {
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
function isForBed(identity: Identity): boolean {
  return nightWear.has(partsOf(identity.name).head) || /\bdressing gown$/i.test(identity.name);
}
