import { addDays, type CalendarDate, earliest } from '../base/calendar-date.js';
import type { BookElement, PrepTask } from '../book/types.js';
import { findPrepTime } from '../trade/prep-times.js';
import { layPrep } from './prep-steps.js';

/** The days of the work on one thing. */
export interface WorkDates {
  readonly prepDays: number;
  /** How many tasks, from the first, must be done before the fitting. */
  readonly makingTasks: number;
  /** First day of all work; null when there is none. */
  readonly prepStarts: CalendarDate | null;
  /** First day of the work that may follow a fitting; null when there is none. */
  readonly finishStarts: CalendarDate | null;
}

/**
 * Lays the work on a thing before the day it is packed. What is made and then fitted is made before the fitting, and dyed,
 * aged or broken down after it; what came ready is fitted before any work on it. `hoursADay` is in hours.
 */
export function dateWork(
  element: BookElement | null,
  hoursADay: number,
  packed: CalendarDate,
  fitting: CalendarDate | null,
): WorkDates {
  const prep = element?.prep ?? [];
  const makingTasks = element?.source === 'make' && fitting !== null ? countMaking(prep) : 0;
  const making = layPrep(prep.slice(0, makingTasks), hoursADay).days;
  const finishing = layPrep(prep.slice(makingTasks), hoursADay).days;
  const finishStarts = finishing > 0 ? addDays(packed, -finishing) : null;
  const madeBy = earliest(fitting, finishStarts ?? packed) as CalendarDate;
  const prepStarts = making > 0 ? addDays(madeBy, -making) : finishStarts;
  return { prepDays: making + finishing, makingTasks, prepStarts, finishStarts };
}

/** The tasks up to the last one that makes the thing: wool is dyed before it is knitted. The table of work has no making in it, so that a task unknown there makes it. */
function countMaking(prep: readonly PrepTask[]): number {
  return prep.findLastIndex((one) => findPrepTime(one.task) === null) + 1;
}
