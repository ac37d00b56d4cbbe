import { obtain } from './grouping.js';
import type { BreakdownScene, PerhapsWorn } from './types.js';
import { isOnAfter } from './worn-when.js';

type Dressed = Pick<BreakdownScene, 'id' | 'storyDay' | 'wears'>;

/**
 * Lists for each scene whose clothes of the day before may still be on: of people about whom a question asks so, on that whole day, as
 * long as nothing dresses them anew. `asks` tells of whom a scene asks.
 */
export function listPerhapsWorn(
  scenes: readonly Dressed[],
  asks: (scene: number) => readonly string[],
): readonly (readonly PerhapsWorn[])[] {
  const last = new Map<string, PerhapsWorn>();
  const open = new Map<string, Map<string, PerhapsWorn>>();
  return scenes.map(({ id, storyDay, wears }, index) => {
    if (storyDay.series !== 'D') return [];
    const today = obtain(open, storyDay.label, () => new Map<string, PerhapsWorn>());
    const asked = new Set(asks(index));
    return wears.flatMap(({ person, change, changeOut, garments }) => {
      const before = last.get(person);
      if (asked.has(person) && before) today.set(person, before);
      const perhaps = today.get(person);
      const on = garments.filter((one) => !one.absent && isOnAfter(one)).map(({ name }) => name);
      if (perhaps === undefined) {
        last.set(person, { person, garments: on, from: id });
        return [];
      }
      if (change !== changeOut) today.delete(person);
      const told = new Set(garments.map(({ name }) => name));
      const left = perhaps.garments.filter((name) => !told.has(name));
      last.set(person, { person, garments: [...left, ...on], from: on.length > 0 ? id : perhaps.from });
      return left.length > 0 ? [{ ...perhaps, garments: left }] : [];
    });
  });
}
