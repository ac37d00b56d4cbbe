import type { Diagnostic } from '../base/diagnostic.js';
import { foldName, slug } from '../base/slug.js';
import type { Find } from '../find/types.js';
import { sayBreakdown } from '../messages/breakdown.js';
import { type Answers, questionIds } from './answers.js';
import { ElementRegister, type Identity } from './element-register.js';
import { type Ground, notesOf } from './ground.js';
import { obtain, pushTo } from './grouping.js';
import { meetDefinitions } from './meet-definitions.js';
import type { PeopleIndex } from './people-index.js';
import { coreName, isAbsence } from './same-thing.js';
import { type FoundNames, joinFinds, sightFinds, type Unclear } from './sight-finds.js';
import { sightMarks } from './sight-marks.js';
import { sightNotes } from './sight-notes.js';
import type { Sighting } from './sighting.js';
import { wearerOf } from './worn-items.js';

/** Everything that speaks of things, scene by scene. */
export interface Sightings {
  readonly register: ElementRegister;
  readonly scenes: readonly Sighting[][];
  readonly unclear: readonly (readonly Unclear[])[];
  readonly messages: readonly Diagnostic[];
}

/** Sights things in three rounds over the script: what marks and notes declare, what finds add to those, and what is only found. */
export function sightThings(ground: Ground, people: PeopleIndex, answers: Answers): Sightings {
  const register = new ElementRegister(ground.script);
  const messages: Diagnostic[] = [];
  const garments = garmentNames(ground);
  declareGarments(ground, register);
  const declared = ground.scenes.map(({ scene }) => {
    const marks = sightMarks(scene, register, people, ground.script);
    messages.push(...marks.messages);
    return marks.sightings;
  });
  ground.scenes.forEach(({ scene }, index) => {
    const notes = sightNotes(scene, register, declared[index] ?? [], garments);
    messages.push(...notes.messages);
    declared[index]?.push(...notes.sightings);
  });
  const names: FoundNames = new Map();
  const joined = ground.scenes.map(({ finds, id }, index) => {
    const answered = ({ name }: Find) => answers.get(questionIds.which(slug(name), id));
    return joinFinds(finds.elements, declared[index] ?? [], names, answered);
  });
  messages.push(...meetDefinitions(ground, register, people, names));
  const scenes = joined.map(({ sightings, left }, index) => [
    ...(declared[index] ?? []),
    ...sightings,
    ...sightFinds(left, register, names),
  ]);
  joinGarments(scenes);
  messages.push(...tellUncategorised(scenes));
  return { register, scenes, unclear: joined.map(({ unclear }) => unclear), messages };
}

function garmentNames(ground: Ground): Set<string> {
  const names = new Set<string>();
  for (const { scene } of ground.scenes) {
    for (const { garments } of notesOf(scene.notes, 'costume'))
      for (const { name } of garments) names.add(foldName(name));
    for (const { category, items } of notesOf(scene.notes, 'items')) {
      for (const item of items) if (wearerOf(category, item) !== null) names.add(foldName(item.name));
    }
  }
  return names;
}

/** Declares the garments that the notes of one person only name as worn; a name that two people wear means two garments. */
function declareGarments(ground: Ground, register: ElementRegister): void {
  const wearers = new Map<string, { name: string; people: Set<string> }>();
  const add = (name: string, person: string) =>
    obtain(wearers, foldName(name), () => ({ name, people: new Set<string>() })).people.add(person);
  for (const notes of [ground.script.notes, ...ground.scenes.map(({ scene }) => scene.notes)]) {
    for (const { verb, person, garments } of notesOf(notes, 'costume')) {
      if (verb === 'wears' || verb === 'changes to')
        for (const { name } of garments) if (!isAbsence(name)) add(name, person);
    }
    for (const { category, items } of notesOf(notes, 'items')) {
      for (const item of items) {
        const wearer = wearerOf(category, item);
        if (wearer) add(item.name, wearer);
      }
    }
  }
  for (const { name, people } of wearers.values()) {
    const [only, ...others] = people;
    if (only !== undefined && others.length === 0) register.declareGarment(name, only);
  }
}

/** A coat found on a hook is the coat found on someone, when only one person is ever found in a coat of that name. */
function joinGarments(scenes: readonly (readonly Sighting[])[]): void {
  const owned = new Map<string, Set<Identity>>();
  const all = scenes
    .flat()
    .filter(({ identity, known }) => known === 'found' && identity.categories[0]?.name === 'costumes');
  for (const { identity } of all) {
    if (identity.owner !== null) obtain(owned, coreName(identity.name), () => new Set()).add(identity);
  }
  for (const sighting of all) {
    if (sighting.identity.owner !== null || sighting.identity.known !== 'found') continue;
    const candidates = [...(owned.get(coreName(sighting.identity.name)) ?? [])];
    const own =
      candidates.find(({ owner }) => owner === sighting.by) ?? (candidates.length === 1 ? candidates[0] : undefined);
    if (own) sighting.identity = own;
  }
}

/** One message for each thing that a mark names and nothing gives a category. */
function tellUncategorised(scenes: readonly (readonly Sighting[])[]): Diagnostic[] {
  const marks = new Map<Identity, Sighting[]>();
  for (const sighting of scenes.flat()) if (sighting.known === 'marked') pushTo(marks, sighting.identity, sighting);
  return [...marks]
    .filter(([identity]) => identity.categories.length === 0)
    .map(([identity, [first]]) => sayBreakdown('element-without-category', { name: identity.name }, first?.at));
}
