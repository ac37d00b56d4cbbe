import type { NeededThing } from './plan-lines.js';

/**
 * Two things of one name (two aprons, each on somebody else) read as one on paper: each gets the name of whoever has it behind its own.
 */
export function tellNamesakesApart(things: readonly NeededThing[]): NeededThing[] {
  const counts = new Map<string, number>();
  for (const { need } of things) counts.set(need.name, (counts.get(need.name) ?? 0) + 1);
  return things.map((thing) => {
    const by = thing.entry?.by ?? [];
    if ((counts.get(thing.need.name) ?? 0) < 2 || by.length === 0) return thing;
    return { ...thing, need: { ...thing.need, name: `${thing.need.name} (${by.join(', ')})` } };
  });
}
