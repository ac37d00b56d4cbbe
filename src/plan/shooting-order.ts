import { type CalendarDate, dayNumber } from '../base/calendar-date.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { editDistance, findNearest } from '../base/nearest.js';
import { slug } from '../base/slug.js';
import { matchEntries } from '../book/match-entries.js';
import type { Book, BookDay, BookScene } from '../book/types.js';
import { labelScenes } from '../breakdown/scene-label.js';
import type { Breakdown, BreakdownScene } from '../breakdown/types.js';
import { sayBook } from '../messages/book.js';
import { sayPlan } from '../messages/plan.js';
import { settleBegins } from './begin-times.js';
import { shareDay, type WantedScene } from './day-slots.js';
import { countSetups, reckonMinutes } from './shooting-minutes.js';
import type { Slot } from './slot-types.js';

/** The scenes in the order they are shot. */
export interface ShootingOrder {
  /** Every scene once: those of the days in their order, then those in no day, in script order. */
  readonly slots: readonly Slot[];
  readonly byScene: ReadonlyMap<string, Slot>;
  readonly days: readonly { readonly day: BookDay; readonly slots: readonly Slot[] }[];
  readonly unscheduled: readonly Slot[];
  /** What the book says of each scene, by the scene's id. */
  readonly bookScenes: ReadonlyMap<string, BookScene>;
}

/** Puts the scenes in the order of the book's days. A scene named twice counts where it comes first. */
export function orderShooting(breakdown: Breakdown, book: Book): { order: ShootingOrder; messages: Diagnostic[] } {
  const messages: Diagnostic[] = [];
  const bookScenes = matchEntries(
    book.scenes,
    breakdown.scenes.map((scene) => ({ id: scene.id, names: [] })),
  ).byThing;
  const labels = labelScenes(breakdown.scenes);
  const find = sceneFinder(breakdown, book, labels);
  const seen = new Map<string, CalendarDate>();
  const slots: Slot[] = [];
  const make = makeSlot(breakdown, book, bookScenes, labels);
  const wanted = new Set(book.days.flatMap((day) => day.scenes.map((one) => find(one.text)?.id)));
  const days = book.days.map((day, dayIndex) => {
    const scenes = day.scenes.flatMap(({ text, at }) => {
      const scene = find(text);
      if (!scene) {
        messages.push(
          sayBook(
            'book-reference-unknown',
            {
              what: `a scene, on the shooting day ${day.date}`,
              id: text,
              near: likeScene(text, breakdown, wanted),
            },
            at,
          ),
        );
        return [];
      }
      const first = seen.get(scene.id);
      if (first) {
        messages.push(sayPlan('plan-scene-twice', { scene: text, date: first }, at));
        return [];
      }
      seen.set(scene.id, day.date);
      return [scene];
    });
    const timed = scenes.map((scene) => ({
      scene,
      label: labels.get(scene.id) as string,
      entry: bookScenes.get(scene.id) ?? null,
      minutes: make(scene, 0, null, 0, null, null).minutes,
    }));
    const settled = settleBegins(timed, day);
    messages.push(...settled.messages);
    const made = placeInDay(timed, settled.begins, day, dayIndex + 1, slots.length, make);
    slots.push(...made);
    return { day, slots: made };
  });
  const rest = breakdown.scenes.filter((scene) => !seen.has(scene.id));
  const unscheduled = rest.map((scene, index) => make(scene, slots.length + index, null, index + 1, null, null));
  const all = [...slots, ...unscheduled];
  const byScene = new Map(all.map((slot) => [slot.scene, slot]));
  return { order: { slots: all, byScene, days, unscheduled, bookScenes }, messages };
}

/** Words of an id that tell no place: most scenes share them. */
const everyScene = new Set(
  'int ext day night dawn dusk morning evening afternoon continuous later flashback'.split(' '),
);

