import { eighths } from '../base/eighths.js';
import { categoryOf } from '../trade/categories.js';
import { answerFits } from './answer-fits.js';
import type { Answers } from './answers.js';
import { dressingKey } from './carry-dressing.js';
import type { AlongDoubt } from './carry-in-hand.js';
import type { MakeUpDoubt } from './carry-make-up.js';
import type { CostumePlot } from './costume-plot.js';
import { doubtDays } from './day-doubts.js';
import { categoryOfIdentity, type Identity } from './element-register.js';
import type { FollowedStates } from './follow-states.js';
import type { Ground, SceneGround } from './ground.js';
import { obtain, pushTo } from './grouping.js';
import { listHazards, listTasks } from './hazards.js';
import { linkScenes } from './links.js';
import type { Thing } from './merge-sightings.js';
import { doubtNights } from './nights.js';
import type { PeopleInScenes } from './people-in-scenes.js';
import { listPerhapsWorn } from './perhaps-worn.js';
import { doubtPlaces, type ScenePlace } from './places.js';
import { askQuestions, type NightDoubt } from './questions.js';
import { isRefused, type Refusals } from './refusals.js';
import { writeElements, writeWears } from './scene-elements.js';
import { listNotes } from './scene-notes.js';
import { estimateScreenTime } from './screen-time.js';
import type { Sightings } from './sight-things.js';
import type { Soaking } from './soaked.js';
import { doubtSoaked } from './soaked-answers.js';
import type { Reckoned } from './story-days.js';
import { lineOf } from './story-order.js';
import { writeSynopsis } from './synopsis.js';
import type { BreakdownScene, Question } from './types.js';

export interface AssembleInput {
  readonly ground: Ground;
  readonly present: PeopleInScenes;
  readonly places: readonly ScenePlace[];
  readonly reckoned: readonly Reckoned[];
  readonly order: readonly number[];
  readonly sightings: Sightings;
  readonly costumes: CostumePlot;
  readonly things: readonly (readonly Thing[])[];
  readonly states: FollowedStates;
  readonly ids: ReadonlyMap<Identity, string>;
  readonly answers: Answers;
  readonly makeUpDoubts: readonly MakeUpDoubt[];
  readonly alongDoubts: readonly AlongDoubt[];
  readonly refusals: Refusals;
  readonly soakings: readonly (readonly Soaking[])[];
}

type Bare = Omit<BreakdownScene, 'questions' | 'comesFrom' | 'goesTo' | 'perhapsWorn'>;

/** Puts the scenes of the breakdown together from what the passes found, with links and open questions. */
export function assembleScenes(input: AssembleInput): BreakdownScene[] {
  const bare = input.ground.scenes.map((scene) => assembleScene(input, scene));
  const linkInputs = bare.map(({ id, storyDay, elements, wears }) => ({
    id,
    series: lineOf(storyDay),
    elements,
    wears,
  }));
  const links = linkScenes(linkInputs, input.order);
  const nights = nightsOf(input);
  const questions = collectQuestions(input, bare, nights);
  const isOpen = ({ id }: NightDoubt) => !answerFits('yes or no', [], input.answers.get(id) ?? '');
  const perhaps = listPerhapsWorn(bare, (index) => (nights[index] ?? []).filter(isOpen).map(({ person }) => person));
  return bare.map((scene, index) => ({
    ...scene,
    perhapsWorn: perhaps[index] ?? [],
    questions: questions[index] ?? [],
    comesFrom: links[index]?.comesFrom ?? [],
    goesTo: links[index]?.goesTo ?? [],
  }));
}

function assembleScene(input: AssembleInput, ground: SceneGround): Bare {
  const { index, id, scene } = ground;
  const { heading } = scene;
  const length = input.ground.pages.scenes[index] ?? { page: 1, eighths: eighths(1) };
  const people = input.present.scenes[index];
  const spans = input.states.spans[index] ?? new Map();
  return {
    id,
    number: heading.number,
    order: index + 1,
    heading: heading.text,
    setting: heading.setting,
    place: heading.place,
    placeId: (input.places[index] as ScenePlace).id,
    placeParts: heading.placeParts,
    time: heading.time,
    light: heading.light,
    qualifiers: heading.qualifiers,
    part: scene.part,
    page: length.page,
    eighths: length.eighths,
    screenTime: estimateScreenTime(scene, length.eighths),
    storyDay: (input.reckoned[index] as Reckoned).day,
    synopsis: writeSynopsis(ground, input.present.matcher),
    cast: (people?.presences ?? []).filter(({ person }) => !person.background).map(({ cast }) => cast),
    extras: people?.extras ?? [],
    elements: writeElements(input.things[index] ?? [], spans, input.ids),
    wears: writeWears(input.costumes.dressed[index] ?? [], spans, input.ids),
    hazards: listHazards(ground, people?.presences ?? []),
    tasks: listTasks(ground),
    notes: listNotes(
      ground,
      input.ground.scenes.map((one) => one.id),
    ),
    at: scene.at,
  };
}

