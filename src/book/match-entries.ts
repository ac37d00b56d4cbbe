import { slug } from '../base/slug.js';
import type { Range } from '../base/text-range.js';

/** An entry of the book: its id and earlier ids. */
export interface Entry {
  readonly id: string;
  readonly was: readonly string[];
  readonly at: Range;
}

/** Something of the script: its id and every name it goes or went by. */
export interface Named {
  readonly id: string;
  readonly names: readonly string[];
}

export interface Matches<E extends Entry> {
  /** The entry of each thing that has one, by the id of the thing. */
  readonly byThing: ReadonlyMap<string, E>;
  /** Entries that match nothing in the script. */
  readonly unmatched: readonly E[];
  /** Second entries for a thing that has one already. */
  readonly doubles: readonly { readonly entry: E; readonly first: E }[];
}

/**
 * Pairs the entries of the book with the things of the script. An equal id wins; after it an earlier id that the book
 * notes (`was`), or an earlier name that the script notes, so that a decision outlives a new name.
 */
export function matchEntries<E extends Entry>(entries: readonly E[], things: readonly Named[]): Matches<E> {
  const ids = new Set(things.map((thing) => thing.id));
  const byThing = new Map<string, E>();
  const unmatched: E[] = [];
  const doubles: { entry: E; first: E }[] = [];
  const exact = entries.filter((entry) => ids.has(entry.id));
  const others = entries.filter((entry) => !ids.has(entry.id));
  for (const entry of exact) byThing.set(entry.id, entry);
  for (const entry of others) {
    const thing = findThing(entry, things);
    if (!thing) unmatched.push(entry);
    else {
      const first = byThing.get(thing.id);
      if (first) doubles.push({ entry, first });
      else byThing.set(thing.id, entry);
    }
  }
  return { byThing, unmatched, doubles };
}

function findThing(entry: Entry, things: readonly Named[]): Named | null {
  const earlier = new Set([entry.id, ...entry.was].flatMap((id) => [id, slug(id)]));
  return (
    things.find((thing) => entry.was.includes(thing.id)) ??
    things.find((thing) => thing.names.some((name) => earlier.has(slug(name)))) ??
    null
  );
}
