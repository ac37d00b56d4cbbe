import { categoryOf } from '../trade/categories.js';
import { setKey } from './carry-dressing.js';
import { strongerOf } from './element-register.js';
import { obtain } from './grouping.js';
import type { ScenePlace } from './places.js';
import type { BreakdownScene, Known, PlaceEntry, PlaceSet } from './types.js';

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
      areas: distinct(all.flatMap(({ place }) => place.areas)),
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
  const dressing = new Map<string, { id: string; name: string; known: Known; scenes: string[] }>();
  for (const scene of scenes) {
    const asked = new Set(scene.questions.map(({ element }) => element));
    for (const { id, name, category, known } of scene.elements) {
      if (categoryOf(category).group !== 'the place' || known === 'implied' || asked.has(id)) continue;
      const entry = obtain(dressing, id, () => ({ id, name, known, scenes: [] }));
      entry.known = strongerOf(entry.known, known);
      entry.scenes.push(scene.id);
    }
  }
  return [...dressing.values()];
}

function listSets(all: readonly { scene: BreakdownScene; place: ScenePlace }[]): PlaceSet[] {
  const sets = new Map<string, { setting: BreakdownScene['setting']; place: string; scenes: string[] }>();
  for (const { scene, place } of all) {
    const { setting, place: written } = scene;
    const key = setKey(setting, place.wholeKey);
    obtain(sets, key, () => ({ setting, place: written, scenes: [] })).scenes.push(scene.id);
  }
  return [...sets.values()];
}
