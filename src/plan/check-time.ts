import { type CalendarDate, formatDate, formatShortDate } from '../base/calendar-date.js';
import type { Diagnostic } from '../base/diagnostic.js';
import type { Book } from '../book/types.js';
import { sayPlan } from '../messages/plan.js';
import type { PlanLine } from './line-types.js';
import type { Plan } from './plan-types.js';

/** What cannot come in time. What nobody has decided on is said once a shooting day: one message each would drown the rest. */
export function checkTime(plan: Plan, book: Book): Diagnostic[] {
  const late = plan.lines.filter((line) => line.dates.tooLate !== null);
  const open = new Map<number | null, PlanLine[]>();
  for (const line of late.filter(isUndecided)) open.set(dayOf(line), [...(open.get(dayOf(line)) ?? []), line]);
  const groups = [...open].filter(([day, lines]) => day !== null && lines.length > 1);
  const grouped = new Set(groups.flatMap(([, lines]) => lines));
  return [
    ...late.filter((line) => !grouped.has(line)).map((line) => sayLate(line, book)),
    ...groups.map(([day, lines]) => sayAllLate(day as number, lines, book)),
  ];
}

function isUndecided({ source, ordered, element }: PlanLine): boolean {
  return source.value === null && ordered === null && !element?.problem && !element?.promised;
}

/** The shooting day that wants it first. */
function dayOf({ need }: PlanLine): number | null {
  return need.uses.find((use) => use.slot.day !== null)?.slot.day ?? null;
}

function sayLate(line: PlanLine, book: Book): Diagnostic {
  const day = dayOf(line);
  // Of what the book does not name, the day that wants it speaks.
  const at = line.element?.at ?? (day === null ? undefined : book.days[day - 1]?.at);
  return sayPlan('plan-too-late', { name: line.name, words: line.dates.tooLate ?? '' }, at);
}

function sayAllLate(day: number, lines: readonly PlanLine[], book: Book): Diagnostic {
  const dates = (of: (line: PlanLine) => CalendarDate | null) => lines.flatMap((line) => of(line) ?? []).sort();
  const by = dates((line) => line.dates.orderBy);
  const town = dates((line) => line.dates.inHand);
  return sayPlan(
    'plan-undecided-late',
    {
      names: [...new Set(lines.map((line) => line.name))].join(', '),
      count: lines.length,
      day,
      from: formatDate(by[0] as CalendarDate),
      until: by.at(-1) === by[0] ? null : formatShortDate(by.at(-1) as CalendarDate),
      town: formatShortDate(town.at(-1) as CalendarDate),
    },
    book.days[day - 1]?.at,
  );
}
