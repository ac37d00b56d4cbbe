import type { BreakdownScene } from '../../breakdown/types.js';
import { blank, bold, type Inline, joinInline } from '../layout/kit.js';
import { inChargeOf } from '../plan/scene-day-words.js';
import type { Production } from '../types.js';
import { listScenes, type SceneIndex } from './scene-list-words.js';

/**
 * Who answers for a danger in some scenes: a name when the book gives one for all of them; names with their scenes and a
 * blank for the others when it gives some; else a blank of so many points.
 */
export function chargeWords(
  scenes: readonly BreakdownScene[],
  production: Production | null,
  index: SceneIndex,
  width: number,
): Inline {
  const named = new Map<string, string[]>();
  const open: string[] = [];
  for (const scene of scenes) {
    const name = production && inChargeOf(scene, production);
    if (name) named.set(name, [...(named.get(name) ?? []), scene.id]);
    else open.push(scene.id);
  }
  if (named.size === 0) return [blank(width)];
  const some = [...named].map(([name, ids]): Inline => [bold(name), ` (sc ${listScenes(ids, index)})`]);
  if (open.length === 0 && named.size === 1) return [bold([...named.keys()][0] as string)];
  return joinInline(open.length === 0 ? some : [...some, [`sc ${listScenes(open, index)}:\u00a0`, blank(width / 2)]]);
}
