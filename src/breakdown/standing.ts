import { partsOutdoors, vehicleParts, vehiclePlaces } from '../trade/vehicle-parts.js';
import { categoryOfIdentity } from './element-register.js';
import type { SceneGround } from './ground.js';
import type { Thing } from './merge-sightings.js';
import { partsOf, sameThing } from './same-thing.js';
import { splitSentences } from './synopsis.js';

/** Rules of the finder that make dressing of a loose thing, only because nobody handles it. */
const looseRules: ReadonlySet<string> = new Set([
  'it stands there and nobody handles it',
  'it stands in several scenes and nobody touches it',
]);

/** Words that tell of a deed by which something came to be where it is. */
const putThere =
  /\b(?:now|new|newly|has been|have been|had been|rigged|clamped|taped|strapped|tied|propped|lashed|improvised|makeshift)\b/i;

/**
 * True when a thing of the dressing may have stood in its place before the scene that first names it. A loose thing may not: a deed
 * may have brought it (a hair dryer on a stand); nor may what the words say was put there, or is put down here. What the writer
 * marks or notes as dressing belongs to the place.
 */
export function stoodBefore(thing: Thing, ground: SceneGround): boolean {
  if (thing.known !== 'found') return true;
  if (thing.sightings.some(({ rules }) => rules.some((rule) => looseRules.has(rule)))) return false;
  if (ground.finds.moves.some(({ kind, name }) => kind === 'put down' && sameThing(name, thing.identity.name)))
    return false;
  return !thing.sightings.some(({ at }) => putThere.test(sentenceRound(ground, at.start.offset)));
}

/** True when what is found is part of a vehicle that stands there: it is no dressing of the place, and goes with the vehicle. */
export function isPartOfVehicle(thing: Thing, ground: SceneGround, things: readonly Thing[]): boolean {
  if (thing.known !== 'found') return false;
  const { heading } = ground.scene;
  const head = partsOf(thing.identity.name).head;
  const name = thing.identity.name.toLowerCase().replaceAll(' ', '-');
  const inside = heading.setting !== 'EXT' && vehiclePlaces.test(heading.place);
  if (inside) return false;
  if (vehicleParts.has(head) || vehicleParts.has(name)) return true;
  const vehicle = things.some(({ identity }) => categoryOfIdentity(identity) === 'vehicles');
  return vehicle && heading.setting === 'EXT' && partsOutdoors.has(head);
}

function sentenceRound({ actions }: SceneGround, offset: number): string {
  for (const action of actions) {
    for (const { start, text } of splitSentences(action.text)) {
      const place = action.place(start, start + text.length);
      if (place.start.offset <= offset && offset < place.end.offset) return text;
    }
  }
  return '';
}
