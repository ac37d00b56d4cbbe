import type { Breakdown, SceneHazard } from '../../breakdown/types.js';
import { hazardCaution } from '../../trade/hazards.js';
import { type Block, blank, bold, danger, type Inline, tick } from '../layout/kit.js';
import { listScenes, type SceneIndex } from '../words/scene-list-words.js';

/** Rows of the hazard table that put a weapon in somebody's hand: firearms and replicas, blades and points. */
const weaponRows: ReadonlySet<string> = new Set(['H1', 'H2', 'H23']);

interface Weapon {
  readonly hazard: SceneHazard;
  readonly scenes: readonly string[];
  /** What raised it: the words of the script, else the reason. */
  readonly words: readonly string[];
}

/** The weapons sheet, on a page of its own: who keeps each weapon, where, and a count out and in. Nothing without weapons. */
export function weaponBlocks(breakdown: Breakdown, index: SceneIndex): Block[] {
  const weapons = findWeapons(breakdown);
  if (weapons.length === 0) return [];
  const guns = weapons.some(({ hazard }) => hazard.id === 'H1');
  const title = guns ? ' Weapons and blades' : ' Blades';
  return [
    { kind: 'page break' },
    { kind: 'heading', level: 2, text: [danger, title], bookmark: title.trim() },
    ...weapons.flatMap((weapon) => weaponBlock(weapon, index)),
    { kind: 'heading', level: 3, text: 'Before the first day' },
    { kind: 'entries', entries: listBeforehand(guns), ticks: true },
    { kind: 'heading', level: 3, text: 'Count out, count in' },
    countTable,
    { kind: 'paragraph', text: hazardCaution },
  ];
}

function findWeapons(breakdown: Breakdown): Weapon[] {
  const found = new Map<string, { hazard: SceneHazard; scenes: string[]; words: string[] }>();
  for (const scene of breakdown.scenes) {
    for (const hazard of scene.hazards.filter((one) => weaponRows.has(one.id))) {
      const weapon = found.get(hazard.id) ?? { hazard, scenes: [], words: [] };
      weapon.scenes.push(scene.id);
      const raised = hazard.words === '' ? hazard.because : `“${hazard.words}”`;
      if (!weapon.words.includes(raised)) weapon.words.push(raised);
      found.set(hazard.id, weapon);
    }
  }
  return [...found.values()].sort((a, b) => (a.hazard.id < b.hazard.id ? -1 : 1));
}

function weaponBlock({ hazard, scenes, words }: Weapon, index: SceneIndex): Block[] {
  return [
    {
      kind: 'paragraph',
      text: [bold(hazard.title), `: sc ${listScenes(scenes, index)}. ${words.join(', ')}`],
      keepWithNext: true,
    },
    { kind: 'paragraph', text: hazard.precaution },
    { kind: 'paragraph', text: [bold('Must be qualified: '), hazard.qualified] },
    { kind: 'paragraph', text: [bold('Read: '), hazard.reading], after: 6 },
  ];
}

/** What is settled before the first day; a gun asks for more than a blade. */
function listBeforehand(guns: boolean): Inline[] {
  return [
    ['One adult keeps them and nobody else: ', blank(200)],
    ['Locked away and covered when the camera does not run. Where: ', blank(170)],
    [guns ? 'Blunted, or checked to be a dummy, by ' : 'Blunted, or a soft copy, by ', blank(120), ' on ', blank(70)],
    [
      `Shown to everyone in the scene before the first take, ${guns ? 'unloaded or blunted' : 'blunted or soft'}, by `,
      blank(120),
    ],
    ['Neighbours and the authority told: ', tick, ' yes  ', tick, ' no   by ', blank(130)],
    `Carried in a closed case, never seen from the street.${guns ? ' Nothing live anywhere near.' : ''}`,
    'A child in the scene: soft copy only.',
  ];
}

const countTable: Block = {
  kind: 'table',
  columns: [
    { head: 'What', share: 3 },
    { head: 'Scene', width: 50 },
    { head: 'Out at', width: 70 },
    { head: 'To', share: 2 },
    { head: 'Back at', width: 70 },
  ],
  rows: Array.from({ length: 6 }, () => ({ cells: ['\n', '', '', '', ''] })),
};
