import { parseCalendarDate } from '../base/calendar-date.js';
import type { Diagnostic } from '../base/diagnostic.js';
import type { Host } from '../host/types.js';
import { sayCommand } from '../messages/command.js';

/** The day to plan from, as an ISO date: what `--today` says, else the clock's; a message when it is no date. */
export function chooseToday(typed: string | undefined, host: Pick<Host, 'today'>): string | Diagnostic {
  if (typed === undefined) return host.today();
  return parseCalendarDate(typed) === null ? sayCommand('date-not-read', { typed }) : typed;
}
