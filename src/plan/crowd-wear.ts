import type { BreakdownScene, ElementEntry, SceneElement, SceneExtra } from '../breakdown/types.js';
import { looksPlural, singularWord } from '../trade/plural-words.js';

/**
 * The people in the background who wear a garment: several of it, on a group of them as the words say, or on nobody and told in one
 * breath with one group. Null when nothing speaks for it.
 */
export function crowdWearing(scene: BreakdownScene, element: SceneElement): SceneExtra | null {
  if (element.category !== 'costumes' || !looksPlural(element.name)) return null;
  if (scene.wears.some((wears) => wears.garments.some((one) => one.id === element.id))) return null;
  const groups = scene.extras.filter((extra) => extra.count === null || extra.count > 1);
  if (element.by !== null) return groups.find((one) => one.name === element.by && isSeveral(one)) ?? null;
  const lines = new Set(element.mentions.map((mention) => mention.line));
  const near = groups.filter((extra) => lines.has(extra.line));
  return near.length === 1 ? (near[0] as SceneExtra) : null;
}

/** Without a count, `girl` is one and `policemen` are several. */
const isSeveral = ({ name, count }: SceneExtra) => count !== null || singularWord(name) !== name;

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
