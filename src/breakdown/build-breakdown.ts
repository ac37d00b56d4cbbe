import type { Diagnostic } from '../base/diagnostic.js';
import type { Finds } from '../find/types.js';
import type { Pages } from '../page/types.js';
import type { Script } from '../script/types.js';
import { assembleScenes } from './assemble-scenes.js';
import { carryThings } from './carry-things.js';
import { plotCostumes } from './costume-plot.js';
import { nameElements } from './element-ids.js';
import { followStates } from './follow-states.js';
import { layGround } from './ground.js';
import { listCast } from './list-cast.js';
import { listElements } from './list-elements.js';
import { listPlaces } from './list-places.js';
import { keepsClothes } from './nights.js';
import { checkOpeningNotes } from './opening-notes.js';
import { tellPeople } from './people-in-scenes.js';
import { gatherPeople } from './people-index.js';
import { findPlaces } from './places.js';
import { readAnswers } from './questions.js';
import { readRefusals, strikeRefused, tellRefusals } from './refusals.js';
import { totalScreenTime } from './screen-time.js';
import { sightThings } from './sight-things.js';
import { reckonStoryDays } from './story-days.js';
import { inStoryOrder } from './story-order.js';
import type { Breakdown } from './types.js';

/**
 * Breaks a script down: who and what is in each scene, in which state, on which day of the story, and what goes on from scene to scene.
 *
 *     ground ─▶ people ─▶ days ─▶ clothes ─▶ carried things ─▶ states ─▶ scenes ─▶ indexes
 *         └───▶ sightings ─────────┘
 *
 * Every pass takes values and gives values and messages; none looks ahead at what a later one decides.
 */
export function buildBreakdown(
  script: Script,
  pages: Pages,
  finds: Finds,
): { readonly breakdown: Breakdown; readonly messages: readonly Diagnostic[] } {
  // 1. Lay script, pages and finds side by side, without what the writer refused.
  const whole = layGround(script, pages, finds);
  const refusals = readRefusals(whole);
  const ground = strikeRefused(whole, refusals);
  const answers = readAnswers(ground);
  // 2. Who is there, where it plays.
  const people = gatherPeople(ground);
  const present = tellPeople(ground, people);
  const places = findPlaces(ground.scenes);
  // 3. What marks, notes and finds speak of.
  const sightings = sightThings(ground, people);
  // 4. When it plays.
  const reckoned = reckonStoryDays(
    ground.scenes.map((scene, index) => ({
      ground: scene,
      place: places[index]?.key ?? '',
      people: present.seenIds(index),
    })),
  );
  const order = inStoryOrder(reckoned.map(({ day }) => day));
  // 5. What people wear.
  const costumes = plotCostumes(
    ground,
    ground.scenes.map((scene, index) => ({
      ground: scene,
      day: (reckoned[index] as (typeof reckoned)[number]).day,
      presences: present.scenes[index]?.presences ?? [],
      sightings: sightings.scenes[index] ?? [],
    })),
    sightings.register,
    keepsClothes(answers),
  );
  // 6. What is there by continuity: garments, dressing, things in hand.
  const things = carryThings({ ground, present, places, reckoned, order, sightings, costumes, refusals });
  // 7. In which state.
  const states = followStates(things.stateInputs, order);
  // 8. The scenes, and the indexes across them.
  const ids = nameElements(things.identities);
  const scenes = assembleScenes({
    ground,
    present,
    places,
    reckoned,
    order,
    sightings,
    costumes,
    things: things.scenes,
    states,
    ids,
    answers,
  }); // prettier-ignore
  const breakdown: Breakdown = {
    ...titleOf(script, pages),
    screenTime: totalScreenTime(scenes.map(({ screenTime }) => screenTime)),
    scenes,
    cast: listCast(people.all, scenes),
    elements: listElements(scenes, order, ids),
    places: listPlaces(scenes, places),
  };
  const messages = [
    ...present.messages,
    ...sightings.messages,
    ...costumes.messages,
    ...checkOpeningNotes(script),
    ...tellRefusals(refusals, sightings.scenes),
  ];
  return { breakdown, messages };
}

function titleOf({ front, file, scenes, closing, opening }: Script, pages: Pages) {
  const blocks = [...opening, ...scenes.flatMap(({ lead }) => lead), ...closing];
  return {
    title: front.title ?? file.replace(/^.*\//, '').replace(/\.[^.]*$/, ''),
    draft: front.draft,
    date: front.date,
    author: front.author,
    paper: front.paper,
    pages: pages.pages.length,
    eighths: pages.eighths,
    omitted: blocks.flatMap((block) => (block.kind === 'omitted' ? [block.number] : [])),
  };
}
