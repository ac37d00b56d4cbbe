import { addDays, type CalendarDate } from '../base/calendar-date.js';
import { matchEntries } from '../book/match-entries.js';
import type { Book } from '../book/types.js';
import type { Breakdown } from '../breakdown/types.js';
import type { Overnight, PlanDay } from './day-types.js';
import { type Add, addGetting, nameAmount, poolOf, type TaskDraft } from './getting-tasks.js';
import { helperFor } from './helper-for.js';
import { comesByItself, isHere, isOwnShort } from './line-status.js';
import type { PlanLine } from './line-types.js';
import { counted } from './per-take.js';
import type { Task } from './plan-types.js';
import { layPrep } from './prep-steps.js';
import { listRoughCopies } from './rough-copies.js';

/** Everything that someone must do on a day, in order of date; what has no date comes last. */
export function listTasks(
  breakdown: Breakdown,
  book: Book,
  lines: readonly PlanLine[],
  days: readonly PlanDay[],
  overnight: readonly Overnight[],
  today: CalendarDate,
): Task[] {
  const single = [
    ...lines.flatMap((line) => lineTasks(line, lines, book)),
    ...overnight.map((one, index) => convertTask(one, countBefore(overnight, index), lines, book)),
    ...days.map((day) => shootTask(day, book)),
    ...askSizes(breakdown, book),
  ];
  return [...single, ...packTasks(lines, book), ...decideTasks(lines, book)]
    .map((task) => ({ ...task, late: !task.done && (task.late === true || isPast(task, today)) }))
    .sort((a, b) => compareDates(a.date, b.date));
}

type Draft = TaskDraft;

function isPast({ date, until }: Draft, today: CalendarDate): boolean {
  return date !== null && (until ?? date) < today;
}

function lineTasks(line: PlanLine, lines: readonly PlanLine[], book: Book): Draft[] {
  const { element } = line;
  if (!isWanted(line)) return [];
  const who = line.who ?? helperFor(line.department, book);
  const base = { who, elements: [line.id], until: null, done: false };
  const tasks: Draft[] = [];
  const add = (kind: Task['kind'], date: CalendarDate | null, words: string, rest: Partial<Draft> = {}) => {
    tasks.push({ id: `${line.id}/${rest.id ?? kind}`, kind, date, what: words, ...base, ...omitId(rest) });
  };
  addGetting(line, lines, add);
  if (element?.fitting)
    add('fit', element.fitting, `fit ${line.name}`, { done: element.fitting < (element.checked ?? '') });
  const rough = listRoughCopies(line);
  if (rough !== null)
    add('work', line.dates.inHand, `get ${rough.words} of ${line.name}: the same shape, they may be rough`, {
      id: 'rough',
      done: Boolean(element?.ready),
    });
  addPrep(line, book, add);
  if (element?.test) add('test', element.test, `camera test of ${line.name}`);
  if (element?.rehearsal) add('rehearse', element.rehearsal, `rehearsal with ${line.name}`);
  if (line.back !== null)
    add('return', line.back, `${line.name}: back with ${line.owner ?? line.from ?? 'its owner'} today`, {
      done: Boolean(element?.depositReturned),
    });
  return tasks;
}

function omitId({ id: _, ...rest }: Partial<Draft>): Partial<Draft> {
  return rest;
}

function addPrep(line: PlanLine, book: Book, add: Add): void {
  const start = line.dates.prepStarts;
  const { steps } = layPrep(line.element?.prep ?? [], book.prepHoursADay.value);
  for (const [index, step] of steps.entries()) {
    const wait = step.waitDays > 0 ? `, then ${counted(step.waitDays, 'day')} to dry or settle` : '';
    const hours = step.hours === null || step.hours === 0 ? '' : ` (${step.hours} h)`;
    const done = line.element?.ready !== null;
    add('work', start === null ? null : addDays(start, step.firstDay), `${line.name}: ${step.task}${hours}${wait}`, {
      id: `work-${index + 1}`,
      until: start === null ? null : addDays(start, step.lastDay),
      ...(step.who ? { who: step.who } : {}),
      done,
      ...(line.dates.workShort === null || done ? {} : { late: true }),
    });
  }
}

/** One task a day and helper for everything that is packed: a list of one thing each would drown the rest. */
function packTasks(lines: readonly PlanLine[], book: Book): Draft[] {
  const packed = lines.filter((line) => isWanted(line) && line.dates.packed !== null && line.need.uses.length > 0);
  const tasks = (own: readonly PlanLine[], id: string, what: (names: string) => string) =>
    groupLines(own, book, (line) => line.dates.packed).map(
      ({ date, who, mine, count }): Draft => ({
        id: `${id}/${who ?? 'nobody'}/${mine[0]?.department ?? ''}/${count}`,
        kind: 'pack',
        date,
        until: null,
        what: what(mine.map((line) => line.name).join(', ')),
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
function decideTasks(lines: readonly PlanLine[], book: Book): Draft[] {
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
    who,
    elements: mine.flatMap((line) => [line, ...poolOf(line, lines)].map((one) => one.id)),
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

function isWanted(line: PlanLine): boolean {
  return line.status !== 'done without' && line.status !== 'not needed' && line.status !== 'replaced';
}

/** How many conversions of the same thing stand before one: an identity that other things do not move. */
function countBefore(overnight: readonly Overnight[], index: number): number {
  return overnight.slice(0, index).filter((one) => one.element === overnight[index]?.element).length;
}

function convertTask(one: Overnight, index: number, lines: readonly PlanLine[], book: Book): Draft {
  const line = lines.find((each) => each.id === one.element);
  const who = line?.who ?? helperFor(line?.department ?? 'costume', book);
  return {
    id: `${one.element}/convert-${index + 1}`,
    kind: 'convert',
    date: one.conversion.after.date,
    until: null,
    what: one.words,
    who,
    elements: [one.element],
    done: false,
  };
}

function shootTask(day: PlanDay, book: Book): Draft {
  const places = day.locations.map((id) => book.locations.find((one) => one.id === id)?.name ?? id);
  const where = places.length > 0 ? ` at ${places.join(', then ')}` : '';
  const scenes = day.scenes.map((slot) => slot.label).join(', ');
  return {
    id: `shoot/${day.number}`,
    kind: 'shoot',
    date: day.date,
    until: null,
    what: `shooting day ${day.number} of ${day.of}${where}: scenes ${scenes || 'none yet'}`,
    who: null,
    elements: [],
    done: day.shot,
  };
}

/** Sizes are asked on the first day of preparation, of everyone who wears something and whose sizes the book lacks. */
function askSizes(breakdown: Breakdown, book: Book): Draft[] {
  const people = matchEntries(book.people, breakdown.cast).byThing;
  return breakdown.cast
    .filter((person) => person.changes.length > 0 && (people.get(person.id)?.privately.sizes.length ?? 0) === 0)
    .map((person) => ({
      id: `${person.id}/sizes`,
      kind: 'ask',
      date: book.prepStarts,
      until: null,
      what: `ask sizes and allergies of ${people.get(person.id)?.playedBy ?? `whoever plays ${person.name}`}`,
      who: helperFor('costume', book),
      elements: [],
      done: false,
    }));
}

function compareDates(a: CalendarDate | null, b: CalendarDate | null): number {
  if (a === b) return 0;
  if (a === null) return 1;
  if (b === null) return -1;
  return a < b ? -1 : 1;
}
