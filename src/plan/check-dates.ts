import { addDays, type CalendarDate, earliest, formatDate, formatShortDate } from '../base/calendar-date.js';
import type { Diagnostic } from '../base/diagnostic.js';
import type { Book, BookElement } from '../book/types.js';
import { sayPlan } from '../messages/plan.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import { findFirstScene } from './first-need.js';
import { troubleWords } from './judge-time.js';
import { calendarOf } from './line-calendar.js';
import { isHere, isOpenAgain, isOver, isOwnShort } from './line-status.js';
import type { PlanLine } from './line-types.js';
import { counted } from './per-take.js';
import type { Plan } from './plan-types.js';
import { isWorkingDay, lastWorkingDay, nextWorkingDay } from './working-days.js';

/** A line of which the book says something. */
type SaidLine = PlanLine & { readonly element: BookElement };

/** What speaks against the dates that the book gives to single things, and against two days on one date. */
export function checkDates(plan: Plan, book: Book): Diagnostic[] {
  const lines = plan.lines.filter(
    (line): line is SaidLine =>
      line.element !== null &&
      line.status !== 'done without' &&
      line.status !== 'replaced' &&
      !isOver(line.need, plan.today),
  );
  const firstDay = plan.days.find((day) => day.scenes.length > 0)?.date ?? null;
  return [
    ...checkDays(book),
    ...lines.flatMap((line) => [
      ...checkHire(line),
      ...checkShut(line, book),
      ...checkOccasions(line, firstDay),
      ...checkWork(line, plan.today),
      ...checkTrouble(line, plan.today),
      ...checkOwn(line),
    ]),
  ];
}

function checkDays(book: Book): Diagnostic[] {
  return book.days.flatMap((day, index) =>
    day.date === book.days[index - 1]?.date ? [sayPlan('plan-date-twice', { date: formatDate(day.date) }, day.at)] : [],
  );
}

/** A hire or loan that is fetched after it is wanted, or goes back before it is shot for the last time. */
function checkHire(line: SaidLine): Diagnostic[] {
  const { element, dates, need, name } = line;
  const { collect, back } = element;
  const say = (words: string, write: string) => [sayPlan('plan-hire-dates', { name, words, write }, element.at)];
  const last = need.uses.reduce<PlanLine['need']['uses'][number]['slot'] | null>(
    (latest, { slot }) => (slot.date !== null && (latest === null || slot.date > (latest.date ?? '')) ? slot : latest),
    null,
  );
  return [
    ...(collect !== null && back !== null && back < collect
      ? say(
          `it goes back on ${formatDate(back)}, before it is fetched on ${formatDate(collect)}`,
          `Write "back:" with a date after "collect: ${collect}", or correct "collect:".`,
        )
      : []),
    ...(collect !== null && dates.inHand !== null && collect > dates.inHand && !isHere(element)
      ? say(
          `it is fetched on ${formatDate(collect)}, but must be in hand on ${formatDate(dates.inHand)} (${dates.neededFor}, ${formatShortDate(dates.needed as CalendarDate)})`,
          `Write "collect: ${dates.inHand}" or earlier, or ask the owner and move the scene.`,
        )
      : []),
    ...(back !== null && last?.date && back < last.date
      ? say(
          `it goes back on ${formatDate(back)}, but scene ${last.label} is shot with it on ${formatDate(last.date)}`,
          `Write "back: ${addDays(last.date, 1)}" or later and ask the owner, or move the scene.`,
        )
      : []),
  ];
}

/** A day on which the book has a hire fetched or given back, and its listed owner is shut. */
function checkShut({ element, supplierId, name, from, status }: SaidLine, book: Book): Diagnostic[] {
  const supplier = book.suppliers.find((one) => one.id === supplierId) ?? null;
  if (element.source !== 'hire' || supplier === null || status === 'returned') return [];
  const calendar = calendarOf(book, supplier);
  const { collect, back } = element;
  const say = (words: string, write: string) => [sayPlan('plan-hire-dates', { name, words, write }, element.at)];
  const shut = (date: CalendarDate | null): date is CalendarDate => date !== null && !isWorkingDay(date, calendar);
  const agree = `or, if ${from ?? 'the owner'} agreed to it, that day among its "delivers:"`;
  return [
    ...(shut(collect) && !isHere(element)
      ? say(
          `it is fetched on ${formatDate(collect)}, when ${from ?? 'its owner'} is shut`,
          `Write "collect: ${lastWorkingDay(collect, calendar)}", ${agree}.`,
        )
      : []),
    ...(shut(back)
      ? say(
          `it goes back on ${formatDate(back)}, when ${from ?? 'its owner'} is shut`,
          `Write "back: ${nextWorkingDay(back, calendar)}", ${agree}.`,
        )
      : []),
  ];
}

