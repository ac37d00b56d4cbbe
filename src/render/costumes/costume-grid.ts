import type { Breakdown, CostumeChange, PersonEntry } from '../../breakdown/types.js';
import { type Block, bold, type Inline, type TableRow } from '../layout/kit.js';
import { type SceneIndex, scenesWords } from '../words/scene-list-words.js';
import { capitalize, dayWords } from '../words/story-words.js';

/** More story days than this go into a further table. */
const mostDays = 5;

/** People down, story days across: which change is worn when. */
export function gridBlocks(breakdown: Breakdown, index: SceneIndex): Block[] {
  const people = breakdown.cast.filter((person) => person.seen.length > 0);
  const days = [...new Set(breakdown.scenes.map((scene) => scene.storyDay.label))];
  const tables = chunk(days, mostDays).map(
    (some): Block => ({
      kind: 'table',
      columns: [{ head: 'Person', share: 1 }, ...some.map((day) => ({ head: capitalize(dayWords(day)), share: 1 }))],
      rows: people.map((person) => personRow(person, some, breakdown, index)),
    }),
  );
  return [
    { kind: 'heading', level: 2, text: 'Who wears which change, by day of the story', bookmark: 'By story day' },
    ...(people.length > 0 ? tables : [{ kind: 'paragraph', text: 'Nobody is seen in this script.' } as const]),
  ];
}

function personRow(person: PersonEntry, days: readonly string[], breakdown: Breakdown, index: SceneIndex): TableRow {
  return {
    cells: [bold(person.name), ...days.map((day) => ({ stack: dayCell(person, day, breakdown, index) }))],
  };
}

function dayCell(person: PersonEntry, day: string, breakdown: Breakdown, index: SceneIndex): Inline[] {
  const changes = person.changes.filter((change) => change.storyDay === day);
  const told = changes.map(
    (change): Inline => [
      bold(`change ${change.number}`),
      `, ${scenesWords(change.scenes, index)}${isPutOnOnCamera(person, change, breakdown) ? ', put on in the scene' : ''}`,
    ],
  );
  const untold = untoldScenes(person, breakdown).filter((id) => dayOf(id, breakdown) === day);
  return untold.length > 0 ? [...told, `? ${scenesWords(untold, index)}: not told`] : told;
}

function isPutOnOnCamera(person: PersonEntry, change: CostumeChange, breakdown: Breakdown): boolean {
  return breakdown.scenes.some((scene) =>
    scene.wears.some(
      (one) => one.person === person.name && one.changeOut === change.number && one.change !== one.changeOut,
    ),
  );
}

function dayOf(id: string, breakdown: Breakdown): string | undefined {
  return breakdown.scenes.find((scene) => scene.id === id)?.storyDay.label;
}

/** Scenes in which a person is seen and no change is known. */
export function untoldScenes(person: PersonEntry, breakdown: Breakdown): string[] {
  const told = new Set(person.changes.filter((one) => one.garments.length > 0).flatMap((change) => change.scenes));
  return breakdown.scenes.filter((scene) => person.seen.includes(scene.id) && !told.has(scene.id)).map(({ id }) => id);
}

function chunk<T>(list: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(list.length / size) }, (_, i) => list.slice(i * size, (i + 1) * size));
}
