import type { NamedFacts } from './types.js';

/** People or things of two drafts found in each other: by id, else by a name that one of them went by. */
export interface Matched {
  /** The present id of an earlier one; its own when it is gone. */
  readonly keyOf: (earlierId: string) => string;
  /** Present ids without an earlier one, and earlier ids without a present one. */
  readonly added: ReadonlySet<string>;
  readonly gone: ReadonlySet<string>;
  readonly pairs: readonly { readonly before: NamedFacts; readonly after: NamedFacts }[];
}

/** Finds the people or the things of an earlier draft in the present one. */
export function matchNames(before: readonly NamedFacts[], after: readonly NamedFacts[]): Matched {
  const ids = new Set(after.map((one) => one.id));
  const pairs = before.flatMap((one) => {
    const same = after.find((other) => other.id === one.id);
    return same ? [{ before: one, after: same }] : [];
  });
  const free = { before: before.filter((one) => !ids.has(one.id)), after: new Set(after) };
  for (const pair of pairs) free.after.delete(pair.after);
  for (const one of free.before) {
    const other = [...free.after].find((candidate) => sharesName(one, candidate));
    if (!other) continue;
    free.after.delete(other);
    pairs.push({ before: one, after: other });
  }
  const keys = new Map(pairs.map((pair) => [pair.before.id, pair.after.id]));
  return {
    keyOf: (id) => keys.get(id) ?? id,
    added: new Set([...free.after].map((one) => one.id)),
    gone: new Set(before.filter((one) => !keys.has(one.id)).map((one) => one.id)),
    pairs,
  };
}

function sharesName(one: NamedFacts, other: NamedFacts): boolean {
  return includesName(other.names, one.name) || includesName(one.names, other.name);
}

function includesName(names: readonly string[], name: string): boolean {
  const folded = name.toLowerCase();
  return names.some((candidate) => candidate.toLowerCase() === folded);
}
