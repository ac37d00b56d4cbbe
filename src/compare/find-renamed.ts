import { matchScenes, type ScenePair } from './match-scenes.js';
import { likenessOfContent, likenessOfPeople, type SceneWords, wordsOf } from './scene-likeness.js';
import type { SceneFacts } from './types.js';

/** An earlier id that no scene or place has any more, and what it seems to be now. */
export interface Renamed {
  readonly from: string;
  readonly to: string;
  /** How paper names it now. */
  readonly label: string;
  /** False when too little is the same, or another one is as like: then nobody may go by it unasked. */
  readonly sure: boolean;
}

/** What goes by a new id in the present draft. */
export interface RenamedNames {
  readonly scenes: readonly Renamed[];
  readonly places: readonly Renamed[];
}

/** Points for what happens (of 4.5) that make a scene the same under any heading; between the same neighbours fewer will do. */
const enough = 2;
const enoughBetweenNeighbours = 1;
/** A rival this near makes it doubtful. */
const rivalShare = 0.75;

/** Finds the scenes and places of an earlier draft that only have a new heading. */
export function findRenamed(before: readonly SceneFacts[], after: readonly SceneFacts[]): RenamedNames {
  const pairs = matchScenes(before, after);
  const ids = { before: new Set(before.map((one) => one.id)), after: new Set(after.map((one) => one.id)) };
  const lost = before.filter((one) => !ids.after.has(one.id));
  const fresh = after.filter((one) => !ids.before.has(one.id));
  const words = new Map([...lost, ...fresh].map((scene) => [scene, wordsOf(scene)]));
  const scenes = lost.flatMap((one): Renamed[] => {
    const other = pairs.find((pair) => pair.before === one)?.after ?? onlyOneThere(one, pairs, fresh);
    if (!other || !fresh.includes(other)) return [];
    return [{ from: one.id, to: other.id, label: other.label, sure: isSure(one, other, lost, fresh, pairs, words) }];
  });
  return { scenes, places: findRenamedPlaces(before, after, pairs, scenes) };
}

function isSure(
  one: SceneFacts,
  other: SceneFacts,
  lost: readonly SceneFacts[],
  fresh: readonly SceneFacts[],
  pairs: readonly ScenePair[],
  words: ReadonlyMap<SceneFacts, SceneWords>,
): boolean {
  const like = (a: SceneFacts, b: SceneFacts) =>
    likenessOfContent(words.get(a) as SceneWords, words.get(b) as SceneWords);
  const content = like(one, other);
  const rivals = [
    ...fresh.filter((scene) => scene !== other).map((scene) => like(one, scene)),
    ...lost.filter((scene) => scene !== one).map((scene) => like(scene, other)),
  ];
  if (Math.max(0, ...rivals) > content * rivalShare) return false;
  if (content >= enough) return true;
  const people = likenessOfPeople(words.get(one) as SceneWords, words.get(other) as SceneWords);
  return content >= enoughBetweenNeighbours && people > 0 && onlyOneThere(one, pairs, fresh, other) === other;
}

/** The one new scene that stands where an earlier one stood, between the same two neighbours; null when there is none, or more. */
function onlyOneThere(
  one: SceneFacts,
  pairs: readonly ScenePair[],
  fresh: readonly SceneFacts[],
  partner: SceneFacts | null = null,
): SceneFacts | null {
  const at = pairs.findIndex((pair) => pair.before === one);
  const isFixed = (pair: ScenePair) =>
    pair.before !== null && pair.after !== null && pair.before !== one && pair.after !== partner;
  let from = at;
  while (from > 0 && !isFixed(pairs[from - 1] as ScenePair)) from--;
  let to = at;
  while (to < pairs.length - 1 && !isFixed(pairs[to + 1] as ScenePair)) to++;
  const gap = pairs.slice(from, to + 1);
  const earlier = gap.filter((pair) => pair.before !== null);
  const later = gap.flatMap((pair) => (pair.after !== null && fresh.includes(pair.after) ? [pair.after] : []));
  return earlier.length === 1 && later.length === 1 ? (later[0] as SceneFacts) : null;
}

/** A place whose scenes all play in one new place now. */
function findRenamedPlaces(
  before: readonly SceneFacts[],
  after: readonly SceneFacts[],
  pairs: readonly ScenePair[],
  scenes: readonly Renamed[],
): Renamed[] {
  const ids = { before: placesOf(before), after: placesOf(after) };
  const doubtful = new Set(scenes.filter((one) => !one.sure).map((one) => one.from));
  return [...ids.before].flatMap((from): Renamed[] => {
    if (ids.after.has(from)) return [];
    const here = pairs.filter((pair) => pair.before?.placeId === from && pair.after !== null);
    const now = new Set(here.map((pair) => pair.after?.placeId ?? null));
    const [to = null] = now;
    if (now.size !== 1 || to === null || ids.before.has(to)) return [];
    const sure = here.every((pair) => !doubtful.has(pair.before?.id ?? ''));
    return [{ from, to, label: here[0]?.after?.place ?? to, sure }];
  });
}

function placesOf(scenes: readonly SceneFacts[]): Set<string> {
  return new Set(scenes.flatMap(({ placeId }) => placeId ?? []));
}
