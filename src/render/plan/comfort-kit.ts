import { matchEntries } from '../../book/match-entries.js';
import type { BreakdownScene } from '../../breakdown/types.js';
import { findStateChanges } from '../../trade/state-changes.js';
import { type Block, bold, type TableRow } from '../layout/kit.js';
import type { Production } from '../types.js';
import { labelOf, type SceneIndex } from '../words/scene-list-words.js';
import { capitalize } from '../words/story-words.js';

/** What people need beside their costume, scene by scene: where someone gets wet or cold, or is in little clothing. */
export function comfortBlocks({ book }: Production, index: SceneIndex): Block[] {
  const entries = matchEntries(
    book.scenes,
    index.scenes.map((scene) => ({ id: scene.id, names: [] })),
  ).byThing;
  const rows = index.scenes.flatMap((scene): TableRow[] => {
    const wet = scene.wears
      .filter((wears) => wears.garments.some((one) => isWet(one.stateIn) || isWet(one.stateOut)))
      .map((wears) => wears.person);
    const cold = (entries.get(scene.id)?.cold ?? false) || (scene.setting !== 'INT' && scene.light === 'night');
    const kit = [
      ...(wet.length > 0
        ? [
            `for ${wet.join(', ')}: a dry change, two towels each, robe, hot drink, warm room; stop when someone shivers`,
          ]
        : []),
      ...(cold ? ['thermal layers under the costume, hand warmers, coats between takes, flat shoes'] : []),
      ...(bare(scene) ? ['robe and a screen to change behind; only those who must be there'] : []),
    ];
    return kit.length > 0 ? [{ cells: [bold(labelOf(scene.id, index)), `${kit.map(capitalize).join('. ')}.`] }] : [];
  });
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'To keep people warm and covered', bookmark: 'Warm and covered' },
    {
      kind: 'table',
      columns: [
        { head: 'Scene', fit: true },
        { head: 'Bring', share: 1 },
      ],
      rows,
    },
  ];
}

function isWet(state: string | null): boolean {
  return state !== null && findStateChanges(state).some((row) => row.kind === 'wet');
}

function bare(scene: BreakdownScene): boolean {
  return scene.wears.some((wears) =>
    wears.garments.some((one) => /nightdress|nightgown|underwear|swimsuit|bathrobe|pyjamas/i.test(one.name)),
  );
}
