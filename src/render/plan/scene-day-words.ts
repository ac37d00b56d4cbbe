import { formatShortDate } from '../../base/calendar-date.js';
import { matchEntries } from '../../book/match-entries.js';
import type { BreakdownScene } from '../../breakdown/types.js';
import { createPlaceFinder } from '../../plan/scene-place.js';
import { blank, bold, type Inline } from '../layout/inline.js';
import type { Production, RenderInput } from '../types.js';
import { helperWords, locationOf, locationWords } from './plan-words.js';

/** On which day and in which order a scene is shot, where, and who answers for it: blanks for what the book does not know. */
export function dayAndPlaceWords(scene: BreakdownScene, input: Pick<RenderInput, 'breakdown' | 'production'>): Inline {
  const { production } = input;
  const day = production === null ? null : dayOf(scene, production);
  const place = production === null ? null : placeOf(scene, input, production);
  const charge = production === null ? null : inChargeOf(scene, production);
  return [
    'Shooting day ',
    ...(day === null ? [blank(66)] : [bold(day)]),
    '   In charge ',
    ...(charge === null ? [blank(96)] : [bold(charge)]),
    day === null && place === null ? '   Address ' : '\nAddress ',
    ...(place === null ? [blank(172)] : [bold(place)]),
  ];
}

/** `2 of 4, Sat 24 April, 3rd of 5 scenes`; null when the scene is in no day. */
function dayOf(scene: BreakdownScene, { plan }: Production): string | null {
  const day = plan.days.find((one) => one.scenes.some((slot) => slot.scene === scene.id));
  const slot = day?.scenes.find((one) => one.scene === scene.id);
  if (!day || !slot) return null;
  return `${day.number} of ${day.of}, ${formatShortDate(day.date)}, number ${slot.position} of ${day.scenes.length}`;
}

function placeOf(
  scene: BreakdownScene,
  { breakdown }: Pick<RenderInput, 'breakdown'>,
  { plan, book }: Production,
): string | null {
  const finder = createPlaceFinder(breakdown, book);
  const day = book.days[(plan.days.find((one) => one.scenes.some((slot) => slot.scene === scene.id))?.number ?? 0) - 1];
  const id = day ? finder.onDay(scene, day) : (finder.playing(scene)[0] ?? null);
  if (id === null) return null;
  const address = locationOf(id, book)?.address ?? null;
  return address === null ? locationWords(id, book) : `${locationWords(id, book)}, ${address}`;
}

/** The name of whoever answers for the dangers of a scene; null when the book names nobody. */
export function inChargeOf(scene: BreakdownScene, { book }: Production): string | null {
  const entry = matchEntries(book.scenes, [{ id: scene.id, names: [] }]).byThing.get(scene.id);
  return entry?.inCharge ? helperWords(entry.inCharge, book) : null;
}

/** Whether the other scene of a tie is shot before this one, so that this one copies it, or after it. */
export function shotWords(scene: string, other: string, production: Production | null): string {
  const slots = new Map(production?.plan.slots.map((slot) => [slot.scene, slot]));
  const [here, there] = [slots.get(scene), slots.get(other)];
  if (!here || !there || there.day === null) return '';
  const when = there.day === here.day ? 'the same day' : `day ${there.day}`;
  return there.index < here.index ? ` (SHOT BEFORE, ${when}: match its picture)` : ` (shot later, ${when})`;
}
