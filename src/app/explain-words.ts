import type { Breakdown, BreakdownScene } from '../breakdown/types.js';

/** One subject explained: a heading and lines of plain text, indented by depth. */
export interface Explanation {
  readonly title: string;
  readonly lines: readonly string[];
}

/** How an explanation calls a scene: by its number, else by its order. */
export function sceneName(scene: BreakdownScene): string {
  return scene.number === null ? `scene ${scene.order} in order` : `scene ${scene.number}`;
}

/** How an explanation calls the scene of an id. */
export function labelOf(id: string, breakdown: Breakdown): string {
  const scene = breakdown.scenes.find((one) => one.id === id);
  return scene ? sceneName(scene) : id;
}

/** Words of the script in quotation marks, cut where they are long. */
export function quote(words: string): string {
  return `"${words.length > 90 ? `${words.slice(0, 87)}…` : words}"`;
}
