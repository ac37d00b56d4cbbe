import { type Block, blank, bold, type Inline, type TableRow } from '../layout/kit.js';
import { listScenes, type SceneIndex } from '../words/scene-list-words.js';

/** One hat or coat in five more than there are people: common practice. */
const spareShare = 5;

/** Nothing for a few, who can be asked by name. */
function spareWords(count: number | null): Inline {
  if (count === null) return blank(26);
  return count < spareShare ? '' : String(Math.ceil(count / spareShare));
}

/** People in the background: how many, where, in what, and the spare hats and coats for them. */
export function backgroundBlocks(index: SceneIndex): Block[] {
  const groups = new Map<string, { name: string; count: number | null; scenes: string[] }>();
  for (const scene of index.scenes) {
    for (const extra of scene.extras) {
      const known = groups.get(extra.id) ?? { name: extra.name, count: null, scenes: [] };
      // A count over the script is the most in one scene, never a sum.
      const count = extra.count === null ? known.count : Math.max(extra.count, known.count ?? 0);
      groups.set(extra.id, { name: known.name, count, scenes: [...known.scenes, scene.id] });
    }
  }
  if (groups.size === 0) return [];
  const rows = [...groups.values()].map(
    ({ name, count, scenes }): TableRow => ({
      cells: [
        bold(name),
        count === null ? blank(26) : String(count),
        listScenes(scenes, index),
        blank(190),
        spareWords(count),
      ],
    }),
  );
  return [
    { kind: 'heading', level: 2, text: 'People in the background', bookmark: 'Background' },
    { kind: 'paragraph', text: 'Tell them before: own clothes, no logos, nothing new, two choices each.' },
    {
      kind: 'table',
      columns: [
        { head: 'Who', share: 1 },
        { head: 'Count', width: 40 },
        { head: 'Scenes', share: 0.8 },
        { head: 'What they wear', width: 206 },
        { head: 'Spare hats\nand coats', width: 60 },
      ],
      rows,
    },
  ];
}
