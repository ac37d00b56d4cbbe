import { copyWords } from '../../plan/copy-words.js';
import type { Overnight } from '../../plan/day-types.js';
import type { Plan } from '../../plan/plan-types.js';
import { type Block, bold, type Inline, type TableRow, tick } from '../layout/kit.js';
import type { Production } from '../types.js';
import { dateWords, slotWords } from './plan-words.js';

const columns = [
  { head: '', width: 12 },
  { head: 'Evening of', width: 84 },
  { head: 'What', share: 1.4 },
  { head: 'From → to', share: 2 },
  { head: 'For', share: 1 },
  { head: 'Hours needed', width: 68 },
  { head: 'There', width: 44 },
];

/** What must be washed, dried or changed between two scenes; what cannot be done in time says so. */
export function overnightBlocks(
  { plan, book }: Production,
  isMine: (one: Pick<Overnight, 'element'>) => boolean,
): Block[] {
  const list = plan.overnight.filter(isMine);
  const messes = messEntries(plan, (id) => isMine({ element: id }));
  const ready = readyEntries(plan, (id) => isMine({ element: id }));
  if (list.length + messes.length + ready.length === 0) return [];
  const rows = list.map((one): TableRow => {
    const { conversion } = one;
    const { low, high } = conversion.hoursNeeded;
    const needed = low === high ? hours(low) : `${hours(low)} to ${hours(high)}`;
    const there = conversion.hoursThere === null ? '?' : hours(conversion.hoursThere);
    return {
      cells: [
        tick,
        dateWords(conversion.after.date),
        [bold(one.name), ' ', copyWords(conversion.copies)],
        `${conversion.from} → ${conversion.to}${conversion.wayBack ? '' : '; no way back'}`,
        slotWords(conversion.before),
        needed,
        one.short ? bold(`${there}: too short`) : there,
      ],
    };
  });
  const drier = book.drier.value
    ? 'There is a drier machine; wool and leather never go in.'
    : 'No drier machine: a warm room, air, a line.';
  return [
    { kind: 'heading', level: 2, text: 'Between the days: wash, dry, change', bookmark: 'Between the days' },
    {
      kind: 'paragraph',
      text: `${drier} Cotton 8 to 12 hours, wool 24 to 36, leather boots 36 to 48. Too short means: get a double.`,
    },
    ...(rows.length > 0 ? [{ kind: 'table', columns, rows } as const] : []),
    ...(ready.length > 0
      ? [
          {
            kind: 'paragraph',
            text: bold('Made ready by hand'),
            keepWithNext: true,
          } as const,
          { kind: 'entries', entries: ready, ticks: true } as const,
        ]
      : []),
    ...(messes.length > 0
      ? [
          { kind: 'paragraph', text: bold('Spoilt before it is wanted clean'), keepWithNext: true } as const,
          { kind: 'entries', entries: messes } as const,
        ]
      : []),
  ];
}

/** Ids of the tasks that bring a copy by hand into a state that no scene shot before leaves it in. */
const readying = /\/ready-\d+$/;

/** Copies that must look as the story leaves them later, though nothing shot before makes them so: by which day. */
function readyEntries({ tasks }: Plan, isMine: (id: string) => boolean): Inline[] {
  return tasks
    .filter((task) => readying.test(task.id) && task.elements.some(isMine) && !task.done)
    .map((task) => [bold(dateWords(task.date)), `: ${task.what}`]);
}

/** What gets wet, bloody or dirty in a scene shot before one that wants it clean: warnings first named, questions with their sign. */
function messEntries(plan: Plan, isMine: (id: string) => boolean): Inline[] {
  return plan.messes
    .filter((one) => one.things.some(isMine))
    .map((one): Inline => [bold(one.sure ? '! ' : '? '), `${one.words}.`]);
}

function hours(value: number): string {
  return `${Math.round(value * 10) / 10} h`;
}
