import { obtain } from './grouping.js';
import type { KnownPerson } from './people-index.js';
import type { BreakdownScene, CostumeChange, Garment, PersonEntry } from './types.js';

type ChangeGarment = CostumeChange['garments'][number];

/** The index of people: the scenes in which each is seen or heard, and every change of costume from head to foot. */
export function listCast(people: readonly KnownPerson[], scenes: readonly BreakdownScene[]): PersonEntry[] {
  const seen = new Map<string, string[]>();
  const heard = new Map<string, string[]>();
  const changes = new Map<string, Map<number, CostumeChange>>();
  for (const scene of scenes) {
    for (const { id, presence } of scene.cast) obtain(presence === 'seen' ? seen : heard, id, () => []).push(scene.id);
    for (const extra of scene.extras)
      if (isBackground(people, extra.name)) obtain(seen, extra.id, () => []).push(scene.id);
    for (const wears of scene.wears) {
      const own = obtain(changes, wears.person, () => new Map<number, CostumeChange>());
      const onCamera = wears.change !== wears.changeOut;
      const first = onCamera ? wears.garments.filter((one) => one.action !== 'put on') : wears.garments;
      addChange(own, wears.change, scene, first);
      if (onCamera) addChange(own, wears.changeOut, scene, wears.garments.filter(isStillOn));
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
      changes: [...(changes.get(name)?.values() ?? [])].sort((a, b) => a.number - b.number),
    }));
}

function isStillOn({ action, absent }: Garment): boolean {
  return !absent && !action?.endsWith('taken off');
}

function isBackground(people: readonly KnownPerson[], name: string): boolean {
  return people.some((person) => person.background && person.name === name);
}

function addChange(
  own: Map<number, CostumeChange>,
  number: number,
  scene: BreakdownScene,
  garments: readonly Garment[],
): void {
  const before = own.get(number);
  own.set(number, {
    number,
    storyDay: before?.storyDay ?? scene.storyDay.label,
    scenes: [...(before?.scenes ?? []), scene.id],
    garments: mergeGarments(before?.garments ?? [], garments, scene.id),
  });
}

function mergeGarments(before: readonly ChangeGarment[], garments: readonly Garment[], scene: string): ChangeGarment[] {
  const merged = new Map(before.map((garment) => [garment.id, garment] as const));
  for (const garment of garments) {
    const known = merged.get(garment.id);
    const states = [...(known?.states ?? [])];
    for (const state of [garment.stateIn, garment.stateOut]) {
      if (state !== null && states.at(-1)?.state !== state) states.push({ scene, state });
    }
    merged.set(garment.id, { ...(known ?? garment), absent: garment.absent, stateOut: garment.stateOut, states });
  }
  return [...merged.values()];
}
