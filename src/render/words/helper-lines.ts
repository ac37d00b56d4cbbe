import type { Change, SceneChanges } from '../../compare/types.js';
import { changeWords, sceneHeadWords, subjectWords } from './change-words.js';

/** The same change in one scene or several. */
export interface Group {
  readonly change: Change;
  readonly scenes: readonly SceneChanges[];
}

/** A line that gathers several changes: `GET: tea (sc 3), scythe (sc 4).` */
interface Gathering {
  readonly head: string;
  readonly item: (group: Group) => string;
  readonly tail: string;
}

/** Things that one line names before it counts. */
const mostItems = 8;

/** Grouped changes as lines in their order; what needs the same deed stands in one line, at the place of its first. */
export function groupLines(groups: readonly Group[]): string[] {
  const lines = new Map<string, { gathering: Gathering; groups: Group[] }>();
  for (const [i, group] of groups.entries()) {
    const gathering = gather(group.change) ?? { head: '', item: ownLine, tail: '' };
    const key = gathering.head === '' ? `${i}` : gathering.head;
    const line = lines.get(key) ?? { gathering, groups: [] };
    line.groups.push(group);
    lines.set(key, line);
  }
  return [...lines.values()].map(({ gathering: { head, item, tail }, groups: all }) => {
    if (head === '') return all.map(item).join('');
    const shown = all.length > mostItems + 1 ? all.slice(0, mostItems) : all;
    const more = all.length - shown.length;
    return `${head}: ${shown.map(item).join(', ')}${more > 0 ? ` and ${more} more` : ''}.${tail}`;
  });
}

function gather(change: Change): Gathering | null {
  const { kind, whole, after, before, wearer } = change;
  if (kind === 'danger')
    return { head: 'DANGER, new', item: inScenes, tail: ' Read the framed box on the scene’s sheet.' };
  if (whole) return gatherWhole(change);
  if (kind === 'label')
    return { head: 'Scene numbers', item: renumbered, tail: ' Correct your labels and photo lists.' };
  if (kind === 'costume number')
    return { head: 'Costume change numbers', item: renumbered, tail: ' Correct your labels.' };
  if (kind === 'garment' && before !== 'not worn' && after !== 'not worn')
    return { head: `${wearer} ${after === null ? 'no longer wears' : 'now wears'}`, item: garmentItem, tail: '' };
  const comes = kind === 'thing' || kind === 'extra' || kind === 'person';
  if (comes && before === null) return { head: 'Now also there', item: inScenes, tail: '' };
  return comes && after === null ? { head: 'No longer there', item: inScenes, tail: '' } : null;
}

function gatherWhole({ kind, after }: Change): Gathering {
  if (kind === 'person' || kind === 'extra')
    return after === null
      ? { head: 'Cut from the film', item: wasInScenes, tail: '' }
      : { head: 'New in the film', item: inScenes, tail: '' };
  return after === null
    ? { head: 'STOP, not needed any more', item: wasInScenes, tail: ' Do not buy; ask before you give anything away.' }
    : { head: 'GET', item: inScenes, tail: ' Ask before you buy what the lists call (found) or (implied).' };
}

function inScenes({ change, scenes }: Group): string {
  return `${subjectWords(change)} (${labelsWords(scenes)})`;
}

function wasInScenes({ change, scenes }: Group): string {
  return `${subjectWords(change)} (was in ${labelsWords(scenes)})`;
}

function garmentItem({ change, scenes }: Group): string {
  return `${change.subject} (${labelsWords(scenes)})`;
}

function renumbered({ change: { kind, subject, before, after }, scenes }: Group): string {
  return kind === 'label'
    ? `${before} is now ${after}`
    : `${subject} ${before} is now ${after} (${labelsWords(scenes)})`;
}

function ownLine({ change, scenes }: Group): string {
  if (change.kind === 'scene') return sceneLine(change, scenes[0] as SceneChanges);
  const where = scenes.length === 0 ? '' : `${scenes.length > 1 ? 'Scenes' : 'Scene'} ${labels(scenes)}: `;
  return `${where}${changeWords(change)}.`;
}

function sceneLine({ before, after }: Change, scene: SceneChanges): string {
  if (after === null) return `Old scene ${scene.before} is cut (${sceneHeadWords(before)}). Throw the old sheet away.`;
  const things = scene.changes.filter((one) => one.kind === 'thing' || one.kind === 'garment').map(subjectWords);
  const yours = things.length > 0 ? ` Yours in it: ${things.join(', ')}.` : '';
  return `Scene ${scene.after} is new (${sceneHeadWords(after)}).${yours}`;
}

/** `sc 3, old 4`: by the present labels; scenes that are gone by their old ones, and said so. */
function labelsWords(scenes: readonly SceneChanges[]): string {
  return `sc ${labels(scenes)}`;
}

function labels(scenes: readonly SceneChanges[]): string {
  return scenes.map((scene) => scene.after ?? `old ${scene.before}`).join(', ');
}
