import type { Book } from '../../book/types.js';
import type { Plan, Task } from '../../plan/plan-types.js';
import { type Block, bold, type Inline, type InlineRun, type TableRow, tick } from '../layout/kit.js';
import { dateWords, helperWords, narrowDate } from './plan-words.js';

/** Everything to do, by date, with a box to tick; `isMine` picks whose. */
export function taskBlocks(
  plan: Plan,
  book: Book,
  title: string,
  isMine: (task: Task) => boolean,
  withWho: boolean,
): Block[] {
  const tasks = plan.tasks.filter((task) => isMine(task) && !task.done);
  if (tasks.length === 0) return [];
  const columns = [
    { head: '', width: 12 },
    { head: 'By', fit: true },
    ...(withWho ? [{ head: 'Who', ...whoWidth(tasks, book) }] : []),
    { head: 'What', share: 1 },
  ];
  const rows = tasks.map(
    (task): TableRow => ({
      cells: [
        tick,
        whenWords(task),
        ...(withWho ? [task.kind === 'shoot' ? 'everyone' : helperWords(task.who, book)] : []),
        [bold(task.late ? 'LATE: ' : ''), ...tickedWords(task)],
      ],
    }),
  );
  return [
    { kind: 'heading', level: 2, text: title, bookmark: title },
    { kind: 'table', columns, rows, tight: true },
  ];
}

/** The column of names is as wide as they are, as long as they leave the tasks their room. */
function whoWidth(tasks: readonly Task[], book: Book): { readonly fit: true } | { readonly width: number } {
  return tasks.some((task) => helperWords(task.who, book).length > longName) ? { width: 84 } : { fit: true };
}

/** Characters of a name that still fits a narrow column. */
const longName = 16;

/** Fewer things than this are ticked together. */
const leastTicked = 3;

/** What is to be done; of many things done at once each gets a box of its own. */
export function tickedWords({ what, things }: Task): (string | InlineRun)[] {
  const list = things.join(', ');
  if (things.length < leastTicked || !what.endsWith(list)) return [what];
  return [
    what.slice(0, what.length - list.length),
    ...things.flatMap((thing, at) => [at === 0 ? '' : ', ', tick, `\u00a0${thing.replace(' × ', '\u00a0×\u00a0')}`]),
  ];
}

/** `Fri 12 March`, or `Fri 12 Mar to Sat 13 Mar`. */
export function whenWords(task: Task): Inline {
  if (task.date === null) return 'no date yet';
  return task.until === null || task.until === task.date
    ? dateWords(task.date)
    : `${narrowDate(task.date)} to ${narrowDate(task.until)}`;
}
