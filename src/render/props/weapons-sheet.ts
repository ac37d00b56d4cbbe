import type { Breakdown, SceneHazard } from '../../breakdown/types.js';
import { namesFirearm } from '../../trade/firearm-words.js';
import { hazardCaution } from '../../trade/hazards.js';
import { type Block, blank, bold, danger, type Inline, inlineRuns, type TableRow, tick } from '../layout/kit.js';
import { dateWords } from '../plan/plan-words.js';
import { listWeaponEntries, type WeaponEntry, weaponEntryBlocks, weaponName } from '../plan/weapon-entries.js';
import type { RenderInput } from '../types.js';
import { callWords } from '../words/call-words.js';
import { labelOf, listScenes, type SceneIndex } from '../words/scene-list-words.js';

/** Rows of the hazard table that put a weapon in somebody's hand: firearms and replicas, blades and points. */
const weaponRows: ReadonlySet<string> = new Set(['H1', 'H2', 'H23']);

interface Weapon {
  readonly hazard: SceneHazard;
  readonly scenes: readonly string[];
  /** What raised it: the words of the script, else the reason. */
  readonly words: readonly string[];
}

/** The weapons sheet, on a page of its own: who keeps each weapon, where, and a count out and in. Nothing without weapons. */
export function weaponBlocks(
  { breakdown, production }: Pick<RenderInput, 'breakdown' | 'production'>,
  index: SceneIndex,
): Block[] {
  const weapons = findWeapons(breakdown);
  const entries = listWeaponEntries(production?.book ?? null);
  if (weapons.length + entries.length === 0) return [];
  const guns = weapons.some(({ hazard }) => hazard.id === 'H1') || entries.some((one) => namesFirearm(weaponName(one)));
  const title = guns ? ' Weapons and blades' : ' Blades';
  return [
    { kind: 'page break' },
    { kind: 'heading', level: 2, text: [danger, title], bookmark: title.trim() },
    ...weapons.flatMap((weapon) => weaponBlock(weapon, index)),
    { kind: 'heading', level: 3, text: 'Before the first day' },
    { kind: 'entries', entries: listBeforehand(guns, entries), ticks: true },
    ...weaponEntryBlocks(entries),
    { kind: 'heading', level: 3, text: 'Count out, count in' },
    countTable(entries, breakdown, index),
    { kind: 'paragraph', text: [hazardCaution, ' ', ...inlineRuns(callWords(production)), '.'] },
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

/** What is settled before the first day, as far as the book has settled it; a gun asks for more than a blade. */
function listBeforehand(guns: boolean, entries: readonly WeaponEntry[]): Inline[] {
  const keepers = agreed(entries.map((one) => one.weapon.keyHolder));
  const blunters = agreed(
    entries.map(({ weapon }) =>
      weapon.bluntedBy === null ? null : `${weapon.bluntedBy} on ${dateWords(weapon.bluntedOn)}`,
    ),
  );
  const told = entries.length > 0 && entries.every((one) => one.weapon.noticeGiven === true);
  return [
    ['One adult keeps them and nobody else: ', keepers === null ? blank(200) : bold(keepers)],
    ['Locked away and covered when the camera does not run. Where: ', blank(170)],
    [
      guns ? 'Blunted, or checked to be a dummy, by ' : 'Blunted, or a soft copy, by ',
      ...(blunters === null ? [blank(120), ' on ', blank(70)] : [bold(blunters)]),
    ],
    [
      `Shown to everyone in the scene before the first take, ${guns ? 'unloaded or blunted' : 'blunted or soft'}, by `,
      blank(120),
    ],
    told
      ? ['Neighbours and the authority told: ', bold('yes'), ', by ', blank(130)]
      : ['Neighbours and the authority told: ', tick, ' yes  ', tick, ' no   by ', blank(130)],
    `Carried in a closed case, never seen from the street.${guns ? ' Nothing live anywhere near.' : ''}`,
    'A child in the scene: soft copy only.',
  ];
}

/** What every entry says; null as long as one says nothing. */
function agreed(answers: readonly (string | null)[]): string | null {
  const given = answers.filter((one) => one !== null);
  return answers.length > 0 && given.length === answers.length ? [...new Set(given)].join('; ') : null;
}

/** Rows to count on: one for each known weapon in each of its scenes, and some blank ones. */
function countTable(entries: readonly WeaponEntry[], breakdown: Breakdown, index: SceneIndex): Block {
  const known = entries.flatMap((entry) => {
    const scenes = breakdown.elements.find((one) => one.id === entry.id)?.scenes ?? [];
    return scenes.map((scene): TableRow => ({ cells: [weaponName(entry), labelOf(scene, index), '', '', ''] }));
  });
  const free = Math.max(blankRows - known.length, leastBlankRows);
  return {
    kind: 'table',
    columns: [
      { head: 'What', share: 3 },
      { head: 'Scene', width: 50 },
      { head: 'Out at', width: 70 },
      { head: 'To', share: 2 },
      { head: 'Back at', width: 70 },
    ],
    rows: [...known, ...Array.from({ length: free }, (): TableRow => ({ cells: ['\n', '', '', '', ''] }))],
  };
}

const blankRows = 6;
const leastBlankRows = 2;
