import { labelScenes } from '../breakdown/scene-label.js';
import type { Breakdown, BreakdownScene } from '../breakdown/types.js';

/** One subject explained: a heading and lines of plain text, indented by depth. */
export interface Explanation {
  readonly title: string;
  readonly lines: readonly string[];
}

/** How an explanation calls a scene: as paper does. */
export function sceneName(scene: Pick<BreakdownScene, 'id'>, { scenes }: Breakdown): string {
  return `scene ${labelScenes(scenes).get(scene.id) ?? scene.id}`;
}

/** How an explanation calls the scene of an id. */
export function labelOf(id: string, breakdown: Breakdown): string {
  return sceneName({ id }, breakdown);
}

/** Words of the script in quotation marks, cut where they are long. */
export function quote(words: string): string {
  return `"${words.length > 90 ? `${words.slice(0, 87)}…` : words}"`;
}