/** Of whom each scene asks whether the clothes of the night before are still on. */
function nightsOf({ ground, places, reckoned, present }: AssembleInput): NightDoubt[][] {
  const inputs = ground.scenes.map((scene, index) => ({
    ground: scene,
    day: (reckoned[index] as Reckoned).day,
    place: places[index] as ScenePlace,
  }));
  return doubtNights(inputs, present);
}

function collectQuestions(
  input: AssembleInput,
  scenes: readonly Bare[],
  nights: readonly (readonly NightDoubt[])[],
): Question[][] {
  const { ground, places, reckoned, present, states, costumes, sightings, ids, answers, makeUpDoubts } = input;
  const days = doubtDays(ground.scenes, reckoned, answers);
  const twins = new Map(doubtPlaces(places).map((doubt) => [doubt.scene, doubt] as const));
  const stateDoubts = groupByScene(states.doubts);
  const makeUp = groupByScene(makeUpDoubts);
  const along = groupByScene(input.alongDoubts);
  const costumeDoubts = groupByScene(costumes.doubts);
  const past = dressingBeforeFlashbacks(input);
  const declared = new Set(
    [...ids]
      .filter(([{ known, definition }]) => known === 'marked' || known === 'noted' || definition !== null)
      .map(([, id]) => id),
  );
  return ground.scenes.map((scene, index) => {
    const { storyDay, extras, elements, wears } = scenes[index] as Bare;
    const doubts = {
      ground: scene,
      day: storyDay,
      doubtfulDay: days.get(index) ?? null,
      wears,
      extras,
      unnamed: present.scenes[index]?.unnamed ?? null,
      lingering: present.scenes[index]?.lingering ?? [],
      makeUp: (makeUp.get(index) ?? []).map((doubt) => ({ ...doubt, id: ids.get(doubt.identity) as string })),
      // What is marked or noted anywhere needs no yes or no where it is only found; where it is only implied, it does.
      elements: elements.filter(({ id, known }) => known === 'implied' || !declared.has(id)),
      states: (stateDoubts.get(index) ?? []).map((doubt) => ({ ...doubt, id: ids.get(doubt.identity) as string })),
      costumes: costumeDoubts.get(index) ?? [],
      soaked: doubtSoaked(input.soakings[index] ?? [], wears),
      along: (along.get(index) ?? []).map((doubt) => ({ ...doubt, id: ids.get(doubt.identity) as string })),
      nights: nights[index] ?? [],
      unclear: sightings.unclear[index] ?? [],
      place: twins.get(index) ?? null,
      pastDressing: past.get(index) ?? [],
    };
    return askQuestions(doubts, answers);
  });
}

function groupByScene<T extends { readonly scene: number }>(doubts: readonly T[]): Map<number, T[]> {
  const groups = new Map<number, T[]>();
  for (const doubt of doubts) pushTo(groups, doubt.scene, doubt);
  return groups;
}

/** For the first scene of each flashback in a set: what stands there in the main line. */
function dressingBeforeFlashbacks(input: AssembleInput): Map<number, string[]> {
  const { ground, places, reckoned, things, refusals } = input;
  const standing = new Map<string, Set<string>>();
  const first = new Map<string, number>();
  ground.scenes.forEach(({ scene }, index) => {
    const set = dressingKey(scene.heading.setting, places[index]?.wholeKey ?? '');
    const { day } = reckoned[index] as Reckoned;
    if (day.series === 'F') {
      const key = `${day.label} ${set}`;
      if (!first.has(key)) first.set(key, index);
      return;
    }
    for (const { identity, known } of things[index] ?? []) {
      const stands = categoryOf(categoryOfIdentity(identity)).group === 'the place' && known !== 'implied';
      if (stands) obtain(standing, set, () => new Set<string>()).add(identity.name);
    }
  });
  const doubts = new Map<number, string[]>();
  for (const [key, index] of first) {
    const set = key.slice(key.indexOf(' ') + 1);
    const names = [...(standing.get(set) ?? [])].filter((name) => !isRefused(refusals, index, name));
    if (names.length > 0) doubts.set(index, names);
  }
  return doubts;
}
