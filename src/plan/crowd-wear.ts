import type { BreakdownScene, ElementEntry, SceneElement, SceneExtra } from '../breakdown/types.js';
import { looksPlural } from '../trade/plural-words.js';

/**
 * The people in the background who seem to wear a garment: several of it, on nobody with a name, told in one breath with one group
 * of people. Null when nothing speaks for it.
 */
export function crowdWearing(scene: BreakdownScene, element: SceneElement): SceneExtra | null {
  if (element.category !== 'costumes' || element.by !== null || !looksPlural(element.name)) return null;
  if (scene.wears.some((wears) => wears.garments.some((one) => one.id === element.id))) return null;
  const lines = new Set(element.mentions.map((mention) => mention.line));
  const groups = scene.extras.filter((extra) => lines.has(extra.line) && (extra.count === null || extra.count > 1));
  return groups.length === 1 ? (groups[0] as SceneExtra) : null;
}

/** The largest group that seems to wear a thing in any scene: its name and count, null when nobody says how many they are. */
export function largestCrowd(
  entry: Pick<ElementEntry, 'id'>,
  scenes: readonly BreakdownScene[],
): { readonly name: string; readonly count: number | null } | null {
  const groups = scenes.flatMap((scene) =>
    scene.elements.filter((one) => one.id === entry.id).flatMap((one) => crowdWearing(scene, one) ?? []),
  );
  return groups.reduce<{ name: string; count: number | null } | null>(
    (most, one) =>
      most === null || (one.count ?? 0) > (most.count ?? 0) ? { name: one.name, count: one.count } : most,
    null,
  );
}
