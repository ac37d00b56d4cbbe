import type { Diagnostic } from '../base/diagnostic.js';
import { foldName } from '../base/slug.js';
import { sayBreakdown } from '../messages/breakdown.js';
import type { Scene } from '../script/types.js';
import type { ElementRegister, Identity } from './element-register.js';
import { notesOf } from './ground.js';
import { isNamed, sameThing } from './same-thing.js';
import { type Sighting, sight } from './sighting.js';
import { wearerOf } from './worn-items.js';

/** Names that are garments by a costume note: they are settled with their wearer, by the costume pass. */
export type GarmentNames = ReadonlySet<string>;

/** Reads the lists and the states in a scene's notes as sightings. People are left out. */
export function sightNotes(
  scene: Scene,
  register: ElementRegister,
  marked: readonly Sighting[],
  garments: GarmentNames,
): { sightings: Sighting[]; messages: Diagnostic[] } {
  const sightings: Sighting[] = [];
  const messages: Diagnostic[] = [];
  for (const { category, items } of notesOf(scene.notes, 'items')) {
    if (category === 'cast' || category === 'extras') continue;
    for (const { name, at, by, count, description } of items) {
      if (wearerOf(category, { name, by }) !== null) continue;
      const identity = register.declare(name, 'noted');
      const said = identity.categories.find(({ source }) => source !== 'find' && source !== 'default');
      identity.categories.push({ name: category, source: 'note' });
      if (said && said.name !== category) {
        messages.push(
          sayBreakdown('element-two-categories', { name: identity.name, first: said.name, second: category }, at),
        );
      }
      sightings.push(sight(identity, 'noted', name, at, { by, count, description }));
    }
  }
  for (const { element, quoted, at } of notesOf(scene.notes, 'state')) {
    // A quoted name is the thing of that very name.
    const identity =
      quoted && !garments.has(foldName(element))
        ? register.declare(element, 'noted')
        : resolveState(element, register, [...marked, ...sightings], garments);
    if (!identity) continue;
    sightings.push(sight(identity, 'noted', element, at));
    if (!isNamed(identity.names, element)) {
      messages.push(sayBreakdown('state-read-as', { typed: element, name: identity.name }, at));
    }
  }
  return { sightings, messages };
}

/**
 * The thing that a state note means: the one of this name, else the only thing of the scene that it can mean, else a new one. Null when
 * it can mean a garment: the costume pass knows which.
 */
function resolveState(
  name: string,
  register: ElementRegister,
  here: readonly Sighting[],
  garments: GarmentNames,
): Identity | null {
  if (garments.has(foldName(name))) return null;
  const exact = register.declaredAs(name);
  if (exact) return register.declare(name, 'noted');
  const candidates = new Set(here.map(({ identity }) => identity).filter((one) => sameThing(one.name, name)));
  const [only] = candidates;
  if (candidates.size === 1 && only) return only;
  if (candidates.size === 0 && [...garments].some((garment) => sameThing(garment, name))) return null;
  return register.declare(name, 'noted');
}
