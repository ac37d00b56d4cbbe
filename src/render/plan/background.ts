import type { BackgroundGroup } from '../../plan/background.js';
import type { Plan } from '../../plan/plan-types.js';
import { type Block, blank, bold, type Inline, type TableRow, tick } from '../layout/kit.js';
import { listScenes, type SceneIndex } from '../words/scene-list-words.js';

/** What people in the background are told when the book says nothing else: common practice. */
const usualClothes = 'own clothes, no logos, nothing new, two choices each';

const columns = [
  { head: 'Who', share: 1 },
  { head: 'Scenes', share: 0.7 },
  { head: 'Count', width: 40 },
  { head: '×  look', share: 2 },
  { head: 'Told to wear and bring', share: 1.6 },
  { head: 'Told', width: 26 },
  { head: 'Spare hats\nand coats', width: 56 },
];

/** People in the background: count by look, what they are told, and the spare hats and coats for them. */
export function backgroundBlocks({ background }: Plan, index: SceneIndex): Block[] {
  if (background.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'People in the background', bookmark: 'Background' },
    {
      kind: 'paragraph',
      text: `Where nothing else is said they are told: ${usualClothes}. Spare hats and coats: one for every five people.`,
    },
    { kind: 'table', columns, rows: background.flatMap((group) => groupRows(group, index)) },
  ];
}

function groupRows(group: BackgroundGroup, index: SceneIndex): TableRow[] {
  const [first, ...others] = group.looks;
  const name: Inline[] = [
    [bold(group.name), ...(group.minor ? [bold('  MINOR')] : [])],
    ...(group.minor ? [group.with === null ? ['with ', blank(60)] : `with ${group.with}`] : []),
    ...(group.note === null ? [] : [group.note]),
  ];
  const head: TableRow = {
    cells: [
      { stack: name },
      listScenes(group.scenes, index),
      countCell(first ? first.count : group.count),
      first ? first.look : blank(120),
      group.bring ?? usualClothes,
      tick,
      spareWords(group),
    ],
    keepWithNext: others.length > 0,
  };
  return [
    head,
    ...others.map(({ look, count }): TableRow => ({ cells: ['', '', countCell(count), look, '', '', ''] })),
  ];
}

function countCell(count: number | null): Inline {
  return count === null ? blank(26) : String(count);
}

function spareWords({ spare }: BackgroundGroup): Inline {
  if (spare === null) return blank(26);
  return spare === 0 ? '' : String(spare);
}
