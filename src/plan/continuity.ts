import { foldName } from '../base/slug.js';
import type { Breakdown } from '../breakdown/types.js';
import { categoryOf } from '../trade/categories.js';
import type { ContinuityTrack, Duty, TrackEntry } from './continuity-types.js';
import type { ShootingOrder } from './shooting-order.js';
import { type Appearance, listAppearances } from './uses.js';

/**
 * The life of everything that is in more than one scene, in story order and in shooting order. Between two neighbours in the
 * story that show the same state, the one shot first sets what the other must match. Flashbacks have neighbours among
 * flashbacks only. A garment has a life apart from whoever wears it; that it is missing is an entry too.
 */
export function trackContinuity(breakdown: Breakdown, order: ShootingOrder): ContinuityTrack[] {
  const appearances = listAppearances(breakdown);
  const names = nameThings(breakdown);
  // A sound or a stunt has no looks to match.
  const unseen = new Set(breakdown.elements.filter((one) => !categoryOf(one.category).bought).map((one) => one.id));
  const seen = new Set([...names.keys()].filter((id) => !unseen.has(id)));
  return [...appearances]
    .filter(([id, list]) => list.length > 1 && seen.has(id))
    .map(([id, list]) => makeTrack(id, names.get(id) ?? id, list, order))
    .sort((a, b) => (a.inStory[0] as TrackEntry).storyOrder - (b.inStory[0] as TrackEntry).storyOrder);
}

function makeTrack(id: string, name: string, list: readonly Appearance[], order: ShootingOrder): ContinuityTrack {
  const drafts = list.map((one): TrackEntry => {
    const slot = order.byScene.get(one.scene.id);
    if (!slot) throw new Error(`no slot for scene ${one.scene.id}`);
    return {
      slot,
      storyOrder: one.scene.order,
      storyDay: one.scene.storyDay.label,
      stateIn: one.stateIn,
      stateOut: one.stateOut ?? one.stateIn,
      by: one.by,
      worn: one.worn,
      absent: one.absent,
      action: one.action,
      duties: [],
    };
  });
  const inStory = drafts.map((entry, index) => ({ ...entry, duties: dutiesOf(drafts, index) }));
  const inShooting = [...inStory].sort((a, b) => a.slot.index - b.slot.index);
  return { id, name, garment: list.some((one) => one.worn || one.absent), inStory, inShooting };
}

function dutiesOf(entries: readonly TrackEntry[], index: number): Duty[] {
  const entry = entries[index] as TrackEntry;
  const isSeries = (other: TrackEntry) => seriesOf(other) === seriesOf(entry);
  const before = entries.slice(0, index).filter(isSeries).at(-1);
  const after = entries.slice(index + 1).find(isSeries);
  return [
    ...(before && sameState(before, before.stateOut, entry, entry.stateIn) ? [duty(entry, before, entry.stateIn)] : []),
    ...(after && sameState(entry, entry.stateOut, after, after.stateIn) ? [duty(entry, after, entry.stateOut)] : []),
  ];
}

/** The main days are one series; each flashback is one of its own. */
function seriesOf({ storyDay }: TrackEntry): string {
  return storyDay.startsWith('D') ? 'D' : storyDay;
}

function duty(entry: TrackEntry, other: TrackEntry, state: string | null): Duty {
  const what = entry.absent ? 'not worn' : (state ?? 'as it looks');
  return { kind: other.slot.index < entry.slot.index ? 'match' : 'sets', scene: other.slot, what };
}

/** True when the later scene begins as the earlier one ends: in state, and for a garment on whose body. */
function sameState(a: TrackEntry, stateA: string | null, b: TrackEntry, stateB: string | null): boolean {
  if (a.absent || b.absent) return a.absent && b.absent;
  if (!sameBody(a, b)) return false;
  if (stateA === null || stateB === null) return stateA === stateB;
  return foldName(stateA) === foldName(stateB);
}

/** Where a garment is left is where the next scene finds it; a thing in hand may lie anywhere between two scenes. */
function sameBody(a: TrackEntry, b: TrackEntry): boolean {
  if (!a.worn && !b.worn) return true;
  const [left, found] = [bodyAfter(a), bodyBefore(b)];
  return left === null || found === null || left === found;
}

/** On whom a garment is when the scene ends: names, `nobody`, or null when nobody can tell. */
function bodyAfter({ worn, by, action }: TrackEntry): string | null {
  if (/taken off$/.test(action ?? '')) return 'nobody';
  const handed = /handed to (.+)$/.exec(action ?? '')?.[1];
  return handed ?? (worn ? by.join(', ') : null);
}

function bodyBefore({ worn, by, action }: TrackEntry): string | null {
  if (/^put on/.test(action ?? '')) return 'nobody';
  return worn ? by.join(', ') : null;
}

function nameThings(breakdown: Breakdown): ReadonlyMap<string, string> {
  const garments = breakdown.scenes.flatMap((scene) =>
    scene.wears.flatMap((wears) => wears.garments.map((one) => [one.id, one.name] as const)),
  );
  return new Map([...garments, ...breakdown.elements.map((one) => [one.id, one.name] as const)]);
}
