import type { CalendarDate } from '../base/calendar-date.js';
import type { Book } from '../book/types.js';
import { nameAmount, poolOf, type TaskDraft } from './getting-tasks.js';
import { helperFor } from './helper-for.js';
import { comesByItself, isHere, isOwnShort } from './line-status.js';
import type { PlanLine } from './line-types.js';

/** What is done with many things at once, one task a day and helper: packing, deciding where things come from, the last fittings. */
export function groupTasks(lines: readonly PlanLine[], book: Book): TaskDraft[] {
  return [...packTasks(lines, book), ...decideTasks(lines, book), ...fitTasks(lines, book)];
}

/** One task a day and helper for everything that is packed: a list of one thing each would drown the rest. */
function packTasks(lines: readonly PlanLine[], book: Book): TaskDraft[] {
  const packed = lines.filter((line) => isWanted(line) && line.dates.packed !== null && line.need.uses.length > 0);
  const tasks = (own: readonly PlanLine[], id: string, what: (names: string) => string) =>
    groupLines(own, book, (line) => line.dates.packed).map(
      ({ date, who, mine, count }): TaskDraft => ({
        id: `${id}/${who ?? 'nobody'}/${mine[0]?.department ?? ''}/${count}`,
        kind: 'pack',
        date,
        until: null,
        what: what(mine.map((line) => line.name).join(', ')),
        things: mine.map((line) => line.name),
        who,
        elements: mine.map((line) => line.id),
        done: false,
      }),
    );
  return [
    ...tasks(
      packed.filter((line) => !comesByItself(line.need, line.element)),
      'pack',
      (names) => `pack: ${names}`,
    ),
    ...tasks(
      packed.filter((line) => comesByItself(line.need, line.element)),
      'confirm',
      (names) => `on set tomorrow, confirm with the owner: ${names}`,
    ),
  ];
}

/** One task a day and helper for everything of which nobody has decided where it comes from. */
function decideTasks(lines: readonly PlanLine[], book: Book): TaskDraft[] {
  const open = lines.filter(
    (line) =>
      isWanted(line) &&
      line.pooledWith === null &&
      (line.source.value === null || isOwnShort(line.need, line.element)) &&
      line.need.toGet > 0 &&
      !isHere(line.element),
  );
  return groupLines(open, book, (line) => line.dates.recommended).map(({ date, who, mine, count }) => ({
    id: `decide/${who ?? 'nobody'}/${mine[0]?.department ?? ''}/${count}`,
    kind: 'ask',
    date,
    until: null,
    what: `decide where these come from, and order them: ${mine.map((line) => nameAmount(line, lines)).join(', ')}`,
    things: mine.map((line) => nameAmount(line, lines)),
    who,
    elements: mine.flatMap((line) => [line, ...poolOf(line, lines)].map((one) => one.id)),
    done: false,
  }));
}

/** The last day for everything that must be fitted and of which nobody has said when. */
function fitTasks(lines: readonly PlanLine[], book: Book): TaskDraft[] {
  const open = lines.filter((line) => isWanted(line) && line.dates.fittingAssumed);
  return groupLines(open, book, (line) => line.dates.needed).map(({ date, who, mine, count }) => ({
    id: `fit/${who ?? 'nobody'}/${mine[0]?.department ?? ''}/${count}`,
    kind: 'fit',
    date,
    until: null,
    what: `last day to fit: ${mine.map((line) => line.name).join(', ')}`,
    things: mine.map((line) => line.name),
    who,
    elements: mine.map((line) => line.id),
    done: false,
  }));
}

interface LineGroup {
  readonly date: CalendarDate | null;
  readonly who: string | null;
  readonly mine: readonly PlanLine[];
  /** 1-based among the groups of one helper and department: an identity that outlives a new date. */
  readonly count: number;
}

function groupLines(
  lines: readonly PlanLine[],
  book: Book,
  when: (line: PlanLine) => CalendarDate | null,
): LineGroup[] {
  const groups = new Map<string, PlanLine[]>();
  for (const line of lines) {
    const key = JSON.stringify([line.who ?? helperFor(line.department, book), line.department, when(line)]);
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  const counts = new Map<string, number>();
  const inOrder = [...groups].sort((a, b) => compareDates(when(a[1][0] as PlanLine), when(b[1][0] as PlanLine)));
  return inOrder.map(([, mine]) => {
    const first = mine[0] as PlanLine;
    const who = first.who ?? helperFor(first.department, book);
    const kind = `${who}/${first.department}`;
    const count = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, count);
    return { date: when(first), who, mine, count };
  });
}

/** True for what the film still wants. */
export function isWanted(line: PlanLine): boolean {
  return line.status !== 'done without' && line.status !== 'not needed' && line.status !== 'replaced';
}

/** Orders two dates; what has none comes last. */
export function compareDates(a: CalendarDate | null, b: CalendarDate | null): number {
  if (a === b) return 0;
  if (a === null) return 1;
  if (b === null) return -1;
  return a < b ? -1 : 1;
}
