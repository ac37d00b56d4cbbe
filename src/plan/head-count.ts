import type { Book } from '../book/types.js';
import type { Breakdown, BreakdownScene } from '../breakdown/types.js';
import type { PlanDay } from './day-types.js';
import { listSpeakersAmong } from './speakers-among.js';

/**
 * People who eat on one day: the cast seen in its scenes, the people in the background, every helper, and whoever makes the film. A
 * group that comes for two scenes is counted once, at its largest; one that nobody has counted as one head. A day without scenes has none.
 */
export function countHeads(day: PlanDay, breakdown: Breakdown, book: Book): number {
  const wanted = new Set(day.scenes.map((slot) => slot.scene));
  const scenes = breakdown.scenes.filter((scene) => wanted.has(scene.id));
  if (scenes.length === 0) return 0;
  const seen = new Set(scenes.flatMap((scene) => seenIn(scene)));
  const groups = new Map<string, number>();
  for (const { id, count } of scenes.flatMap((scene) => scene.extras))
    groups.set(id, Math.max(groups.get(id) ?? 1, count ?? 1));
  const background = [...groups.values()].reduce((sum, count) => sum + count, 0);
  return seen.size + background + book.helpers.length + 1;
}

/** The cast seen in a scene, without whoever speaks out of a group that is counted as a whole: HIKER among three hikers. */
function seenIn(scene: BreakdownScene): string[] {
  const counted = scene.extras.filter((extra) => (extra.count ?? 1) > 1);
  const among = new Set(counted.flatMap((extra) => listSpeakersAmong(extra, scene.cast)).map((person) => person.id));
  return scene.cast.filter(({ id, presence }) => presence === 'seen' && !among.has(id)).map(({ id }) => id);
}
