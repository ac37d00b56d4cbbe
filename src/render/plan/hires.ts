import type { Breakdown, BreakdownScene } from '../../breakdown/types.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { Plan } from '../../plan/plan-types.js';
import { type Block, blank, bold, danger, type Inline, type TableRow, tick } from '../layout/kit.js';
import { moneyWords, narrowDate } from './plan-words.js';

const columns = [
  { head: 'What', share: 2 },
  { head: 'Owner', share: 1.3 },
  { head: 'Price', width: 54 },
  { head: 'Deposit', width: 54 },
  { head: 'Fetch', width: 56 },
  { head: 'Must be\nback', width: 60 },
  { head: 'Box\nkept', width: 32 },
  { head: 'Photo\nout', width: 36 },
  { head: 'Photo\nback', width: 36 },
];

/** What is hired and lent, with the day it must be back in its owner's hands. */
export function hireBlocks(
  plan: Plan,
  isMine: (line: PlanLine) => boolean,
  rule: string | null,
  breakdown: Breakdown,
): Block[] {
  const lines = plan.lines.filter(
    (line) => isMine(line) && (line.source.value === 'hire' || line.source.value === 'borrow'),
  );
  if (lines.length === 0) return [];
  const rows = lines.map(
    (line): TableRow => ({
      cells: [
        { stack: [bold(line.name), ...(line.note ? [line.note] : []), ...bloodWords(line, breakdown)] },
        line.owner ?? line.from ?? blank(60),
        line.cost ? moneyWords(line.cost.gross) : line.source.value === 'borrow' ? 'lent' : blank(40),
        line.deposit ? moneyWords(line.deposit) : '',
        narrowDate(line.collect ?? line.dates.inHand),
        bold(narrowDate(line.back)),
        tick,
        tick,
        tick,
      ],
    }),
  );
  return [
    { kind: 'heading', level: 2, text: 'Hired and lent', bookmark: 'Hired and lent' },
    {
      kind: 'paragraph',
      text: [
        'Back means ',
        bold('in the owner’s hands'),
        ', not posted. A day late can cost a whole period more, or the deposit.',
        rule === null ? '' : ` ${rule}`,
      ],
    },
    { kind: 'table', columns, rows, tight: true },
  ];
}

/** A warning for what is worn in a scene with blood: it is not ours, and blood does not wash out of everything. */
function bloodWords({ need }: PlanLine, { scenes }: Breakdown): Inline[] {
  if (need.category !== 'costumes') return [];
  const bloody = new Set(scenes.filter(hasBlood).map((scene) => scene.id));
  const labels = need.uses.filter((use) => bloody.has(use.scene)).map((use) => use.slot.label);
  return labels.length === 0
    ? []
    : [[danger, bold(` Blood in sc ${labels.join(', ')}`), ': out of reach, or a cover over it; ask the owner.']];
}

function hasBlood(scene: BreakdownScene): boolean {
  const isBlood = (text: string | null) => text !== null && /\bblood/i.test(text);
  return scene.elements.some((one) => isBlood(one.name) || isBlood(one.stateIn) || isBlood(one.stateOut));
}