/** The scene that a name of the book most likely meant: one on no day that shares most words of the place, else one a letter or two away. */
function likeScene(text: string, breakdown: Breakdown, wanted: ReadonlySet<string | undefined>): string | null {
  const ofPlace = (id: string) =>
    slug(id)
      .split('-')
      .filter((word) => !everyScene.has(word));
  const words = new Set(ofPlace(text));
  const free = breakdown.scenes.filter((one) => !wanted.has(one.id)).map((one) => one.id);
  const shared = (id: string) => ofPlace(id).filter((word) => words.has(word)).length;
  const best = [...free].sort((a, b) => shared(b) - shared(a))[0];
  if (best !== undefined && shared(best) >= 1 && shared(best) * 2 >= words.size) return best;
  const near = findNearest(
    text,
    breakdown.scenes.map((one) => one.id),
  );
  return near !== null && text.length > 2 && editDistance(text, near) <= 2 ? near : null;
}

type SlotMaker = (
  scene: BreakdownScene,
  index: number,
  day: { readonly number: number; readonly date: CalendarDate } | null,
  position: number,
  start: number | null,
  end: number | null,
) => Slot;

function makeSlot(
  breakdown: Breakdown,
  book: Book,
  bookScenes: ReadonlyMap<string, BookScene>,
  labels: ReadonlyMap<string, string>,
): SlotMaker {
  const order = new Map(breakdown.scenes.map((scene) => [scene.id, scene]));
  return (scene, index, day, position, start, end) => {
    const entry = bookScenes.get(scene.id) ?? null;
    const before = order.get(scene.id) as BreakdownScene;
    return {
      scene: scene.id,
      label: labels.get(scene.id) as string,
      index,
      day: day?.number ?? null,
      date: day?.date ?? null,
      position,
      start,
      end,
      setups: countSetups(before, entry),
      takes: entry?.takes ?? book.takes.value,
      minutes: reckonMinutes(scene, entry, book.takes.value),
    };
  };
}

/** Puts the scenes of a day at their times, in hours since 1970. */
function placeInDay(
  scenes: readonly WantedScene[],
  begins: readonly (number | null)[],
  day: BookDay,
  number: number,
  firstIndex: number,
  make: SlotMaker,
): Slot[] {
  const midnight = dayNumber(day.date) * 24;
  const { times, dressedFrom } = shareDay(scenes, begins, day);
  return scenes.map(({ scene }, index) => {
    const time = times[index] ?? { start: day.call.value, end: day.call.value };
    const [start, end] = [midnight + time.start / 60, midnight + time.end / 60];
    const slot = make(scene, firstIndex + index, { number, date: day.date }, index + 1, start, end);
    return index === 0 ? { ...slot, dressedFrom: midnight + dressedFrom / 60 } : slot;
  });
}

/** Finds a scene by its id, an earlier id, or the label that paper gives it. */
function sceneFinder(breakdown: Breakdown, book: Book, labels: ReadonlyMap<string, string>) {
  const byId = new Map(breakdown.scenes.map((scene) => [scene.id, scene]));
  const byLabel = new Map(breakdown.scenes.map((scene) => [labels.get(scene.id)?.toLowerCase(), scene]));
  const byEarlier = new Map(book.scenes.flatMap((entry) => entry.was.map((id) => [id, byId.get(entry.id)] as const)));
  return (text: string): BreakdownScene | null =>
    byId.get(text) ?? byLabel.get(text.trim().toLowerCase()) ?? byEarlier.get(text) ?? null;
}

/** Hours from the end of one scene until things must be there for another; null when one of them is in no day. */
export function hoursBetween(earlier: Slot, later: Slot): number | null {
  return earlier.end === null || later.start === null
    ? null
    : Math.max(0, (later.dressedFrom ?? later.start) - earlier.end);
}

/** How a scene is called where its day matters: `scene 7 (shooting day 2)`. */
export function nameSlot(slot: Slot): string {
  return slot.day === null ? `scene ${slot.label}` : `scene ${slot.label} (shooting day ${slot.day})`;
}
