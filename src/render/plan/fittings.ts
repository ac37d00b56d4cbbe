import { addDays, type CalendarDate } from '../../base/calendar-date.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { Plan } from '../../plan/plan-types.js';
import { quantityDefaults } from '../../trade/quantity-defaults.js';
import { type Block, blank, bold, type Inline, type TableRow, tick } from '../layout/kit.js';
import { dateWords } from './plan-words.js';

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
        isAfter(plan, line)
          ? { stack: [dateWords(line.element?.fitting ?? null), bold('too late')] }
          : dateWords(line.element?.fitting ?? null),
        bold(line.name),
        line.usedBy.join(', '),
        tick,
        tick,
        tick,
        blank(76),
      ],
    }),
  );
  const open = lines.filter((line) => !dated.includes(line));
  const limit = limitWords(plan, lines);
  return [
    { kind: 'heading', level: 2, text: 'Fittings', bookmark: 'Fittings' },
    {
      kind: 'paragraph',
      text: `30 to 45 minutes each, before anything is aged, cut or dyed; doubles have a second fitting.${limit}`,
    },
    ...(rows.length > 0 ? [{ kind: 'table', columns, rows } as const] : []),
    ...(open.length > 0 ? [{ kind: 'paragraph', text: openWords(open) } as const] : []),
  ];
}

/** What nobody has given a day is named, so that somebody does. */
function openWords(lines: readonly PlanLine[]): Inline {
  return [bold('No fitting day yet: '), lines.map((line) => line.name).join(', '), '.'];
}

/** True for a fitting that leaves no time to change what does not fit. */
function isAfter(plan: Plan, line: PlanLine): boolean {
  const last = lastDay(plan);
  const fitting = line.element?.fitting ?? null;
  return last !== null && fitting !== null && fitting > last && !line.element?.checked;
}

function lastDay(plan: Plan): CalendarDate | null {
  const first = plan.days[0]?.date ?? null;
  return first === null ? null : addDays(first, -quantityDefaults.lastFitting.value);
}

/** The day by which fittings are over, and what comes in only after it. */
function limitWords(plan: Plan, lines: readonly PlanLine[]): string {
  const last = lastDay(plan);
  if (last === null) return '';
  const after = lines.filter((line) => line.need.toGet > 0 && (line.dates.orderBy ?? '') > last);
  const words = ` The last fitting is over by ${dateWords(last)}.`;
  if (after.length === 0) return words;
  const names = after.map((line) => line.name).join(', ');
  return `${words} Ordered at the latest hour, these would come after it: ${names}. Get them by then, or give them a fitting day in the book.`;
}
