import type { Breakdown, BreakdownScene, SceneElement } from '../../breakdown/types.js';
import type { Render } from '../types.js';

/**
 * How many doubtful things and how many doubtful tasks of a scene reach paper: one for each eighth of a page, three at
 * most (common practice: a sheet that asks too much is not read). The model and the list of questions keep all.
 */
const mostDoubtful = 3;

/** A renderer whose sheets show only so many doubtful items of each scene. */
export function onPaper(render: Render): Render {
  return (input) => render({ ...input, breakdown: limitDoubtful(input.breakdown) });
}

/** A breakdown for paper: what is certain or likely stays whole; of what must be asked, the first few of each scene. */
export function limitDoubtful(breakdown: Breakdown): Breakdown {
  const scenes = breakdown.scenes.map(limitScene);
  const kept = new Set(scenes.flatMap((scene) => scene.elements.map((element) => element.id)));
  const elements = breakdown.elements.filter((one) => one.strength !== 'ask' || kept.has(one.id));
  return { ...breakdown, scenes, elements };
}

function limitScene(scene: BreakdownScene): BreakdownScene {
  const most = Math.min(mostDoubtful, Math.max(1, scene.eighths));
  const elements = keepFirst(scene.elements, isDoubtful, most);
  const tasks = keepFirst(scene.tasks, (task) => task.strength === 'ask', most);
  return { ...scene, elements, tasks };
}

function isDoubtful(element: SceneElement): boolean {
  return element.known === 'implied' && element.strength === 'ask';
}

function keepFirst<T>(list: readonly T[], isLimited: (one: T) => boolean, most: number): T[] {
  let count = 0;
  return list.filter((one) => {
    if (!isLimited(one)) return true;
    count += 1;
    return count <= most;
  });
}
