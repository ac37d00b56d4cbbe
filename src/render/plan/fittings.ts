import { addDays } from '../../base/calendar-date.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { Plan } from '../../plan/plan-types.js';
import { type Block, blank, bold, type TableRow, tick } from '../layout/kit.js';
import { dateWords } from './plan-words.js';

/** Days before the first shooting day by which the last fitting must be over: common practice. */
const lastFitting = 4;

const columns = [
  { head: '', width: 12 },
  { head: 'When', width: 84 },
  { head: 'What', share: 1.4 },
  { head: 'Who wears it', share: 1 },
  { head: 'Front', width: 36 },
  { head: 'Back', width: 34 },
  { head: 'Side', width: 32 },
  { head: 'Notes', share: 1.4 },
];

/** Fittings by date, with boxes for the three pictures; those without a date stand last with a blank. */
export function fittingBlocks(plan: Plan, isMine: (line: PlanLine) => boolean): Block[] {
  const lines = plan.lines.filter((line) => isMine(line) && line.status !== 'done without');
  if (lines.length === 0) return [];
  const dated = lines
    .filter((line) => (line.element?.fitting ?? null) !== null)
    .sort((a, b) => ((a.element?.fitting ?? '') < (b.element?.fitting ?? '') ? -1 : 1));
  const rows = dated.map(
    (line): TableRow => ({
      cells: [
        tick,
        dateWords(line.element?.fitting ?? null),
        bold(line.name),
        line.usedBy.join(', '),
        tick,
        tick,
        tick,
        blank(76),
      ],
    }),
  );
  const open: TableRow[] =
    lines.length > dated.length
      ? [
          {
            cells: [
              tick,
              blank(76),
              `everything else: ${lines.length - dated.length} things without a date`,
              '',
              tick,
              tick,
              tick,
              blank(76),
            ],
          },
        ]
      : [];
  const first = plan.days[0]?.date ?? null;
  const limit = first === null ? '' : ` The last fitting is over by ${dateWords(addDays(first, -lastFitting))}.`;
  return [
    { kind: 'heading', level: 2, text: 'Fittings', bookmark: 'Fittings' },
    {
      kind: 'paragraph',
      text: `30 to 45 minutes each, before anything is aged, cut or dyed; doubles have a second fitting.${limit}`,
    },
    { kind: 'table', columns, rows: [...rows, ...open] },
  ];
}
