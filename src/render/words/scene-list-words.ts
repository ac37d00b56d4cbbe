import { labelScenes, type SceneLabels } from '../../breakdown/scene-label.js';
import type { BreakdownScene } from '../../breakdown/types.js';

/** Looks scenes up by their id and names them for paper. */
export interface SceneIndex {
  readonly labels: SceneLabels;
  /** Position in the script by id, from 0. */
  readonly positions: ReadonlyMap<string, number>;
  readonly scenes: readonly BreakdownScene[];
}

export function indexScenes(scenes: readonly BreakdownScene[]): SceneIndex {
  return { labels: labelScenes(scenes), positions: new Map(scenes.map((scene, i) => [scene.id, i])), scenes };
}

/** The label of one scene; an id that names no scene prints as it is. */
export function labelOf(id: string, index: SceneIndex): string {
  return index.labels.get(id) ?? id;
}

/** The scenes of some ids, in script order, each once; ids that name none fall away. */
export function pickScenes(ids: readonly string[], index: SceneIndex): BreakdownScene[] {
  return placesOf(ids, index).map((place) => index.scenes[place] as BreakdownScene);
}

function placesOf(ids: readonly string[], index: SceneIndex): number[] {
  const places = new Set<number>();
  for (const id of ids) {
    const place = index.positions.get(id);
    if (place !== undefined) places.add(place);
  }
  return [...places].sort((a, b) => a - b);
}

/** Scenes as a short list in script order: `1, 3–5, 8`; three or more that follow each other are drawn together. */
export function listScenes(ids: readonly string[], index: SceneIndex): string {
  return groupRuns(placesOf(ids, index))
    .flatMap((run) => {
      const labels = run.map((place) => labelOf(index.scenes[place]?.id ?? '', index));
      return labels.length < 3 ? labels : [`${labels[0]}–${labels.at(-1)}`];
    })
    .join(', ');
}

/** `sc 1, 2`; an empty text for no scenes. */
export function scenesWords(ids: readonly string[], index: SceneIndex): string {
  return ids.length === 0 ? '' : `sc ${listScenes(ids, index)}`;
}

function groupRuns(places: readonly number[]): number[][] {
  const runs: number[][] = [];
  for (const place of places) {
    const run = runs.at(-1);
    if (run && run.at(-1) === place - 1) run.push(place);
    else runs.push([place]);
  }
  return runs;
}
