import { compareText } from '../../base/diagnostic.js';
import { foldName } from '../../base/slug.js';
import { groupName } from '../../breakdown/extras.js';
import type { Breakdown, BreakdownScene, SceneExtra } from '../../breakdown/types.js';
import { singularName } from '../../script/people.js';
import { type Block, bold, type Inline, knownWords, type TableRow } from '../layout/kit.js';
import { speakerAmong } from '../words/extras-words.js';
import { labelOf, listScenes, type SceneIndex } from '../words/scene-list-words.js';

const columns = [
  { head: 'Who', share: 2 },
  { head: 'Most at once', width: 60 },
  { head: 'Scenes', share: 1.2 },
  { head: 'How many where', share: 2 },
  { head: 'What they wear and hold', share: 2.4 },
];

interface Group {
  readonly name: string;
  readonly seen: { readonly scene: BreakdownScene; readonly extra: SceneExtra }[];
}

/** Index of background people, by the alphabet: how many at once, where, and in what; empty when the script has none. */
export function extrasIndex(breakdown: Breakdown, index: SceneIndex): Block[] {
  const groups = new Map<string, Group>();
  for (const scene of breakdown.scenes) {
    for (const extra of scene.extras) {
      // `A waiter` in one scene and `waiters` in another are one row.
      const key = singularName(extra.name);
      const before = groups.get(key) ?? { name: groupName(extra), seen: [] };
      const name = singularName(before.name) === foldName(before.name) ? groupName(extra) : before.name;
      groups.set(key, { name, seen: [...before.seen, { scene, extra }] });
    }
  }
  if (groups.size === 0) return [];
  const sorted = [...groups.values()].sort((a, b) => compareText(foldName(a.name), foldName(b.name)));
  return [
    { kind: 'heading', level: 2, text: 'By background people', bookmark: 'By background people' },
    { kind: 'table', columns, rows: sorted.map((group) => extraRow(group, index)) },
  ];
}

function extraRow({ name, seen }: Group, index: SceneIndex): TableRow {
  const counts = seen.map(({ extra }) => extra.count).filter((count) => count !== null);
  const scenes = seen.map(({ scene }) => scene.id);
  return {
    cells: [
      { stack: nameCell(name, seen, index) },
      counts.length === 0 ? 'how many?' : String(Math.max(...counts)),
      listScenes(scenes, index),
      { stack: countCell(seen, index) },
      [...new Set(seen.flatMap(({ scene, extra }) => thingsOf(extra.name, scene)))].join(', '),
    ],
  };
}

function nameCell(name: string, seen: Group['seen'], index: SceneIndex): Inline[] {
  const known = seen.every(({ extra }) => extra.known === 'found') ? knownWords({ known: 'found' }, index.labels) : '';
  const among = seen.map(({ scene, extra }) => speakerAmong(extra, scene.cast)).find((words) => words !== '');
  return [[bold(name), known === '' ? '' : ` ${known}`], ...(among ? [among.replace(/^, /, '')] : [])];
}

/** The scenes of each number; empty when one number holds for all. */
function countCell(seen: Group['seen'], index: SceneIndex): string[] {
  const counts = [...new Set(seen.map(({ extra }) => extra.count))];
  if (counts.length === 1) return [];
  return counts.map((count) => {
    const there = seen.filter(({ extra }) => extra.count === count).map(({ scene }) => labelOf(scene.id, index));
    return `${count ?? 'how many?'}: sc ${there.join(', ')}`;
  });
}

function thingsOf(name: string, scene: BreakdownScene): string[] {
  return scene.elements.filter(({ by, known }) => by === name && known !== 'implied').map((one) => one.name);
}
