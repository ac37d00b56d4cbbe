import { categoryOf } from '../trade/categories.js';
import { setKey } from './carry-dressing.js';
import { strongerOf } from './element-register.js';
import { obtain } from './grouping.js';
import type { ScenePlace } from './places.js';
import type { BreakdownScene, PlaceEntry, PlaceSet } from './types.js';

/** The index of places: settings, areas, scenes, the sets in each, and the dressing with the scenes in which it stands. */
export function listPlaces(scenes: readonly BreakdownScene[], places: readonly ScenePlace[]): PlaceEntry[] {
  const groups = new Map<string, { scene: BreakdownScene; place: ScenePlace }[]>();
  scenes.forEach((scene, index) => {
    const place = places[index] as ScenePlace;
    obtain(groups, place.id, () => []).push({ scene, place });
  });
  return [...groups].map(([id, all]) => {
    const own = all.map(({ scene }) => scene);
    return {
      id,
      name: all[0]?.place.name ?? '',
      settings: [...new Set(own.map(({ setting }) => setting))],
      areas: distinct(own.flatMap(({ placeParts }) => placeParts.slice(1))),
      scenes: own.map((scene) => scene.id),
      dressing: listDressing(own),
      sets: listSets(all),
    };
  });
}

function distinct(names: readonly string[]): string[] {
  const seen = new Map<string, string>();
  for (const name of names) if (!seen.has(name.toLowerCase())) seen.set(name.toLowerCase(), name);
  return [...seen.values()];
}

function listDressing(scenes: readonly BreakdownScene[]): PlaceEntry['dressing'] {
  const dressing = new Map<string, PlaceEntry['dressing'][number]>();
  for (const scene of scenes) {
    for (const { id, name, category, known } of scene.elements) {
      if (categoryOf(category).group !== 'the place' || known === 'implied') continue;
      const before = dressing.get(id);
      const strongest = before ? strongerOf(before.known, known) : known;
      dressing.set(id, { id, name, known: strongest, scenes: [...(before?.scenes ?? []), scene.id] });
    }
  }
  return [...dressing.values()];
}

function listSets(all: readonly { scene: BreakdownScene; place: ScenePlace }[]): PlaceSet[] {
  const sets = new Map<string, PlaceSet>();
  for (const { scene, place } of all) {
    const key = setKey(scene.setting, place.wholeKey);
    const before = sets.get(key);
    const scenes = [...(before?.scenes ?? []), scene.id];
    sets.set(key, { setting: scene.setting, place: before?.place ?? scene.place, scenes });
  }
  return [...sets.values()];
}
