import type { ElementEntry } from '../breakdown/types.js';

/**
 * The names by which paper and labels tell things apart, by their ids: two things of one name (two aprons, each on somebody else)
 * read as one, so each gets the name of whoever has it behind its own. `others` are names of things that nobody has.
 */
export function tellNamesakesApart(
  things: readonly Pick<ElementEntry, 'id' | 'name' | 'by'>[],
  others: readonly string[],
): ReadonlyMap<string, string> {
  const counts = new Map<string, number>();
  for (const name of [...things.map((one) => one.name), ...others]) counts.set(name, (counts.get(name) ?? 0) + 1);
  return new Map(
    things.map(({ id, name, by }) => [
      id,
      (counts.get(name) ?? 0) > 1 && by.length > 0 ? `${name} (${by.join(', ')})` : name,
    ]),
  );
}
