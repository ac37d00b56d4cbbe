import type { Breakdown, BreakdownScene, PlaceEntry, PlaceSet, SceneElement } from '../../breakdown/types.js';

type Thing = PlaceEntry['dressing'][number];

/** What stands in one room as a rule, and where a scene departs from it. */
export interface RoomDressing {
  readonly set: PlaceSet;
  readonly standing: readonly Thing[];
  readonly departures: readonly Departure[];
}

/** One scene's exceptions: taken away, added, and looking different. */
export interface Departure {
  readonly scene: string;
  readonly minus: readonly string[];
  readonly plus: readonly string[];
  readonly changed: readonly string[];
}

/** The rooms of a place with their dressing: as a rule stands there what is there in at least half of the scenes of the room. */
export function dressRooms(place: PlaceEntry, breakdown: Breakdown): RoomDressing[] {
  const scenes = new Map(breakdown.scenes.map((scene) => [scene.id, scene]));
  return place.sets.map((set) => {
    const counts = (thing: Thing) => set.scenes.filter((id) => thing.scenes.includes(id)).length;
    const here = place.dressing.filter((thing) => counts(thing) > 0);
    const standing = here.filter((thing) => counts(thing) * 2 >= set.scenes.length);
    const departures = set.scenes.flatMap((id) => departureOf(scenes.get(id), here, standing));
    return { set, standing, departures };
  });
}

/** The room of a scene with its dressing, or null when the place is unknown. */
export function roomOf(scene: BreakdownScene, breakdown: Breakdown): RoomDressing | null {
  const place = breakdown.places.find((one) => one.id === scene.placeId);
  return place ? (dressRooms(place, breakdown).find(({ set }) => set.scenes.includes(scene.id)) ?? null) : null;
}

function departureOf(
  scene: BreakdownScene | undefined,
  here: readonly Thing[],
  standing: readonly Thing[],
): Departure[] {
  if (!scene) return [];
  const isThere = (thing: Thing) => thing.scenes.includes(scene.id);
  const minus = standing.filter((thing) => !isThere(thing)).map((thing) => thing.name);
  const plus = here.filter((thing) => isThere(thing) && !standing.includes(thing)).map((thing) => thing.name);
  const ids = new Set(here.map((thing) => thing.id));
  const changed = scene.elements.filter((one) => ids.has(one.id)).flatMap(lookWords);
  return minus.length + plus.length + changed.length > 0 ? [{ scene: scene.id, minus, plus, changed }] : [];
}

function lookWords({ name, stateIn, stateOut }: SceneElement): string[] {
  if (stateIn === null && stateOut === null) return [];
  if (stateOut === null || stateOut === stateIn) return [`${name}: ${stateIn}`];
  return [`${name}: ${stateIn ?? ''} → ${stateOut}`.replace(':  →', ': →')];
}

/** `MINUS wall telephone; PLUS calendar; clock: stopped`. */
export function departureWords({ minus, plus, changed }: Omit<Departure, 'scene'>): string {
  return [
    ...(minus.length > 0 ? [`MINUS ${minus.join(', ')}`] : []),
    ...(plus.length > 0 ? [`PLUS ${plus.join(', ')}`] : []),
    ...changed,
  ].join('; ');
}
