import { addDays, type CalendarDate } from '../base/calendar-date.js';
import { slug } from '../base/slug.js';
import type { Task } from './plan-types.js';

/**
 * All dated tasks as an iCalendar text (RFC 5545): one all-day entry each, with an identity that stays the same from run to
 * run, so that a phone replaces an entry and does not add another. The stamp is the date the plan was made for, no clock.
 */
export function writeCalendar(
  title: string,
  tasks: readonly Task[],
  today: CalendarDate,
  names: (helper: string) => string,
): string {
  const stamp = `${basic(today)}T000000Z`;
  const film = slug(title);
  const events = tasks.flatMap((task) => (task.date === null ? [] : event(task, task.date, film, stamp, names)));
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Prepwright//Production plan//EN',
    'CALSCALE:GREGORIAN',
    `X-WR-CALNAME:${escapeText(title)}`,
    ...events,
    'END:VCALENDAR',
  ];
  return lines.map(foldLine).join('');
}

function event(
  task: Task,
  date: CalendarDate,
  film: string,
  stamp: string,
  names: (helper: string) => string,
): string[] {
  const done = task.done ? 'done: ' : '';
  const who = task.who === null ? '' : `${names(task.who)}: `;
  return [
    'BEGIN:VEVENT',
    `UID:${slug(task.id)}.${film}@prepwright`,
    `DTSTAMP:${stamp}`,
    `DTSTART;VALUE=DATE:${basic(date)}`,
    `DTEND;VALUE=DATE:${basic(addDays(task.until ?? date, 1))}`,
    `SUMMARY:${escapeText(`${done}${who}${task.what}`)}`,
    `CATEGORIES:${escapeText(task.kind)}`,
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

/** Text of a property: backslash, comma, semicolon and line ends are written with a backslash (RFC 5545, 3.3.11). */
export function escapeText(text: string): string {
  return text
    .replace(/[\\;,]/g, (sign) => `\\${sign}`)
    .replace(/\r\n|\r|\n/g, '\\n')
    .replace(/(?!\t)\p{Cc}/gu, ' ');
}

/** One content line, ended by CRLF and folded so that no line is longer than 75 octets of UTF-8 (RFC 5545, 3.1). */
export function foldLine(line: string): string {
  const parts: string[] = [];
  let part = '';
  let octets = 0;
  for (const sign of line) {
    const size = octetsOf(sign);
    if (octets + size > 75) {
      parts.push(part);
      // The space that marks a continuation counts too.
      [part, octets] = ['', 1];
    }
    part += sign;
    octets += size;
  }
  return `${[...parts, part].join('\r\n ')}\r\n`;
}

function octetsOf(sign: string): number {
  const code = sign.codePointAt(0) as number;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}

function basic(date: CalendarDate): string {
  return date.replace(/-/g, '');
}
