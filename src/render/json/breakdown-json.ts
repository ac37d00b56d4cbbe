import type { Breakdown, ElementEntry, PersonEntry, PlaceEntry } from '../../breakdown/types.js';
import type { DayFacts, Renames } from '../../compare/types.js';
import { garmentJson } from './costume-json.js';
import { roundTenth } from './numbers.js';
import { sceneJson, timeJson } from './scene-json.js';

/** The version of the schema; it rises when a field changes its meaning or goes. */
export const schemaVersion = 1;

/** The breakdown and the shooting days as plain data in a stable order of keys, without places in the source other than lines. */
export function buildBreakdownJson(
  breakdown: Breakdown,
  days: readonly DayFacts[] | null = null,
  renames: Renames | null = null,
) {
  return {
    version: schemaVersion,
    title: breakdown.title,
    draft: breakdown.draft,
    date: breakdown.date,
    author: breakdown.author,
    paper: breakdown.paper,
    pages: roundTenth(breakdown.pages),
    eighths: breakdown.eighths,
    screenTime: timeJson(breakdown.screenTime),
    shootingDays: days,
    scenes: breakdown.scenes.map(sceneJson),
    omitted: breakdown.omitted,
    cast: breakdown.cast.map(personJson),
    elements: breakdown.elements.map(elementJson),
    places: breakdown.places.map(placeJson),
    ...renamesJson(renames),
  };
}

/** What the next run must know to find the book's entries again; nothing while the book has the present names. */
function renamesJson(renames: Renames | null) {
  if (renames === null || renames.scenes.size + renames.places.size + renames.slipped.length === 0) return {};
  const { scenes, places, slipped } = renames;
  return { renamed: { scenes: Object.fromEntries(scenes), places: Object.fromEntries(places), slipped } };
}

function personJson(person: PersonEntry) {
  return {
    id: person.id,
    name: person.name,
    names: person.names,
    age: person.age,
    minor: person.minor,
    background: person.background,
    seen: person.seen,
    heard: person.heard,
    changes: person.changes.map((change) => ({
      number: change.number,
      storyDay: change.storyDay,
      scenes: change.scenes,
      garments: change.garments.map((garment) => ({
        ...garmentJson(garment),
        states: garment.states.map(({ scene, state }) => ({ scene, state })),
      })),
    })),
  };
}

function elementJson(element: ElementEntry) {
  return {
    id: element.id,
    name: element.name,
    names: element.names,
    category: element.category,
    known: element.known,
    strength: element.strength,
    description: element.description,
    count: element.count,
    scenes: element.scenes,
    by: element.by,
    states: element.states.map(({ state, scene, onCamera }) => ({ state, scene, onCamera })),
  };
}

function placeJson(place: PlaceEntry) {
  return {
    id: place.id,
    name: place.name,
    settings: place.settings,
    areas: place.areas,
    scenes: place.scenes,
    sets: place.sets.map(({ setting, place: name, scenes }) => ({ setting, place: name, scenes })),
    dressing: place.dressing.map(({ id, name, known, scenes }) => ({ id, name, known, scenes })),
  };
}
