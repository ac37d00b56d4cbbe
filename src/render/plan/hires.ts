import type { PlanLine } from '../../plan/line-types.js';
import type { Plan } from '../../plan/plan-types.js';
import { type Block, blank, bold, type TableRow, tick } from '../layout/kit.js';
import { dateWords, moneyWords } from './plan-words.js';

const columns = [
  { head: 'What', share: 1.6 },
  { head: 'Owner', share: 1.3 },
  { head: 'Price', share: 0.9 },
  { head: 'Deposit', share: 0.9 },
  { head: 'Fetch', share: 0.9 },
  { head: 'Must be back', share: 1 },
  { head: 'Box\nkept', width: 32 },
  { head: 'Photo\nout', width: 36 },
  { head: 'Photo\nback', width: 36 },
];

/** What is hired and lent, with the day it must be back in its owner's hands. */
export function hireBlocks(plan: Plan, isMine: (line: PlanLine) => boolean, rule: string | null): Block[] {
  const lines = plan.lines.filter(
    (line) => isMine(line) && (line.source.value === 'hire' || line.source.value === 'borrow'),
  );
  if (lines.length === 0) return [];
  const rows = lines.map(
    (line): TableRow => ({
      cells: [
        { stack: [bold(line.name), ...(line.note ? [line.note] : [])] },
        line.owner ?? line.from ?? blank(60),
        line.cost ? moneyWords(line.cost.gross) : line.source.value === 'borrow' ? 'lent' : blank(40),
        line.deposit ? moneyWords(line.deposit) : '',
        dateWords(line.collect ?? line.dates.inHand),
        bold(dateWords(line.back)),
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
    { kind: 'table', columns, rows },
  ];
}
