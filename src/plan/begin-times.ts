import { type CalendarDate, formatShortDate } from '../base/calendar-date.js';
import { type ClockMinutes, formatClockTime, formatMinutes } from '../base/clock-time.js';
import type { Diagnostic } from '../base/diagnostic.js';
import type { BookDay, BookScene } from '../book/types.js';
import { sayPlan } from '../messages/plan.js';

/** A scene of a day in its order, with the time at which the book has it begin. */
export interface BeginningScene {
  readonly label: string;
  readonly entry: BookScene | null;
  /** Shooting minutes reckoned for it. */
  readonly minutes: number;
}

/** How a beginning stands to its day. */
type Found = { readonly at: ClockMinutes } | { readonly words: string; readonly write: string };

/**
 * The minutes from midnight of its day at which each scene begins by the book, or null. Before the call it counts only where
 * the day itself runs past midnight. What the day or the order rules out is a message, and does not count.
 */
export function settleBegins(
  scenes: readonly BeginningScene[],
  day: BookDay,
): { begins: (ClockMinutes | null)[]; messages: Diagnostic[] } {
  const messages: Diagnostic[] = [];
  let before: { label: string; at: ClockMinutes; named: boolean; index: number } = {
    label: '',
    at: day.call.value,
    named: false,
    index: 0,
  };
  const begins = scenes.map(({ label, entry }, index): ClockMinutes | null => {
    const begin = entry?.begin ?? null;
    if (begin === null || entry === null) return null;
    const found = placeBegin(begin, day, before);
    if ('words' in found) {
      messages.push(sayPlan('plan-begin', { scene: label, begin: formatClockTime(begin), ...found }, entry.at));
      return null;
    }
    const between = scenes.slice(before.index, index);
    const wanted = between.reduce((sum, one) => sum + one.minutes, 0);
    const there = found.at - before.at;
    // Reckoned minutes are rough: half of them is too few by any reckoning.
    if (there < wanted / 2) {
      const names = `${between.length > 1 ? 'scenes' : 'scene'} ${between.map((one) => one.label).join(', ')}`;
      const room = {
        scene: label,
        begin: formatClockTime(begin),
        before: names,
        there: formatMinutes(there),
        wanted: formatMinutes(wanted),
      };
      messages.push(sayPlan('plan-begin-tight', room, entry.at));
    }
    before = { label, at: found.at, named: true, index };
    return found.at;
  });
  return { begins, messages };
}

function placeBegin(
  begin: ClockMinutes,
  day: BookDay,
  before: { readonly label: string; readonly at: ClockMinutes; readonly named: boolean },
): Found {
  const [call, wrap] = [day.call.value, day.wrap.value];
  const on = onDate(day.date);
  const overnight = begin + 1440;
  const isOvernight = begin < call && wrap > 1440 && (overnight < wrap || overnight - wrap < call - begin);
  const at = isOvernight ? overnight : begin;
  if (at < call) {
    return {
      words: `before the call at ${formatClockTime(call)}`,
      write: `Write "begin:" later than ${formatClockTime(call)}, or "call: ${formatClockTime(begin)}" or earlier ${on}.`,
    };
  }
  if (at >= wrap) {
    return {
      words: `after the wrap at ${formatClockTime(wrap)}`,
      write: `Write "begin:" before ${formatClockTime(wrap)}, or a later "wrap:" than ${formatClockTime(begin)} ${on}.`,
    };
  }
  if (before.named && at <= before.at) {
    return {
      words: `no later than scene ${before.label}, which stands before it and begins at ${formatClockTime(before.at)}`,
      write: `Write "begin:" later than ${formatClockTime(before.at)}, or put it before scene ${before.label} under "scenes:" ${on}.`,
    };
  }
  return { at };
}

function onDate(date: CalendarDate): string {
  return `for ${formatShortDate(date)}`;
}
