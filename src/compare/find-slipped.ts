import { matchScenes } from './match-scenes.js';
import type { DraftFacts, SceneFacts, SlippedName } from './types.js';

/** A shooting day as the book has it now: its date, and each name with the id of the scene that it finds. */
export interface NamedDay {
  readonly date: string;
  readonly scenes: readonly { readonly name: string; readonly scene: string | null }[];
}

/**
 * Names of scenes that stand for another scene, or for none, since one was put in or taken out before them, while the scene they meant is in
 * no day any more. Once the days are put right it says nothing.
 */
export function findSlipped(
  before: DraftFacts,
  after: readonly SceneFacts[],
  days: readonly NamedDay[],
): SlippedName[] {
  if (before.days === null) return [];
  const pairs = matchScenes(before.scenes, after);
  const now = new Map(pairs.flatMap((pair) => (pair.before && pair.after ? [[pair.before, pair.after] as const] : [])));
  const shot = new Set(days.flatMap((day) => day.scenes.map(({ scene }) => scene)));
  return days.flatMap(({ date, scenes }) => {
    const then = before.days?.find((day) => day.date === date);
    const was = before.scenes.filter((one) => then?.scenes.includes(one.id));
    return was.flatMap((earlier): SlippedName[] => {
      const meant = now.get(earlier);
      if (!meant || shot.has(meant.id)) return [];
      const named = scenes.find(({ name, scene }) => isNameOf(name, earlier) && scene !== meant.id);
      return named ? [{ date, name: named.name, meant: meant.id }] : [];
    });
  });
}

function isNameOf(name: string, { id, label }: SceneFacts): boolean {
  return name === id || name.trim().toLowerCase() === label.toLowerCase();
}
