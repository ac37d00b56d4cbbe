import { sayBreakdown } from '../messages/breakdown.js';
import type { Note } from '../script/types.js';
import type { Identity } from './element-register.js';
import { notesOf } from './ground.js';
import { isNamed, sameThing } from './same-thing.js';
import type { SceneDress } from './scene-dress.js';
import { sight } from './sighting.js';

type StateNote = Extract<Note, { readonly kind: 'state' }>;

/**
 * Gives the state notes of a scene that speak of garments to the garments: those worn here, else one that lies here, else one that was
 * ever worn. A note of a state is a mention: the garment is then not in the scene by continuity alone.
 */
export function settleGarmentStates(dress: SceneDress): void {
  const { ground, sightings } = dress.input;
  for (const note of notesOf(ground.scene.notes, 'state')) {
    if (sightings.some(({ at, known }) => known === 'noted' && at.start.offset === note.at.start.offset)) continue;
    const worn = wornHere(dress, note);
    if (worn.length > 1) {
      const owners = worn.map(([person]) => person);
      dress.messages.push(sayBreakdown('state-names-many', { name: note.element, owners }, note.at));
    }
    for (const [person, identity] of worn) {
      dress.mention(person, identity, note.at);
      sightings.push(sight(identity, 'noted', note.element, note.at, { by: person, worn: true }));
    }
    const identity = worn[0]?.[1] ?? offBody(dress, note);
    if (worn.length === 0) sightings.push(sight(identity, 'noted', note.element, note.at));
    if (!isNamed(identity.names, note.element)) {
      dress.messages.push(sayBreakdown('state-read-as', { typed: note.element, name: identity.name }, note.at));
    }
  }
}

/** The garments on people here that the note can mean, each with its wearer: those of exactly this name, else the only one like it. */
function wornHere(dress: SceneDress, { element }: StateNote): (readonly [person: string, identity: Identity])[] {
  const worn = dress.wornPieces();
  const exact = worn.filter(([, identity]) => isNamed(identity.names, element));
  if (exact.length > 0) return exact;
  const like = worn.filter(([, identity]) => sameThing(identity.name, element));
  return like.length === 1 ? like : [];
}

function offBody(dress: SceneDress, { element }: StateNote): Identity {
  const here = [...new Set(dress.input.sightings.map(({ identity }) => identity))];
  const exact = here.find((identity) => isNamed(identity.names, element));
  const like = here.filter((identity) => sameThing(identity.name, element));
  const only = like.length === 1 ? like[0] : undefined;
  return exact ?? only ?? dress.closets.everWorn(element) ?? dress.closets.declare(element);
}
