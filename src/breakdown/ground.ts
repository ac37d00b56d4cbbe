import type { Finds } from '../find/types.js';
import type { Pages } from '../page/types.js';
import type { Note, Scene, Script } from '../script/types.js';
import { type ActionText, readActionTexts } from './action-text.js';
import { nameScenes } from './scene-ids.js';
import { labelScenes } from './scene-label.js';

/** A scene with all that was read about it, before any pass decides anything. */
export interface SceneGround {
  readonly index: number;
  readonly id: string;
  /** How messages and questions call it, as paper does: `scene 12`. */
  readonly label: string;
  readonly scene: Scene;
  readonly actions: readonly ActionText[];
  readonly finds: Finds;
}

/** What every pass starts from. */
export interface Ground {
  readonly script: Script;
  readonly pages: Pages;
  readonly scenes: readonly SceneGround[];
}

/** Lays the script, its pages and the finder's reading side by side, scene by scene. */
export function layGround(script: Script, pages: Pages, finds: Finds): Ground {
  const ids = nameScenes(script);
  const grouped = groupFinds(finds, script.scenes.length);
  const labels = labelScenes(
    script.scenes.map(({ heading }, index) => ({ id: ids[index] as string, number: heading.number, order: index + 1 })),
  );
  const scenes = script.scenes.map((scene, index) => ({
    index,
    id: ids[index] as string,
    label: `scene ${labels.get(ids[index] as string)}`,
    scene,
    actions: readActionTexts(scene),
    finds: grouped[index] as Finds,
  }));
  return { script, pages, scenes };
}

/** The notes of one kind, in the order in which they stand. */
export function notesOf<K extends Note['kind']>(
  notes: readonly Note[],
  kind: K,
): readonly Extract<Note, { readonly kind: K }>[] {
  return notes.filter((note): note is Extract<Note, { readonly kind: K }> => note.kind === kind);
}

function groupFinds(finds: Finds, count: number): Finds[] {
  const grouped = Array.from({ length: count }, () => ({
    elements: [] as Finds['elements'][number][],
    people: [] as Finds['people'][number][],
    moves: [] as Finds['moves'][number][],
    tasks: [] as Finds['tasks'][number][],
    hazards: [] as Finds['hazards'][number][],
    questions: [] as Finds['questions'][number][],
  }));
  for (const find of finds.elements) grouped[find.scene]?.elements.push(find);
  for (const find of finds.people) grouped[find.scene]?.people.push(find);
  for (const find of finds.moves) grouped[find.scene]?.moves.push(find);
  for (const find of finds.tasks) grouped[find.scene]?.tasks.push(find);
  for (const find of finds.hazards) grouped[find.scene]?.hazards.push(find);
  for (const find of finds.questions) grouped[find.scene]?.questions.push(find);
  return grouped;
}
