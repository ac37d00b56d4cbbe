import type { Diagnostic } from '../base/diagnostic.js';
import { slug } from '../base/slug.js';
import { type Answers, questionIds, saysNo } from './answers.js';
import { Closets, type Outfit, type Piece } from './closet.js';
import { type CostumeEvent, gatherCostumeEvents } from './costume-events.js';
import { type CostumeNote, dressByNote, dressInList } from './dress-by-notes.js';
import type { ElementRegister } from './element-register.js';
import { settleGarmentStates } from './garment-states.js';
import { type Ground, notesOf, type SceneGround } from './ground.js';
import { imagesOfScenes } from './montage.js';
import { keepsClothes } from './nights.js';
import type { Presence } from './presence.js';
import { SceneDress } from './scene-dress.js';
import type { Sighting } from './sighting.js';
import type { Soaking } from './soaked.js';
import { soakClothes } from './soaked-answers.js';
import type { StoryDay } from './types.js';

/** What the costume pass is told of a scene. Sightings may be renamed and added to. */
export interface CostumeInput {
  readonly ground: SceneGround;
  readonly day: StoryDay;
  readonly presences: readonly Presence[];
  readonly sightings: Sighting[];
}

/** A person's clothes in a scene, before states are known. */
export interface Dressed {
  readonly person: string;
  readonly change: number;
  readonly changeOut: number;
  readonly pieces: readonly DressedPiece[];
}

export interface DressedPiece extends Piece {
  readonly carried: boolean;
  readonly action: string | null;
}

/** Garments that cannot both be on: read as a change, and asked about. */
export interface CostumeDoubt {
  readonly scene: number;
  readonly person: string;
  readonly before: string;
  readonly now: string;
  readonly line: number;
}

export interface CostumePlot {
  readonly dressed: readonly (readonly Dressed[])[];
  readonly doubts: readonly CostumeDoubt[];
  readonly messages: readonly Diagnostic[];
}

/**
 * Follows what everyone wears from scene to scene. A costume holds for the whole story day unless the script changes it; a new story
 * day and a flashback begin a new change; after a flashback the change before it goes on.
 */
export function plotCostumes(
  ground: Ground,
  inputs: readonly CostumeInput[],
  register: ElementRegister,
  answers: Answers,
  soakings: readonly (readonly Soaking[])[],
): CostumePlot {
  const closets = new Closets(register);
  const messages: Diagnostic[] = [];
  const kept = keepsClothes(answers);
  const doubts: CostumeDoubt[] = [];
  // A `wears` note before the first scene is what the person has on every day of the main line, until a scene says otherwise.
  const usual = new Map(notesOf(ground.script.notes, 'costume').map((note) => [note.person, note] as const));
  const latest = new Map<string, Outfit>();
  const isSeenAfter = (index: number, person: string) =>
    inputs.some(
      ({ day, presences }, later) =>
        later > index && day.label === inputs[index]?.day.label && showsIn(presences, person),
    );
  const images = imagesOfScenes(inputs.map(({ ground: { scene } }) => scene));
  const dressed = inputs.map((input, index) => {
    closets.turnTo(input.day.label);
    const isNoChange = (person: string) => saysNo(answers, questionIds.change(slug(person), input.ground.id));
    const dress = new SceneDress(
      input,
      closets,
      isNoChange,
      (person) => isSeenAfter(index, person),
      images[index] ?? [],
    );
    for (const presence of input.presences) {
      const { name } = presence.person;
      const stays = kept(input.ground, name) ? (latest.get(name) ?? null) : null;
      if (presence.cast.presence === 'seen') letIn(dress, presence, stays, usual.get(name) ?? null);
    }
    for (const event of gatherCostumeEvents(input.ground, input.sightings)) apply(dress, event);
    soakClothes(dress, soakings[index] ?? [], answers);
    settleGarmentStates(dress);
    for (const { person } of input.presences) {
      const outfit = closets.outfit(person.name, input.day.label);
      if (outfit && input.day.series === 'D') latest.set(person.name, outfit);
    }
    messages.push(...dress.messages);
    doubts.push(...dress.doubts);
    const background = new Set(
      input.presences.filter(({ person }) => person.background).map(({ person }) => person.name),
    );
    return dress.finish().filter(({ person, pieces }) => pieces.length > 0 || !background.has(person));
  });
  return { dressed, doubts, messages };
}

function showsIn(presences: readonly Presence[], name: string): boolean {
  return presences.some(({ person, cast }) => person.name === name && cast.presence === 'seen');
}

function letIn(
  dress: SceneDress,
  { person, firstSeen }: Presence,
  kept: Outfit | null,
  usual: CostumeNote | null,
): void {
  const begins = dress.closets.outfit(person.name, dress.input.day.label) === null;
  const figure = dress.enter(person.name, firstSeen, kept);
  const dressesDaily = begins && !kept && dress.input.day.series === 'D';
  if (usual && dressesDaily) dressInList(dress, figure, usual.garments, usual.at);
}

function apply(dress: SceneDress, event: CostumeEvent): void {
  if (event.kind === 'item') dress.wear(event.person, event.item);
  if (event.kind === 'sighting') dress.showWorn(event.person, event.sighting);
  if (event.kind === 'move') dress.move(event.move);
  if (event.kind === 'note') dressByNote(dress, event.note);
}