/** A fitting, camera test or rehearsal after what it is for. */
function checkOccasions(line: SaidLine, firstDay: CalendarDate | null): Diagnostic[] {
  const { element, name, need, dates } = line;
  const { fitting, test, rehearsal } = element;
  const scene = findFirstScene(need);
  const say = (words: string, write: string) => [sayPlan('plan-fitting-late', { name, words, write }, element.at)];
  const played = scene === null ? '' : `${scene.words} is shot on ${formatDate(scene.date)}`;
  const before = scene === null ? '' : addDays(scene.date, -1);
  return [
    ...(fitting !== null && !element.checked
      ? checkFitting(fitting, scene?.date ?? null, dates.finishStarts, firstDay)
      : []
    ).flatMap(({ words, by }) =>
      say(`the fitting is on ${formatDate(fitting as CalendarDate)}, ${words}`, `Write "fitting: ${by}" or earlier.`),
    ),
    ...(test !== null && scene !== null && test >= scene.date
      ? say(`the camera test is on ${formatDate(test)}, but ${played}`, `Write "test: ${before}" or earlier.`)
      : []),
    ...(rehearsal !== null && scene !== null && rehearsal > scene.date
      ? say(`the rehearsal is on ${formatDate(rehearsal)}, but ${played}`, `Write "rehearsal: ${before}" or earlier.`)
      : []),
  ];
}

/** The first that goes wrong of: shot before it, worked on before it, too near the shoot. */
function checkFitting(
  fitting: CalendarDate,
  scene: CalendarDate | null,
  finishStarts: CalendarDate | null,
  firstDay: CalendarDate | null,
): { words: string; by: CalendarDate }[] {
  if (firstDay === null) return [];
  const limit = addDays(firstDay, -quantityDefaults.lastFitting.value);
  const by = earliest(limit, finishStarts) as CalendarDate;
  if (scene !== null && fitting >= scene) return [{ words: `and it is played on ${formatDate(scene)}`, by }];
  if (finishStarts !== null && fitting > finishStarts)
    return [{ words: `after the work on it begins on ${formatDate(finishStarts)}`, by }];
  const days = counted(quantityDefaults.lastFitting.value, 'day');
  return fitting > limit
    ? [{ words: `less than ${days} before the first shooting day, ${formatDate(firstDay)}`, by }]
    : [];
}

function checkWork({ name, dates, element }: SaidLine, today: CalendarDate): Diagnostic[] {
  if (dates.workShort === null) return [];
  const starts = dates.prepStarts ?? today;
  const write =
    starts < today
      ? `Write "ready: ${today}" if the work is done, or what is left of it under "prep:".`
      : `Write "starts: ${starts}" or earlier under "prep:" at the left margin, or fewer "hours:" and "days:" for the work.`;
  return [sayPlan('plan-work-short', { name, words: dates.workShort, write }, element.at)];
}

/** What came wrong, and what has not come at all; what is too late for good has a message of its own. */
function checkTrouble({ name, dates, element }: SaidLine, today: CalendarDate): Diagnostic[] {
  if (dates.tooLate !== null) return [];
  if (isOpenAgain(element)) {
    const by = dates.orderBy === null ? null : formatDate(dates.orderBy);
    return [sayPlan('plan-get-again', { name, words: troubleWords(element), by }, element.at)];
  }
  if (dates.expected === null || dates.expected >= today) return [];
  return [sayPlan('plan-overdue', { name, date: formatDate(dates.expected), today }, element.at)];
}

/** Fewer of one's own than the least that is needed. */
function checkOwn({ name, need, dates, element }: SaidLine): Diagnostic[] {
  const wanted = need.decided ?? need.minimum;
  if (!isOwnShort(need, element) || need.have >= wanted || need.uncounted) return [];
  const by = dates.orderBy === null ? null : formatDate(dates.orderBy);
  return [sayPlan('plan-own-few', { name, have: need.have, wanted, by }, element.at)];
}
