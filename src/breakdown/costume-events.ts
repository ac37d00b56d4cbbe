import type { Move } from '../find/types.js';
import type { Note, NoteItem } from '../script/types.js';
import { spareClothes } from '../trade/outer-garments.js';
import { categoryOfIdentity } from './element-register.js';
import { notesOf, type SceneGround } from './ground.js';
import type { Sighting } from './sighting.js';
import { wearerOf } from './worn-items.js';

/** Something that happens to the clothes of people in a scene, in the order of the source. */
export type CostumeEvent =
  | { readonly kind: 'note'; readonly note: Extract<Note, { readonly kind: 'costume' }>; readonly offset: number }
  | { readonly kind: 'item'; readonly person: string; readonly item: NoteItem; readonly offset: number }
  | { readonly kind: 'sighting'; readonly person: string; readonly sighting: Sighting; readonly offset: number }
  | { readonly kind: 'move'; readonly move: Move; readonly offset: number };

/** Gathers what notes, marks and finds say about clothes in a scene. */
export function gatherCostumeEvents(ground: SceneGround, sightings: readonly Sighting[]): CostumeEvent[] {
  const events: CostumeEvent[] = [];
  for (const note of notesOf(ground.scene.notes, 'costume')) {
    // A `wears` list describes the person as they come into the scene, wherever the note stands.
    events.push({ kind: 'note', note, offset: note.verb === 'wears' ? -1 : note.at.start.offset });
  }
  for (const { category, items } of notesOf(ground.scene.notes, 'items')) {
    for (const item of items) {
      const person = wearerOf(category, item);
      if (person) events.push({ kind: 'item', person, item, offset: item.at.start.offset });
    }
  }
  for (const sighting of sightings) {
    const person = shownOn(sighting, sightings);
    if (person) events.push({ kind: 'sighting', person, sighting, offset: sighting.at.start.offset });
  }
  // A move counts from the end of its words: `takes off the coat` first shows the coat on, then off.
  for (const move of ground.finds.moves) events.push({ kind: 'move', move, offset: move.at.end.offset });
  return events.sort((a, b) => a.offset - b.offset);
}

/** Who wears what a sighting shows: as the finder read it, else as its definition says; null when it is not worn. */
function shownOn(sighting: Sighting, all: readonly Sighting[]): string | null {
  const { identity, worn, by, known } = sighting;
  if (known === 'implied') return null;
  if (worn !== null) return worn ? by : null;
  const said = all.some((other) => other !== sighting && other.identity === identity && other.worn !== null);
  if (said) return null;
  if (spareClothes.test(identity.name)) return null;
  const wornBy = identity.definition?.wornBy ?? null;
  if (wornBy) return wornBy;
  return by && known === 'noted' && categoryOfIdentity(identity) === 'costumes' ? by : null;
}
