import type { Breakdown, PersonEntry } from '../../breakdown/types.js';
import { type Block, bold, type Inline, type TableRow } from '../layout/kit.js';
import { listScenes, type SceneIndex } from '../words/scene-list-words.js';
import { dayWords } from '../words/story-words.js';

const columns = [
  { head: 'Person', share: 1.7 },
  { head: 'Seen in scenes', share: 1.4 },
  { head: 'Only heard in', share: 1 },
  { head: 'Costume changes', share: 2.6 },
];

/** Index by person: where seen, where only heard, and which changes. */
export function peopleIndex(breakdown: Breakdown, index: SceneIndex): Block[] {
  return [
    { kind: 'heading', level: 2, text: 'By person', bookmark: 'By person' },
    ...(breakdown.cast.length === 0 ? [noPeople] : []),
    ...(breakdown.cast.length === 0 ? [] : [peopleTable(breakdown.cast, index)]),
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
