import type { Diagnostic } from '../base/diagnostic.js';
import type { Finds } from '../find/types.js';
import type { Pages } from '../page/types.js';
import type { Script } from '../script/types.js';
import { questionIds, readAnswers } from './answers.js';
import { assembleScenes } from './assemble-scenes.js';
import { carryThings } from './carry-things.js';
import { type CostumeInput, plotCostumes } from './costume-plot.js';
import { followStates } from './follow-states.js';
import { type Ground, layGround } from './ground.js';
import { joinPackages } from './join-packages.js';
import { listCast } from './list-cast.js';
import { listElements } from './list-elements.js';
import { listPlaces } from './list-places.js';
import { checkOpeningNotes } from './opening-notes.js';
import { type PeopleInScenes, tellPeople } from './people-in-scenes.js';
import { gatherPeople } from './people-index.js';
import { findPlaces, type ScenePlace } from './places.js';
import { confirmFinds, readRefusals, strikeRefused, tellRefusals } from './refusals.js';
import { tellSharedNames } from './scene-ids.js';
import { totalScreenTime } from './screen-time.js';
import { type Sightings, sightThings } from './sight-things.js';
import { findSoakings } from './soaked.js';
import { findStatesBetween } from './states-between.js';
import { type DayInput, type Reckoned, reckonStoryDays } from './story-days.js';
import { inStoryOrder } from './story-order.js';
import type { Breakdown } from './types.js';
import { tellUnmetAnswers } from './unmet-answers.js';

/**
 * Breaks a script down: who and what is in each scene, in which state, on which day of the story, and what goes on from scene to scene.
 *
 *     ground ─┬─▶ people, places ─▶ story days ─┬─▶ clothes ─▶ carried things ─▶ states ─▶ scenes ─▶ indexes
 *             └─▶ sightings ────────────────────┘
 *
 * Every pass takes values and gives values and messages; none looks ahead at what a later one decides. The pass of clothes also settles
 * what a sighting means (`coat` on someone in a grey coat), since only it knows who wears what.
 */
export function buildBreakdown(
  script: Script,
  pages: Pages,
  finds: Finds,
): { readonly breakdown: Breakdown; readonly messages: readonly Diagnostic[] } {
  const passes = runPasses(script, pages, finds);
  const { people, places, order, present, sightings, costumes, refusals, ids, states, answers } = passes;
  // 8. Put the scenes together, with links and open questions, and make the indexes across them.
  const scenes = assembleScenes(passes);
  const between = findStatesBetween(scenes, states, ids);
  const breakdown: Breakdown = {
    ...titleOf(script, pages),
    screenTime: totalScreenTime(scenes.map(({ screenTime }) => screenTime)),
    scenes,
    cast: listCast(people.all, scenes, between),
    elements: listElements(scenes, order, ids, between),
    places: listPlaces(scenes, places),
  };
  const messages = [
    ...present.messages,
    ...sightings.messages,
    ...costumes.messages,
    ...checkOpeningNotes(script),
    ...tellRefusals(refusals, sightings.scenes),
    ...tellUnmetAnswers(answers, scenes),
    ...tellSharedNames(script),
  ];
  return { breakdown, messages };
}

function runPasses(script: Script, pages: Pages, finds: Finds) {
  // 1. Lay script, pages and finds side by side, without what the writer refused, sure of what the writer said yes to.
  const whole = layGround(script, pages, joinPackages(finds));
  const answers = readAnswers(whole);
  const refusals = readRefusals(whole, answers);
  const ground = confirmFinds(strikeRefused(whole, refusals), answers);
  // 2. Who is there, and where it plays.
  const people = gatherPeople(ground);
  const present = tellPeople(ground, people, answers);
  const places = findPlaces(ground.scenes, answers);
  // 3. What marks, notes and finds speak of.
  const sightings = sightThings(ground, people, answers);
  // 4. When it plays.
  const reckoned = reckonStoryDays(dayInputs(ground, present, places), answers);
  const order = inStoryOrder(reckoned.map(({ day }) => day));
  // 5. What people wear.
  const soakings = ground.scenes.map((scene) => findSoakings(scene, present.matcher));
  const costumes = plotCostumes(
    ground,
    costumeInputs(ground, present, sightings, reckoned),
    sightings.register,
    answers,
    soakings,
  );
  // 6. What is there by continuity: garments, dressing, things in hand.
  const base = { ground, people, present, places, refusals, sightings, reckoned, order, costumes, answers, soakings };
  const carried = carryThings(base);
  // 7. In which state.
  const { ids, makeUpDoubts, alongDoubts } = carried;
  const states = followStates(carried.stateInputs, order, (identity, scene) =>
    answers.get(questionIds.state(ids.get(identity) as string, scene.id)),
  );
  return { ...base, things: carried.scenes, states, ids, makeUpDoubts, alongDoubts };
}

function dayInputs(ground: Ground, present: PeopleInScenes, places: readonly ScenePlace[]): DayInput[] {
  return ground.scenes.map((scene, index) => ({
    ground: scene,
    place: (places[index] as ScenePlace).key,
    people: present.seenIds(index),
  }));
}

function costumeInputs(
  ground: Ground,
  present: PeopleInScenes,
  sightings: Sightings,
  reckoned: readonly Reckoned[],
): CostumeInput[] {
  return ground.scenes.map((scene, index) => ({
    ground: scene,
    day: (reckoned[index] as Reckoned).day,
    presences: present.scenes[index]?.presences ?? [],
    sightings: sightings.scenes[index] ?? [],
  }));
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
