import type { Breakdown, BreakdownScene, CostumeChange, PersonEntry } from '../../breakdown/types.js';
import { type Block, bold, type Inline } from '../layout/kit.js';
import { pickScenes, type SceneIndex, scenesWords } from '../words/scene-list-words.js';

/** A table with more people than this may be cut by a page's end. */
const mostKept = 12;

/** More story days than this go into a further table. */
const mostDays = 5;

/** People down, story days across: which change is worn when. Only the people of a table's days stand in it. */
export function gridBlocks(breakdown: Breakdown, index: SceneIndex): Block[] {
  const people = breakdown.cast.filter((person) => person.seen.length > 0).map((person) => fillRow(person, index));
  const days = [...new Set(breakdown.scenes.map((scene) => scene.storyDay.label))];
  const tables = chunk(days, mostDays).map((some) => gridTable(some, people));
  return [
    { kind: 'heading', level: 2, text: 'Who wears which change, by day of the story', bookmark: 'By story day' },
    ...(people.length > 0 ? tables : [{ kind: 'paragraph', text: 'Nobody is seen in this script.' } as const]),
  ];
}

function gridTable(days: readonly string[], people: readonly GridRow[]): Block {
  const there = people.filter(({ cells }) => days.some((day) => cells.has(day)));
  const table: Block = {
    kind: 'table',
    columns: [{ head: 'Person', share: 1 }, ...days.map((day) => ({ head: dayHead(day), share: 1 }))],
    rows: there.map(({ name, cells }) => ({
      cells: [bold(name), ...days.map((day) => ({ stack: cells.get(day) ?? [] }))],
    })),
  };
  return there.length > mostKept ? table : { kind: 'keep', blocks: [table] };
}

/** A story day at the head of a column: short, so that five fit beside each other. */
function dayHead(label: string): string {
  return `${label.startsWith('F') ? 'Flashback' : 'Day'} ${label}`;
}

interface GridRow {
  readonly name: string;
  /** What stands in the cell of a story day. */
  readonly cells: ReadonlyMap<string, readonly Inline[]>;
}

function fillRow(person: PersonEntry, index: SceneIndex): GridRow {
  const cells = new Map<string, Inline[]>();
  const add = (day: string, words: Inline) => cells.set(day, [...(cells.get(day) ?? []), words]);
  const onCamera = putOnOnCamera(person, index);
  for (const change of person.changes) {
    const scenes = scenesWords(change.scenes, index);
    const how = onCamera.has(change.number) ? ', put on in the scene' : '';
    const known = change.garments.length > 0 ? '' : isAsked(person, change, index) ? ': ? as before' : ': not told';
    add(change.storyDay, [bold(`change ${change.number}`), `, ${scenes}${how}${known}`]);
  }
  const bare = new Set(person.changes.filter((one) => one.garments.length === 0).flatMap((change) => change.scenes));
  const untold = untoldScenes(person, index).filter((scene) => !bare.has(scene.id));
  for (const day of new Set(untold.map((scene) => scene.storyDay.label))) {
    const ids = untold.filter((scene) => scene.storyDay.label === day).map((scene) => scene.id);
    add(day, `? ${scenesWords(ids, index)}: not told`);
  }
  return { name: person.name, cells };
}

/** True for a change of which a question asks whether it is the one of the day before. */
function isAsked(person: PersonEntry, change: CostumeChange, index: SceneIndex): boolean {
  return pickScenes(change.scenes, index).some((scene) => scene.perhapsWorn.some((one) => one.person === person.name));
}

/** The numbers of a person's changes that begin while the camera runs. */
function putOnOnCamera(person: PersonEntry, index: SceneIndex): ReadonlySet<number> {
  const wears = pickScenes(person.seen, index).flatMap((scene) =>
    scene.wears.filter((one) => one.person === person.name && one.change !== one.changeOut),
  );
  return new Set(wears.map((one) => one.changeOut));
}

/** Scenes in which a person is seen and nothing tells what is worn. */
export function untoldScenes(person: PersonEntry, index: SceneIndex): BreakdownScene[] {
  const isTold = (scene: BreakdownScene) =>
    scene.wears.some((one) => one.person === person.name && one.garments.length > 0);
  return pickScenes(person.seen, index).filter((scene) => !isTold(scene));
}

function chunk<T>(list: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));
}
