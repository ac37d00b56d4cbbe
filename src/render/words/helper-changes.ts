import type { Change, ChangeKind, Changes, SceneChanges } from '../../compare/types.js';
import type { CategoryName } from '../../trade/categories.js';
import { sortByCost } from './change-ranks.js';
import { type Group, groupLines } from './helper-lines.js';

/** Kinds that concern everybody who comes to a scene. */
const everybodys: ReadonlySet<ChangeKind> = new Set<ChangeKind>([
  'scene',
  'label',
  'setting',
  'place',
  'light',
  'story day',
  'shooting day',
  'shooting order',
  'day',
  'day date',
  'day call',
  'day places',
]);

/** What changed for a helper whose things are of these categories: a line each, the most costly first. */
export function helperLines(changes: Changes, mine: ReadonlySet<CategoryName>): string[] {
  const own = changes.scenes.map((scene) => ({ ...scene, changes: scene.changes.filter((one) => isMine(one, mine)) }));
  const whole = changes.whole.filter((one) => isMine(one, mine)).map((change): Group => ({ change, scenes: [] }));
  return groupLines(sortByCost([...whole, ...groupAlike(own)], ({ change }) => change));
}

function isMine(change: Change, mine: ReadonlySet<CategoryName>): boolean {
  if (change.kind === 'danger') return change.after !== null;
  return everybodys.has(change.kind) || (change.category !== null && mine.has(change.category));
}

function groupAlike(scenes: readonly SceneChanges[]): Group[] {
  const groups = new Map<string, { change: Change; scenes: SceneChanges[] }>();
  for (const scene of scenes) {
    for (const change of scene.changes.filter((one) => isTold(one, scene))) {
      const { kind, subject, wearer, before, after, whole } = change;
      const key = whole
        ? ['whole', subject, wearer, after === null].join('\u0000')
        : [kind, subject, wearer, before, after, kind === 'scene' ? scene.scene : ''].join('\u0000');
      const group = groups.get(key) ?? { change, scenes: [] };
      if (group.scenes.at(-1) !== scene) group.scenes.push(scene);
      groups.set(key, group);
    }
  }
  return [...groups.values()];
}

/** What came or went with its scene or its wearer is told by these; what is new or gone as a whole is told itself. */
function isTold(change: Change, scene: SceneChanges): boolean {
  if (change.kind === 'scene' || change.whole) return true;
  if (scene.before === null || scene.after === null) return change.kind === 'danger' || change.kind === 'shooting day';
  const came = scene.changes.some((one) => one.kind === 'person' && one.subject === change.wearer);
  return !(came && change.kind === 'garment');
}
