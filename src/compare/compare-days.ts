import { type CalendarDate, formatShortDate } from '../base/calendar-date.js';
import { changed, differs } from './change.js';
import { idOf } from './compare-scenes.js';
import type { ScenePair } from './match-scenes.js';
import { findMoved } from './moved.js';
import type { Change, DayFacts } from './types.js';

/** Days of two drafts: that of the same date, else that of the same number. */
interface DayPair {
  readonly before: DayFacts | null;
  readonly after: DayFacts | null;
}

/** What differs in the shooting days: the days themselves, and the day and the order of each scene. */
export function compareDays(
  before: readonly DayFacts[],
  after: readonly DayFacts[],
  scenes: readonly ScenePair[],
): { readonly days: readonly Change[]; readonly ofScenes: readonly Change[] } {
  const days = matchDays(before, after);
  return { days: days.flatMap(compareDay), ofScenes: compareScenesOfDays(days, scenes) };
}

function matchDays(before: readonly DayFacts[], after: readonly DayFacts[]): DayPair[] {
  const partners = new Map<DayFacts, DayFacts>();
  const taken = new Set<DayFacts>();
  for (const isSame of [sameDate, sameNumber]) {
    for (const day of after) {
      if (partners.has(day)) continue;
      const same = before.find((one) => !taken.has(one) && isSame(one, day));
      if (!same) continue;
      partners.set(day, same);
      taken.add(same);
    }
  }
  return [
    ...after.map((day) => ({ before: partners.get(day) ?? null, after: day })),
    ...before.filter((day) => !taken.has(day)).map((day) => ({ before: day, after: null })),
  ];
}

const sameDate = (one: DayFacts, other: DayFacts) => one.date === other.date;
const sameNumber = (one: DayFacts, other: DayFacts) => one.number === other.number;

function compareDay({ before, after }: DayPair): Change[] {
  const subject = dayWords((after ?? before) as DayFacts);
  if (before === null || after === null)
    return [changed('day', { subject, before: before && dayWords(before), after: after && dayWords(after) })];
  const places = (day: DayFacts) => (day.places.length === 0 ? null : day.places.join(', then '));
  return [
    ...differs('day date', dayWords(before), dayWords(after), { subject }),
    ...differs('day call', before.call, after.call, { subject }),
    ...differs('day places', places(before), places(after), { subject }),
  ];
}

/** `day 2, Fri 12 March`. */
function dayWords({ number, date }: DayFacts): string {
  return `day ${number}, ${formatShortDate(date as CalendarDate)}`;
}

function compareScenesOfDays(days: readonly DayPair[], scenes: readonly ScenePair[]): Change[] {
  const partner = new Map(days.map((pair) => [pair.after, pair.before]));
  const inDay = (all: readonly (DayFacts | null)[], id: string) => all.find((day) => day?.scenes.includes(id)) ?? null;
  const [earlier, later] = [days.map((pair) => pair.before), days.map((pair) => pair.after)];
  const moved = scenes.flatMap(({ before, after }) => {
    if (!before || !after) return [];
    const [was, is] = [inDay(earlier, before.id), inDay(later, after.id)];
    const isSame = is === null ? was === null : was !== null && partner.get(is) === was;
    if (isSame) return [];
    return [changed('shooting day', { scene: after.id, before: was && dayWords(was), after: is && dayWords(is) })];
  });
  return [...moved, ...days.flatMap((pair) => compareOrder(pair, scenes))];
}

/** Scenes that stand in another order within a day that they were in before. */
function compareOrder({ before, after }: DayPair, scenes: readonly ScenePair[]): Change[] {
  if (before === null || after === null) return [];
  const earlierOf = new Map(scenes.flatMap((pair) => (pair.before ? [[idOf(pair), pair.before.id] as const] : [])));
  const stayed = after.scenes.filter((id) => before.scenes.includes(earlierOf.get(id) ?? ''));
  const order = stayed.map((id) => before.scenes.indexOf(earlierOf.get(id) as string));
  return [...findMoved(order)].map((i) => {
    const scene = stayed[i] as string;
    const words = (position: number, { scenes: all }: DayFacts) => `number ${position + 1} of ${all.length}`;
    return changed('shooting order', {
      scene,
      subject: dayWords(after),
      before: words(order[i] as number, before),
      after: words(after.scenes.indexOf(scene), after),
    });
  });
}
