import { formatPercent } from '../../base/ratio.js';
import { matchEntries } from '../../book/match-entries.js';
import type { Book } from '../../book/types.js';
import type { PlanLine } from '../../plan/line-types.js';
import { countTakes, spareOf, type TakeCount } from '../../plan/per-take.js';
import type { Plan } from '../../plan/plan-types.js';
import { countNeeded } from '../../plan/short-copies.js';
import { listEating } from '../../plan/used-up.js';
import { type Block, bold, type TableRow } from '../layout/kit.js';
import { needWords } from './plan-words.js';

const columns = [
  { head: 'What', share: 2 },
  { head: 'Per take', width: 50 },
  { head: 'Scenes', share: 1 },
  { head: 'Setups', width: 40 },
  { head: 'Takes', width: 36 },
  { head: 'Rehearsals', width: 60 },
  { head: 'Spare', width: 40 },
  { head: 'In all', width: 46 },
  { head: 'Pack', width: 44 },
  { head: 'Packs', width: 36 },
];

/** What each take uses up, and how it adds to packs. */
export function consumableBlocks(plan: Plan, book: Book, isMine: (line: PlanLine) => boolean): Block[] {
  const lines = plan.lines.filter(
    (line) => isMine(line) && (line.need.usedUp || line.need.uses.some((use) => use.onCamera === 'copy each take')),
  );
  if (lines.length === 0) return [];
  const food = lines.some((line) => line.need.category === 'food');
  return [
    { kind: 'heading', level: 2, text: 'Used up in each take', bookmark: 'Used up' },
    { kind: 'table', columns, rows: lines.map((line) => consumableRow(line, book)) },
    ...(food
      ? [
          {
            kind: 'paragraph',
            text: [
              bold('Food: '),
              'the crew will eat it, so label it. Ask every actor about allergies by name before they bite; keep a spit cup and water at hand.',
            ],
          } as const,
        ]
      : []),
  ];
}

function consumableRow(line: PlanLine, book: Book): TableRow {
  const { need, element } = line;
  if (need.uses.length === 0 || line.scenes.length === 0)
    return {
      cells: [
        bold(need.name),
        '',
        '',
        '',
        '',
        '',
        '',
        needWords(need, need.recommended),
        line.packText ?? '',
        packWords(line),
      ],
    };
  const scenes = matchEntries(
    book.scenes,
    need.uses.map((use) => ({ id: use.scene, names: [] })),
  ).byThing;
  const eating = need.usedUp
    ? listEating(need.uses, element)
    : need.uses.filter((use) => use.onCamera === 'copy each take');
  const counts = eating.map((use) => countTakes(book, element, scenes.get(use.scene) ?? null, [need.name]));
  const range = (pick: (count: TakeCount) => number) => [...new Set(counts.map(pick))].join(' or ');
  const isLiquid = need.unit === 'ml' || need.unit === 'g';
  const spare = isLiquid ? 'loss 30 %' : formatPercent(spareOf(book, element));
  return {
    cells: [
      bold(need.name),
      element?.perTake?.text ?? '1',
      [...eating]
        .sort((a, b) => a.storyOrder - b.storyOrder)
        .map((use) => use.slot.label)
        .join(', '),
      range((count) => count.setups),
      range((count) => count.takes),
      range((count) => count.rehearsals),
      spare,
      needWords(need, countNeeded(need)),
      line.packText ?? '',
      packWords(line),
    ],
  };
}

/** Packs are counted only where the book says how much is in one. */
function packWords(line: PlanLine): string {
  if (line.pooledWith !== null) return 'shared';
  return line.packText === null ? '' : String(line.packs);
}
