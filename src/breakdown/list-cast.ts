import { placeOnBody } from '../trade/body-order.js';
import { obtain } from './grouping.js';
import type { KnownPerson } from './people-index.js';
import type { StatesBetween } from './states-between.js';
import type { BreakdownScene, CostumeChange, Garment, PersonEntry } from './types.js';
import { isOnAfter, isOnBefore } from './worn-when.js';

/** The index of people: the scenes in which each is seen or heard, and every change of costume from head to foot. */
export function listCast(
  people: readonly KnownPerson[],
  scenes: readonly BreakdownScene[],
  between: StatesBetween,
): PersonEntry[] {
  const seen = new Map<string, string[]>();
  const heard = new Map<string, string[]>();
  const changes = new Map<string, Map<number, ChangeDraft>>();
  const background = new Set(people.filter((person) => person.background).map(({ name }) => name));
  for (const scene of scenes) {
    for (const { id, presence } of scene.cast) obtain(presence === 'seen' ? seen : heard, id, () => []).push(scene.id);
    for (const extra of scene.extras) if (background.has(extra.name)) obtain(seen, extra.id, () => []).push(scene.id);
    for (const wears of scene.wears) {
      const own = obtain(changes, wears.person, () => new Map<number, ChangeDraft>());
      const onCamera = wears.change !== wears.changeOut;
      const first = onCamera ? wears.garments.filter(isOnBefore) : wears.garments;
      addChange(own, wears.change, scene, first, between);
      if (onCamera) addChange(own, wears.changeOut, scene, wears.garments.filter(isOnAfter), between);
    }
  }
  return people
    .filter(({ id, background, listed }) => listed || background || seen.has(id) || heard.has(id))
    .map(({ id, name, names, age, minor, background }) => ({
      id,
      name,
      names,
      age,
      minor,
      background,
      seen: seen.get(id) ?? [],
      heard: heard.get(id) ?? [],
      changes: [...(changes.get(name)?.values() ?? [])].sort((a, b) => a.number - b.number).map(writeChange),
    }));
}

interface ChangeDraft {
  readonly number: number;
  readonly storyDay: string;
  readonly scenes: string[];
  readonly garments: Map<string, Garment & { readonly states: { readonly scene: string; readonly state: string }[] }>;
}

function addChange(
  own: Map<number, ChangeDraft>,
  number: number,
  scene: BreakdownScene,
  garments: readonly Garment[],
  between: StatesBetween,
): void {
  const storyDay = scene.storyDay.label;
  const draft = obtain(own, number, () => ({ number, storyDay, scenes: [], garments: new Map() }));
  draft.scenes.push(scene.id);
  for (const garment of garments) {
    // What is worn in one scene of a change and must not be worn in another has a line for each.
    const key = `${garment.absent} ${garment.id}`;
    const states = draft.garments.get(key)?.states ?? [];
    for (const state of [garment.stateIn, ...between(scene.id, garment.id), garment.stateOut]) {
      if (state !== null && states.at(-1)?.state !== state) states.push({ scene: scene.id, state });
    }
    const known = draft.garments.get(key) ?? garment;
    draft.garments.set(key, { ...known, stateOut: garment.stateOut, states });
  }
}

function writeChange({ garments, ...change }: ChangeDraft): CostumeChange {
  const headToFoot = [...garments.values()].sort((a, b) => placeOnBody(a.name).order - placeOnBody(b.name).order);
  return { ...change, garments: headToFoot };
}
