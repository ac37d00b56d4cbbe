import { formatMinutes } from '../base/clock-time.js';
import { matchEntries } from '../book/match-entries.js';
import type { Book } from '../book/types.js';
import type { Breakdown, BreakdownScene } from '../breakdown/types.js';
import { listBackground } from './background.js';
import type { MinorDay } from './day-types.js';
import type { PlacedScene } from './light-windows.js';
import { counted } from './per-take.js';

/** Everyone under age who is seen on a day, children of the background among them, with the hours between first and last scene. */
export function findMinors(breakdown: Breakdown, book: Book, placed: readonly PlacedScene[]): MinorDay[] {
  const people = matchEntries(book.people, breakdown.cast).byThing;
  const cast = breakdown.cast.flatMap((person): MinorDay[] => {
    const entry = people.get(person.id) ?? null;
    if (!(entry?.minor ?? person.minor)) return [];
    const entered = entry?.hoursADay ? Number(entry.hoursADay.over) / Number(entry.hoursADay.under) : null;
    const isOn = (scene: BreakdownScene) => scene.cast.some((one) => one.id === person.id && one.presence === 'seen');
    return askHours({ id: person.id, name: person.name, entered }, isOn, placed);
  });
  const background = listBackground(breakdown, book)
    .filter((group) => group.minor)
    .flatMap(({ id, name, count, hoursEntered }) => {
      const who = count !== null && count > 1 ? `${count} ${name}` : name;
      const isOn = (scene: BreakdownScene) => scene.extras.some((one) => one.id === id);
      return askHours({ id, name: who, entered: hoursEntered }, isOn, placed);
    });
  return [...cast, ...background];
}

function askHours(
  { id, name, entered }: { readonly id: string; readonly name: string; readonly entered: number | null },
  isOn: (scene: BreakdownScene) => boolean,
  placed: readonly PlacedScene[],
): MinorDay[] {
  const on = placed.filter(({ scene }) => isOn(scene));
  const [first, last] = [on[0]?.slot, on.at(-1)?.slot];
  if (!first || !last || first.start === null || last.end === null) return [];
  const hours = Math.round((last.end - first.start) * 10) / 10;
  const work = formatMinutes(on.reduce((sum, { slot }) => sum + slot.minutes, 0));
  const scenes = on.map(({ slot }) => slot.label).join(', ');
  const said =
    entered === null
      ? 'no hours a day are entered in the book'
      : `${counted(entered, 'hour')} a day is entered in the book`;
  return [
    {
      person: id,
      name,
      hoursOnSet: hours,
      hoursEntered: entered,
      question: `${name} is under age and would be on set about ${hours} h; ${said}. The work on sc ${scenes} is reckoned at ${work}. Who decides it where you shoot, and what do they allow?`,
    },
  ];
}
