import { addDays, type CalendarDate } from '../base/calendar-date.js';
import { slug } from '../base/slug.js';
import { matchEntries } from '../book/match-entries.js';
import type { Book } from '../book/types.js';
import type { Breakdown } from '../breakdown/types.js';
import type { Overnight, PlanDay } from './day-types.js';
import { type Add, addGetting, type TaskDraft } from './getting-tasks.js';
import { compareDates, groupTasks, isWanted } from './grouped-tasks.js';
import { helperFor } from './helper-for.js';
import type { PlanLine } from './line-types.js';
import { counted } from './per-take.js';
import type { Task } from './plan-types.js';
import { layPrep } from './prep-steps.js';
import { listReadyStates } from './ready-states.js';
import { listRoughCopies } from './rough-copies.js';
import { conversionGround } from './state-conversion.js';

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
    ...readyTasks(lines, days, book),
    ...days.map((day) => shootTask(day, book)),
    ...askSizes(breakdown, book),
  ];
  return [...single, ...groupTasks(lines, book)]
    .map((task) => ({ things: [], ...task, late: !task.done && (task.late === true || isPast(task, today)) }))
    .sort((a, b) => compareDates(a.date, b.date));
}

function isPast({ date, until }: TaskDraft, today: CalendarDate): boolean {
  return date !== null && (until ?? date) < today;
}

function lineTasks(line: PlanLine, lines: readonly PlanLine[], book: Book): TaskDraft[] {
  const { element } = line;
  if (!isWanted(line)) return [];
  const who = line.who ?? helperFor(line.department, book);
  const base = { who, elements: [line.id], until: null, done: false };
  const tasks: TaskDraft[] = [];
  const add = (kind: Task['kind'], date: CalendarDate | null, words: string, rest: Partial<TaskDraft> = {}) => {
    tasks.push({ id: `${line.id}/${rest.id ?? kind}`, kind, date, what: words, ...base, ...omitId(rest) });
  };
  const isFromAnother = !isHelpersOwn(line.owner ?? line.from, who, book);
  addGetting(line, lines, isFromAnother, add);
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
  if (line.back !== null && isFromAnother)
    add('return', line.back, `${line.name}: back with ${line.owner ?? line.from ?? 'its owner'} today`, {
      done: Boolean(element?.depositReturned),
    });
  return tasks;
}

/** True when the owner of a thing is the helper who looks after it, by name or id. */
function isHelpersOwn(owner: string | null, who: string | null, { helpers }: Book): boolean {
  const helper = helpers.find(({ id }) => id === who);
  return owner !== null && helper !== undefined && [helper.id, helper.name].map(slug).includes(slug(owner));
}

function omitId({ id: _, ...rest }: Partial<TaskDraft>): Partial<TaskDraft> {
  return rest;
}

function addPrep(line: PlanLine, book: Book, add: Add): void {
  const prep = line.element?.prep ?? [];
  const { makingTasks, prepStarts, finishStarts } = line.dates;
  const lay = (tasks: typeof prep, start: CalendarDate | null) =>
    layPrep(tasks, book.prepHoursADay.value).steps.map((step) => ({ step, start }));
  const making = lay(prep.slice(0, makingTasks), prepStarts);
  const finishing = lay(prep.slice(makingTasks), finishStarts);
  for (const [index, { step, start }] of [...making, ...finishing].entries()) {
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

/** How many conversions of the same thing stand before one: an identity that other things do not move. */
function countBefore(overnight: readonly Overnight[], index: number): number {
  return overnight.slice(0, index).filter((one) => one.element === overnight[index]?.element).length;
}

function convertTask(one: Overnight, index: number, lines: readonly PlanLine[], book: Book): TaskDraft {
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

/** What must look as the story leaves it later is brought there by hand, when it is shot first. */
function readyTasks(lines: readonly PlanLine[], days: readonly PlanDay[], book: Book): TaskDraft[] {
  return lines.filter(isWanted).flatMap((line) =>
    listReadyStates(line.need, conversionGround(line.need, line.element, book.drier.value)).map((one, index) => ({
      id: `${line.id}/ready-${index + 1}`,
      kind: 'work' as const,
      date: one.date,
      until: null,
      what: one.words,
      who: line.who ?? helperFor(line.department, book),
      elements: [line.id],
      done: Boolean(line.element?.ready) || days.some((day) => day.shot && day.number === one.slot.day),
    })),
  );
}

function shootTask(day: PlanDay, book: Book): TaskDraft {
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
function askSizes(breakdown: Breakdown, book: Book): TaskDraft[] {
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
