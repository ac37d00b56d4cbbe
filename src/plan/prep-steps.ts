import type { PrepTask } from '../book/types.js';
import { findPrepTime } from '../trade/prep-times.js';

/** One task of preparation, laid on days counted from the start of the work. */
export interface PrepStep {
  readonly task: string;
  readonly who: string | null;
  readonly hours: number | null;
  /** 0-based first and last day of work. */
  readonly firstDay: number;
  readonly lastDay: number;
  /** Days of drying or curing that follow. */
  readonly waitDays: number;
  /** True when hours or waiting are the usual ones, not the book's. */
  readonly usual: boolean;
}

/** What a task needs that neither the book nor the table tells. */
const unknownTaskHours = 1;

/**
 * Lays tasks one after another on whole days: hours of tasks that follow each other share days, waiting takes days of its
 * own. Gives the steps and the calendar days they take together.
 */
export function layPrep(tasks: readonly PrepTask[], hoursADay: number): { days: number; steps: PrepStep[] } {
  const steps: PrepStep[] = [];
  let day = 0;
  let hoursUsed = 0;
  for (const task of tasks) {
    const known = findPrepTime(task.task);
    if (task.days !== null && hoursUsed > 0) [day, hoursUsed] = [day + 1, 0];
    const hours = task.days !== null ? null : (task.hours ?? known?.hours ?? unknownTaskHours);
    const waitDays = task.waitDays ?? (task.days === null ? (known?.waitDays ?? 0) : 0);
    const firstDay = day + (hours === null ? 0 : Math.floor(hoursUsed / hoursADay));
    const used = hours === null ? (task.days as number) * hoursADay : hoursUsed + hours;
    const span =
      hours === null ? day + Math.max(1, task.days as number) : day + Math.max(1, Math.ceil(used / hoursADay));
    const lastDay = Math.max(firstDay, used === 0 ? firstDay : span - 1);
    steps.push({
      task: task.task,
      who: task.who,
      hours,
      firstDay,
      lastDay,
      waitDays,
      usual: task.days === null && task.hours === null,
    });
    if (waitDays > 0 || hours === null) [day, hoursUsed] = [day + Math.ceil(used / hoursADay) + waitDays, 0];
    else hoursUsed = used;
  }
  return { days: day + Math.ceil(hoursUsed / hoursADay), steps };
}
