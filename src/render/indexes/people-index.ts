import type { Breakdown, PersonEntry } from '../../breakdown/types.js';
import { type Block, bold, type Inline, type TableRow } from '../layout/kit.js';
import { speakerAmong } from '../words/extras-words.js';
import { listScenes, type SceneIndex } from '../words/scene-list-words.js';
import { dayWords } from '../words/story-words.js';

const columns = [
  { head: 'Person', share: 1.7 },
  { head: 'Seen in scenes', share: 1.4 },
  { head: 'Only heard in', share: 1 },
  { head: 'Costume changes', share: 2.6 },
];

/** Index by person: where seen, where only heard, which changes; then the extras. */
export function peopleIndex(breakdown: Breakdown, index: SceneIndex): Block[] {
  return [
    { kind: 'heading', level: 2, text: 'By person', bookmark: 'By person' },
    ...(breakdown.cast.length === 0 ? [noPeople] : []),
    ...(breakdown.cast.length === 0 ? [] : [peopleTable(breakdown.cast, index)]),
    ...extrasBlocks(breakdown, index),
  ];
}

const noPeople: Block = { kind: 'paragraph', text: 'Nobody speaks in this script and nobody is named.' };

function peopleTable(cast: readonly PersonEntry[], index: SceneIndex): Block {
  return { kind: 'table', columns, rows: cast.map((person) => personRow(person, index)) };
}

function personRow(person: PersonEntry, index: SceneIndex): TableRow {
  return {
    cells: [
      { stack: personCell(person) },
      listScenes(person.seen, index),
      listScenes(person.heard, index),
      {
        stack: person.changes.map(
          (change) => `change ${change.number}: ${dayWords(change.storyDay)}, sc ${listScenes(change.scenes, index)}`,
        ),
      },
    ],
  };
}

function personCell(person: PersonEntry): Inline[] {
  const others = person.names.filter((name) => name !== person.name);
  const age = person.age === null ? [] : [`age ${person.age}${person.minor ? ', MINOR' : ''}`];
  const facts = [...age, ...(person.background ? ['background'] : [])].join(', ');
  return [
    bold(person.name),
    ...(others.length > 0 ? [`also called ${others.join(', ')}`] : []),
    ...(facts === '' ? [] : [facts]),
  ];
}

function extrasBlocks(breakdown: Breakdown, index: SceneIndex): Block[] {
  const byName = new Map<string, { scenes: string[]; count: number | null; among: string }>();
  for (const scene of breakdown.scenes) {
    for (const extra of scene.extras) {
      const entry = byName.get(extra.name) ?? { scenes: [], count: null, among: '' };
      entry.scenes.push(scene.id);
      entry.count = extra.count === null ? entry.count : Math.max(entry.count ?? 0, extra.count);
      if (entry.among === '') entry.among = speakerAmong(extra, scene.cast);
      byName.set(extra.name, entry);
    }
  }
  if (byName.size === 0) return [];
  const rows = [...byName].map(([name, { scenes, count, among }]) => ({
    cells: [[bold(name), among], count === null ? 'how many?' : String(count), listScenes(scenes, index)],
  }));
  const heads = [
    { head: 'People without a line', share: 2 },
    { head: 'How many at once', share: 1 },
    { head: 'Scenes', share: 2 },
  ];
  return [{ kind: 'table', columns: heads, rows }];
}
