import { foldName, slug } from '../base/slug.js';
import { type Answers, questionIds, saysYes } from './answers.js';
import { isTimePart } from './day-cues.js';
import type { SceneGround } from './ground.js';
import { pushTo } from './grouping.js';
import { freeId } from './people-index.js';

/** Where a scene plays, as the passes compare it. */
export interface ScenePlace {
  readonly id: string;
  /** Key of the place: its first part. INT and EXT of one place are one place. */
  readonly key: string;
  /** Key of the whole place text, areas included. */
  readonly wholeKey: string;
  readonly name: string;
  /** The further parts, without those that only tell when. */
  readonly areas: readonly string[];
}

/** Two places that differ by a letter or by a word in front: perhaps one place written in two ways. */
export interface PlaceDoubt {
  readonly scene: number;
  readonly first: string;
  readonly second: string;
}

/** Gives every scene its place. Stops, apostrophes, articles and case make no second place, nor does a slip that the writer owned to. */
export function findPlaces(scenes: readonly SceneGround[], answers: Answers): ScenePlace[] {
  const places = readPlaces(scenes);
  const same = doubtPlaces(places).filter(({ second }) => saysYes(answers, questionIds.place(slug(second))));
  if (same.length === 0) return places;
  const meant = new Map(same.map(({ first, second }) => [placeKey(second), placeKey(first)]));
  const known = new Map(places.map((place) => [place.key, place] as const));
  return places.map((place) => {
    const other = known.get(meant.get(place.key) ?? '');
    if (!other) return place;
    const { id, name, key } = other;
    return { ...place, id, name, key, wholeKey: key + place.wholeKey.slice(place.key.length) };
  });
}

function readPlaces(scenes: readonly SceneGround[]): ScenePlace[] {
  const ids = new Set<string>();
  const known = new Map<string, { id: string; name: string }>();
  return scenes.map(({ scene: { heading } }) => {
    const [first = heading.place, ...areas] = heading.placeParts.map(withoutTime).filter((part) => part !== '');
    const key = placeKey(first);
    const entry = known.get(key) ?? { id: freeId(slug(first === '' ? 'no place' : first), ids), name: first };
    known.set(key, entry);
    return { ...entry, key, wholeKey: [first, ...areas].map(placeKey).join(' - '), areas };
  });
}

/** `ATTIC (FLASHBACK)` is the attic, and an area called FLASHBACK is none. */
function withoutTime(part: string, index: number): string {
  const [whole, before = '', aside = ''] = /^(.*?)\s*\(([^)]*)\)$/.exec(part) ?? [];
  if (whole !== undefined && isTimePart(aside)) return before;
  return index > 0 && isTimePart(part) ? '' : part;
}

/** Folds a part of a place for comparison: `THE NEWSPAPER OFFICE.` and `Newspaper office` are one, and so are `ANN'S` and `ANNS`. */
export function placeKey(part: string): string {
  return foldName(part)
    .replace(/['.,]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replace(/^the /, '');
}

/** Finds places that may be one: names a letter apart, or KITCHEN beside the only kitchen with a name. Numbers tell places apart. */
export function doubtPlaces(places: readonly ScenePlace[]): PlaceDoubt[] {
  const first = new Map<string, { place: ScenePlace; scene: number }>();
  places.forEach((place, scene) => {
    if (!first.has(place.key)) first.set(place.key, { place, scene });
  });
  const all = [...first.values()];
  const spelt = doubtLetters(all);
  const asked = new Set(spelt.map(({ scene }) => scene));
  const others = [...doubtWords(all), ...doubtCommas(all)].filter(({ scene }) => !asked.has(scene));
  return [...spelt, ...others].sort((a, b) => a.scene - b.scene);
}

type FirstScene = { readonly place: ScenePlace; readonly scene: number };

function doubtLetters(all: readonly FirstScene[]): PlaceDoubt[] {
  const byHole = new Map<string, ScenePlace[]>();
  return all.flatMap(({ place, scene }) => {
    if (place.key.length < 6) return [];
    const holes = [place.key, ...holesOf(place.key)];
    const other = holes.flatMap((hole) => byHole.get(hole) ?? []).find((one) => differByLetter(one.key, place.key));
    for (const hole of new Set(holes)) pushTo(byHole, hole, place);
    return other ? [{ scene, first: other.name, second: place.name }] : [];
  });
}

/** LIGHTHOUSE and `LIGHTHOUSE, ROCKS`: a place, and perhaps an area of it behind a comma. */
function doubtCommas(all: readonly FirstScene[]): PlaceDoubt[] {
  const known = new Map(all.map((one) => [one.place.key, one] as const));
  return all.flatMap((one) => {
    const [front, area] = one.place.name.split(/,\s*/);
    const other = area === undefined ? undefined : known.get(placeKey(front as string));
    if (!other) return [];
    const [before, after] = other.scene < one.scene ? [other, one] : [one, other];
    return [{ scene: after.scene, first: before.place.name, second: after.place.name }];
  });
}

/** KITCHEN and HOLLOWAY KITCHEN, when no other place ends in that word. */
function doubtWords(all: readonly FirstScene[]): PlaceDoubt[] {
  const byLast = new Map<string, FirstScene[]>();
  for (const one of all) pushTo(byLast, one.place.key.split(' ').at(-1) ?? '', one);
  return [...byLast.values()].flatMap((group) => {
    const [before, after, ...others] = group;
    if (!before || !after || others.length > 0) return [];
    const [short, long] = [before.place.key, after.place.key].sort((a, b) => a.length - b.length) as [string, string];
    if (!long.endsWith(` ${short}`) || /[\d/]/.test(before.place.name + after.place.name)) return [];
    return [{ scene: after.scene, first: before.place.name, second: after.place.name }];
  });
}

/** A name with each of its letters left out: two names one letter apart share one of these. */
function holesOf(key: string): string[] {
  return [...key].map((_, index) => key.slice(0, index) + key.slice(index + 1));
}

function differByLetter(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let start = 0;
  while (start < a.length && a[start] === b[start]) start++;
  let end = 0;
  while (end < Math.min(a.length, b.length) - start && a.at(-1 - end) === b.at(-1 - end)) end++;
  const [left, right] = [a.slice(start, a.length - end), b.slice(start, b.length - end)];
  return left.length <= 1 && right.length <= 1 && !/\d/.test(left + right);
}
