import type { Breakdown } from '../../breakdown/types.js';
import { type Block, blank, bold, type TableRow } from '../layout/kit.js';
import { listScenes, type SceneIndex } from '../words/scene-list-words.js';

const views = ['Whole', 'Collar', 'Cuffs', 'Feet', 'Hands'];

/** A line for each change of each person: numbers of the pictures, and the scene after which they were taken. */
export function photoFrameBlocks(breakdown: Breakdown, index: SceneIndex): Block[] {
  const rows = breakdown.cast.flatMap((person) =>
    person.changes.map(
      (change): TableRow => ({
        cells: [
          bold(`${person.name} ${change.number}`),
          listScenes(change.scenes, index),
          ...views.map(() => blank(40)),
          blank(50),
        ],
      }),
    ),
  );
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Pictures of each change', bookmark: 'Pictures' },
    { kind: 'paragraph', text: 'After each scene, before anyone undresses. Write the number of the picture.' },
    {
      kind: 'table',
      columns: [
        { head: 'Change', share: 1.4 },
        { head: 'Scenes', share: 1 },
        ...views.map((head) => ({ head, width: 46 })),
        { head: 'Shot: scene', width: 58 },
      ],
      rows,
    },
  ];
}
