import { type Eighths, formatEighths } from '../base/eighths.js';
import { byKey, changed, differs, noScene } from './change.js';
import { comparePeople } from './compare-people.js';
import { compareThings, type Identities } from './compare-things.js';
import { matchScenes, type ScenePair } from './match-scenes.js';
import { findMoved } from './moved.js';
import type { Change, SceneChanges, SceneFacts } from './types.js';

/** The scenes of two drafts side by side, with all that differs in each; also those in which nothing does. */
export function compareScenes(
  before: readonly SceneFacts[],
  after: readonly SceneFacts[],
  identities: Identities,
): { readonly pairs: readonly ScenePair[]; readonly scenes: readonly SceneChanges[] } {
  const pairs = matchScenes(before, after);
  const moves = new Map(findMoves(pairs, before, after).map((move) => [move.scene, move]));
  const scenes = pairs.map((pair) => {
    const scene = idOf(pair);
    const move = moves.get(scene);
    const changes = [...compareHeads(scene, pair), ...(move ? [move] : []), ...compareInside(scene, pair, identities)];
    return { scene, before: pair.before?.label ?? null, after: pair.after?.label ?? null, changes };
  });
  return { pairs, scenes };
}

/** The id by which a pair is told of: the present one, of a scene that is gone the earlier one. */
export function idOf({ before, after }: ScenePair): string {
  return (after ?? (before as SceneFacts)).id;
}

function compareHeads(scene: string, { before, after }: ScenePair): Change[] {
  if (before === null || after === null)
    return [changed('scene', { scene, before: before && headOf(before), after: after && headOf(after) })];
  const told = { scene };
  return [
    ...differs('label', before.label, after.label, told),
    ...differs('setting', before.setting, after.setting, told),
    ...differs('place', before.place, after.place, told),
    ...compareLight(before, after),
    ...differs('story day', before.storyDay, after.storyDay, told),
    ...differs('length', lengthOf(before), lengthOf(after), told),
  ];
}

function headOf({ setting, place, time }: SceneFacts): string {
  return [`${setting} ${place}`, time].filter((part) => part !== null).join(', ');
}

/** The time as written; where both only say that time runs on, the light that follows from it. */
function compareLight(before: SceneFacts, after: SceneFacts): Change[] {
  const told = { scene: after.id };
  const written = differs('light', before.time, after.time, told);
  return written.length > 0 ? written : differs('light', before.light, after.light, told);
}

function lengthOf({ eighths }: SceneFacts): string {
  return formatEighths(eighths as Eighths);
}

function compareInside(scene: string, pair: ScenePair, identities: Identities): Change[] {
  const before = pair.before ?? noScene;
  const after = pair.after ?? noScene;
  const self = (title: string) => title;
  const dangers = byKey(before.dangers, after.dangers, self, self).flatMap(({ key, one, other }) =>
    differs('danger', one && 'raised', other && 'raised', { scene, subject: key }),
  );
  return [
    ...dangers,
    ...comparePeople(scene, before, after, identities),
    ...compareThings(scene, before, after, identities),
  ];
}

function findMoves(pairs: readonly ScenePair[], before: readonly SceneFacts[], after: readonly SceneFacts[]): Change[] {
  const both = pairs.filter((pair) => pair.before !== null && pair.after !== null);
  const place = new Map(before.map((scene, i) => [scene, i]));
  const moved = findMoved(both.map((pair) => place.get(pair.before as SceneFacts) as number));
  return [...moved].map((i) => {
    const pair = both[i] as { readonly before: SceneFacts; readonly after: SceneFacts };
    const told = { before: standsAfter(pair.before, before), after: standsAfter(pair.after, after) };
    return changed('position', { scene: pair.after.id, ...told });
  });
}

function standsAfter(scene: SceneFacts, scenes: readonly SceneFacts[]): string {
  const ahead = scenes[scenes.indexOf(scene) - 1];
  return ahead ? `after scene ${ahead.label}` : 'first of all';
}
