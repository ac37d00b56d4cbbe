import type { BreakdownScene } from './types.js';

/** The label by which paper names a scene, by the scene's id. */
export type SceneLabels = ReadonlyMap<string, string>;

/**
 * Names every scene for paper: its number; in a script without numbers its position (`3`); in a script that numbers
 * only some scenes the position as an ordinal (`3rd`), so that it is not taken for a number.
 */
export function labelScenes(scenes: readonly Pick<BreakdownScene, 'id' | 'number' | 'order'>[]): SceneLabels {
  const numbered = scenes.some((scene) => scene.number !== null);
  return new Map(
    scenes.map((scene) => [scene.id, scene.number ?? (numbered ? ordinal(scene.order) : `${scene.order}`)]),
  );
}

/** The labels of some scenes, in script order whatever the order of the ids. */
export function listLabels(ids: readonly string[], scenes: readonly BreakdownScene[], labels: SceneLabels): string[] {
  const wanted = new Set(ids);
  return scenes.filter((scene) => wanted.has(scene.id)).map((scene) => labels.get(scene.id) as string);
}

function ordinal(count: number): string {
  const tens = count % 100;
  const unit = count % 10;
  const teen = tens > 10 && tens < 14;
  return `${count}${teen ? 'th' : unit === 1 ? 'st' : unit === 2 ? 'nd' : unit === 3 ? 'rd' : 'th'}`;
}
