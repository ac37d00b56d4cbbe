import { matchEntries } from '../book/match-entries.js';
import type { Book, BookBackground } from '../book/types.js';
import type { Breakdown } from '../breakdown/types.js';
import { namesChild } from '../trade/child-words.js';

/** From so many people on, spare hats and coats are brought, and one for so many of them: common practice, 20 %. */
const spareShare = 5;

/** A group of people in the background over the whole film. */
export interface BackgroundGroup {
  readonly id: string;
  readonly name: string;
  /** Ids of scenes. */
  readonly scenes: readonly string[];
  /** The most in one scene; null when nobody says. */
  readonly count: number | null;
  readonly looks: BookBackground['looks'];
  readonly bring: string | null;
  /** Spare hats and coats; null when nobody knows for how many. */
  readonly spare: number | null;
  readonly minor: boolean;
  /** Hours a day that the book has for them; null when it has none. */
  readonly hoursEntered: number | null;
  readonly with: string | null;
  readonly note: string | null;
  readonly entry: BookBackground | null;
}

/** Every group in the background, in the order of the script, with what the book decides of it. */
export function listBackground(breakdown: Breakdown, book: Book | null): BackgroundGroup[] {
  const groups = new Map<string, { name: string; counts: number[]; scenes: string[] }>();
  for (const scene of breakdown.scenes)
    for (const { id, name, count } of scene.extras) {
      const known = groups.get(id) ?? { name, counts: [], scenes: [] };
      const counts = count === null ? known.counts : [...known.counts, count];
      groups.set(id, { name: known.name, counts, scenes: [...known.scenes, scene.id] });
    }
  const named = [...groups].map(([id, { name }]) => ({ id, names: [name] }));
  const entries = matchEntries(book?.background ?? [], named).byThing;
  return [...groups].map(([id, { name, counts, scenes }]): BackgroundGroup => {
    const entry = entries.get(id) ?? null;
    const told = counts.length > 0 ? Math.max(...counts) : null;
    const count = entry?.count ?? told ?? sumLooks(entry);
    return {
      id,
      name,
      scenes,
      count,
      looks: entry?.looks ?? [],
      bring: entry?.bring ?? null,
      spare: count === null ? null : spareFor(count),
      minor: entry?.minor ?? namesChild(name),
      hoursEntered: entry?.hoursADay ? Number(entry.hoursADay.over) / Number(entry.hoursADay.under) : null,
      with: entry?.with ?? null,
      note: entry?.note ?? null,
      entry,
    };
  });
}

/** Spare hats and coats for so many people: a fifth, rounded up; none for a few, who can be asked by name. */
function spareFor(count: number): number {
  return count < spareShare ? 0 : Math.ceil(count / spareShare);
}

/** The people of all looks together; null when one is without a count. */
export function sumLooks(entry: BookBackground | null): number | null {
  const counts = (entry?.looks ?? []).map((one) => one.count);
  if (counts.length === 0 || counts.includes(null)) return null;
  return counts.reduce<number>((sum, count) => sum + (count ?? 0), 0);
}

/** The breakdown with the heads that the book decides: where the script gives no number, and where fewer come than it says. */
export function countBackground(breakdown: Breakdown, book: Book): Breakdown {
  const decided = new Map(
    listBackground(breakdown, book).flatMap(({ id, entry }) => {
      const count = entry?.count ?? sumLooks(entry);
      return count === null ? [] : [[id, count] as const];
    }),
  );
  if (decided.size === 0) return breakdown;
  const scenes = breakdown.scenes.map((scene) => ({
    ...scene,
    extras: scene.extras.map((extra) => {
      const count = decided.get(extra.id);
      return count === undefined ? extra : { ...extra, count: Math.min(count, extra.count ?? count) };
    }),
    questions: scene.questions.filter(
      ({ id }) => !scene.extras.some((extra) => decided.has(extra.id) && id === `count-${extra.id}-${scene.id}`),
    ),
  }));
  return { ...breakdown, scenes };
}
