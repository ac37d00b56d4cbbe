import { formatMinutes } from '../base/clock-time.js';
import { matchEntries } from '../book/match-entries.js';
import type { Book } from '../book/types.js';
import type { Breakdown, BreakdownScene } from '../breakdown/types.js';
import { sceneOverrun } from '../trade/shooting-times.js';
import { listBackground } from './background.js';
import type { MinorDay } from './day-types.js';
import type { PlacedScene } from './light-windows.js';
import { counted } from './per-take.js';
import type { Slot } from './slot-types.js';

/**
 * Everyone under age who is seen on a day, children of the background among them, with the hours from the first scene to the
 * end of the last. `entries` are all entries of the book on that date, `placed` among them: their hours are added.
 */
export function findMinors(
  breakdown: Breakdown,
  book: Book,
  placed: readonly PlacedScene[],
  entries: readonly (readonly PlacedScene[])[],
): MinorDay[] {
  const isHere = (isOn: (scene: BreakdownScene) => boolean) => placed.some(({ scene }) => isOn(scene));
  const people = matchEntries(book.people, breakdown.cast).byThing;
  const cast = breakdown.cast.flatMap((person): MinorDay[] => {
    const entry = people.get(person.id) ?? null;
    if (!(entry?.minor ?? person.minor)) return [];
    const entered = entry?.hoursADay ? Number(entry.hoursADay.over) / Number(entry.hoursADay.under) : null;
    const isOn = (scene: BreakdownScene) => scene.cast.some((one) => one.id === person.id && one.presence === 'seen');
    return isHere(isOn) ? askHours({ id: person.id, name: person.name, entered, many: false }, isOn, entries) : [];
  });
  const background = listBackground(breakdown, book)
    .filter((group) => group.minor)
    .flatMap(({ id, name, count, hoursEntered }) => {
      const many = count !== null && count > 1;
      const who = many ? `${count} ${name}` : name;
      const isOn = (scene: BreakdownScene) => scene.extras.some((one) => one.id === id);
      return isHere(isOn) ? askHours({ id, name: who, entered: hoursEntered, many }, isOn, entries) : [];
    });
  return [...cast, ...background];
}

/** Who is under age: one person, or several of the background. */
interface Asked {
  readonly id: string;
  readonly name: string;
  readonly entered: number | null;
  readonly many: boolean;
}

function askHours(
  { id, name, entered, many }: Asked,
  isOn: (scene: BreakdownScene) => boolean,
  entries: readonly (readonly PlacedScene[])[],
): MinorDay[] {
  const parts = entries.map((placed) => placed.filter(({ scene }) => isOn(scene)).map(({ slot }) => slot));
  const on = parts.flat();
  const minutes = parts.reduce((sum, slots) => sum + minutesOnSet(slots), 0);
  if (on.length === 0 || on.some((slot) => slot.start === null)) return [];
  const work = formatMinutes(on.reduce((sum, slot) => sum + slot.minutes, 0));
  const scenes = on.map((slot) => slot.label).join(', ');
  const times = parts.filter((slots) => slots.length > 0).length;
  const together = times > 1 ? ` in all at ${times} calls on that date` : '';
  const said =
    entered === null
      ? 'no hours a day are entered in the book'
      : `${counted(entered, 'hour')} a day is entered in the book`;
  return [
    {
      person: id,
      name,
      hoursOnSet: Math.round(minutes / 6) / 10,
      hoursEntered: entered,
      question: `${name} ${many ? 'are' : 'is'} under age and would be on set about ${formatMinutes(minutes)}${together}; ${said}. The work on sc ${scenes} is reckoned at ${work}. Who decides it where you shoot, and what do they allow?`,
    },
  ];
}

/** From the start of the first scene to the end of the last; nobody is kept for the time that the order leaves free after it. */
function minutesOnSet(slots: readonly Slot[]): number {
  const [first, last] = [slots[0], slots.at(-1)];
  if (!first || !last || first.start === null || last.start === null || last.end === null) return 0;
  const end = Math.min(last.end, last.start + (last.minutes * sceneOverrun.factor) / 60);
  return Math.round((end - first.start) * 60);
}
