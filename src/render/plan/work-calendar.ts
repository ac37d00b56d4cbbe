import type { Book } from '../../book/types.js';
import type { Plan, Task } from '../../plan/plan-types.js';
import { type Block, bold, type Inline, type TableRow, tick } from '../layout/kit.js';
import { dateWords, helperWords } from './plan-words.js';

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
    { head: 'By', width: 92 },
    ...(withWho ? [{ head: 'Who', width: 62 }] : []),
    { head: 'What', share: 1 },
  ];
  const rows = tasks.map(
    (task): TableRow => ({
      cells: [
        tick,
        whenWords(task),
        ...(withWho ? [task.kind === 'shoot' ? 'everyone' : helperWords(task.who, book)] : []),
        task.late ? [bold('LATE: '), task.what] : task.what,
      ],
    }),
  );
  return [
    { kind: 'heading', level: 2, text: title, bookmark: title },
    { kind: 'table', columns, rows, tight: true },
  ];
}

/** `Fri 12 March`, or from when to when. */
export function whenWords(task: Task): Inline {
  if (task.date === null) return 'no date yet';
  return task.until === null || task.until === task.date
    ? dateWords(task.date)
    : `${dateWords(task.date)} to ${dateWords(task.until)}`;
}
