import { foldName } from '../base/slug.js';
import { categoryOf } from '../trade/categories.js';
import { isNo, isYes } from './answer-fits.js';
import { type Answers, questionIds, saysYes } from './answers.js';
import { carryDressing, dressingKey } from './carry-dressing.js';
import { type AlongDoubt, carryInHand } from './carry-in-hand.js';
import { carryMakeUp, type MakeUpDoubt } from './carry-make-up.js';
import type { CostumePlot, Dressed } from './costume-plot.js';
import { nameElements } from './element-ids.js';
import { categoryOfIdentity, type Identity } from './element-register.js';
import type { StateInput } from './follow-states.js';
import type { Ground, SceneGround } from './ground.js';
import { dropImpliedTwins, mergeSightings, type Thing } from './merge-sightings.js';
import type { PeopleInScenes } from './people-in-scenes.js';
import type { ScenePlace } from './places.js';
import { isRefused, type Refusals } from './refusals.js';
import { indexOfWords } from './same-thing.js';
import { carryGarments } from './scene-elements.js';
import type { Sightings } from './sight-things.js';
import type { Reckoned } from './story-days.js';
import { lineOf } from './story-order.js';

export interface CarryInput {
  readonly ground: Ground;
  readonly present: PeopleInScenes;
  readonly places: readonly ScenePlace[];
  readonly reckoned: readonly Reckoned[];
  readonly order: readonly number[];
  readonly sightings: Sightings;
  readonly costumes: CostumePlot;
  readonly refusals: Refusals;
  readonly answers: Answers;
}

export interface CarriedThings {
  readonly scenes: readonly (readonly Thing[])[];
  readonly stateInputs: readonly StateInput[];
  /** The ids of all things, and of garments that are only said to be absent. */
  readonly ids: ReadonlyMap<Identity, string>;
  readonly makeUpDoubts: readonly MakeUpDoubt[];
  readonly alongDoubts: readonly AlongDoubt[];
}

/** Adds to what each scene speaks of what is there by continuity alone. */
export function carryThings(input: CarryInput): CarriedThings {
  const { ground, present, sightings, costumes } = input;
  const spoken = ground.scenes.map((_, index) =>
    mergeSightings(sightings.scenes[index] ?? [], (person) => Boolean(present.scenes[index]?.seen.has(person))),
  );
  const dressed = spoken.map((things, index) => {
    const here = new Set(things.map(({ identity }) => identity));
    return [
      ...wornThings(things, costumes.dressed[index] ?? []),
      ...carryGarments(costumes.dressed[index] ?? [], here),
    ];
  });
  const ids = nameElements(identitiesOf(dressed, costumes));
  const standing = dressingOf(input, dressed);
  const makeUp = makeUpOf(input, dressed, ids);
  const furnished = dressed.map((things, index) => [
    ...things,
    ...(makeUp.things[index] ?? []),
    ...(standing[index] ?? []),
  ]);
  const inHand = handOf(input, furnished, ids);
  const scenes = furnished.map((things, index) => dropImpliedTwins([...things, ...(inHand.things[index] ?? [])]));
  const stateInputs = scenes.map((things, index) => stateInput(input, things, index));
  return { scenes, stateInputs, ids, makeUpDoubts: makeUp.doubts, alongDoubts: inHand.doubts };
}

/** What the costume pass knows of who wears a thing here wins over a single sighting: worn, or not on after all. */
function wornThings(things: readonly Thing[], dressed: readonly Dressed[]): Thing[] {
  const wearers = new Map<Identity, string>();
  for (const { person, pieces } of dressed) {
    for (const { identity, absent } of pieces) if (!absent && !wearers.has(identity)) wearers.set(identity, person);
  }
  const known = new Set(dressed.map(({ person }) => person));
  return things.map((thing) => {
    const wearer = wearers.get(thing.identity);
    if (wearer !== undefined) return { ...thing, by: wearer, worn: true };
    const notOn = thing.worn && thing.known !== 'implied' && thing.by !== null && known.has(thing.by);
    return notOn ? { ...thing, worn: false } : thing;
  });
}

function dressingOf(
  { places, reckoned, ground, order, refusals, answers }: CarryInput,
  things: readonly (readonly Thing[])[],
) {
  const setOf = (index: number) =>
    dressingKey((ground.scenes[index] as SceneGround).scene.heading.setting, places[index]?.wholeKey ?? '');
  const seriesOf = (index: number) => lineOf((reckoned[index] as Reckoned).day);
  const older = ground.scenes.filter(({ id }) => saysYes(answers, questionIds.past(id))).map(({ index }) => index);
  const borrowing = new Set(older.map((index) => `${seriesOf(index)} ${setOf(index)}`));
  const inputs = order.map((index) => {
    const scene = ground.scenes[index] as SceneGround;
    return {
      ground: scene,
      set: setOf(index),
      series: seriesOf(index),
      borrows: borrowing.has(`${seriesOf(index)} ${setOf(index)}`),
      things: things[index] ?? [],
      refuses: (name: string) => isRefused(refusals, index, name),
    };
  });
  const carried: Thing[][] = things.map(() => []);
  carryDressing(inputs).forEach((list, position) => {
    carried[order[position] as number] = list;
  });
  return carried;
}

function makeUpOf(
  { ground, present, reckoned, order, refusals, answers }: CarryInput,
  things: readonly (readonly Thing[])[],
  ids: ReadonlyMap<Identity, string>,
) {
  const inputs = order.map((index) => ({
    ground: ground.scenes[index] as SceneGround,
    day: (reckoned[index] as Reckoned).day,
    seen: present.scenes[index]?.seen ?? new Set<string>(),
    things: things[index] ?? [],
    idOf: (identity: Identity) => ids.get(identity) as string,
    refuses: (name: string) => isRefused(refusals, index, name),
  }));
  const carried = carryMakeUp(inputs, answers);
  const byScene: (readonly Thing[])[] = things.map(() => []);
  carried.things.forEach((list, position) => {
    byScene[order[position] as number] = list;
  });
  return { things: byScene, doubts: carried.doubts };
}

function handOf(input: CarryInput, things: readonly (readonly Thing[])[], ids: ReadonlyMap<Identity, string>) {
  const { ground, present, places, reckoned, costumes, refusals, answers } = input;
  const isAlong = (thing: Thing, scene: string) => {
    const answer = answers.get(questionIds.along(ids.get(thing.identity) as string, scene)) ?? '';
    return isYes(answer) ? true : isNo(answer) ? false : null;
  };
  return carryInHand(
    ground.scenes.map((scene, index) => ({
      ground: scene,
      continues: reckoned[index]?.unbroken ? (reckoned[index]?.continues ?? null) : null,
      set: dressingKey(scene.scene.heading.setting, places[index]?.wholeKey ?? ''),
      comesAlong: (thing: Thing) => isAlong(thing, scene.id),
      isSeen: (person: string) => Boolean(present.scenes[index]?.seen.has(person)),
      things: things[index] ?? [],
      takenOff: takenOff(costumes.dressed[index] ?? []),
      refuses: (name: string) => isRefused(refusals, index, name),
    })),
  );
}

function takenOff(dressed: readonly Dressed[]): Set<Identity> {
  const pieces = dressed.flatMap((one) => (one.change === one.changeOut ? one.pieces : []));
  return new Set(pieces.filter(({ action }) => action?.endsWith('taken off')).map(({ identity }) => identity));
}

/** When a thing comes into the picture: with its first words; worn, with its wearer; standing there, with the first action. */
function stateInput({ ground, present, reckoned }: CarryInput, things: readonly Thing[], index: number): StateInput {
  const scene = ground.scenes[index] as SceneGround;
  const firstSeen = new Map(
    (present.scenes[index]?.presences ?? []).map(
      ({ person, firstSeen }) => [foldName(person.name), firstSeen] as const,
    ),
  );
  const seenFrom = (thing: Thing): number | null => {
    const own = thing.sightings.find(({ seen }) => seen)?.at.start.offset ?? firstNamed(scene, thing);
    const holder =
      thing.by !== null && (thing.worn || thing.carried) ? (firstSeen.get(foldName(thing.by)) ?? null) : null;
    const place = categoryOf(categoryOfIdentity(thing.identity)).group === 'the place' ? firstAction(scene) : null;
    const offsets = [own, holder, place].filter((offset) => offset !== null);
    return offsets.length > 0 ? Math.min(...offsets) : null;
  };
  return { ground: scene, day: (reckoned[index] as Reckoned).day, things, seenFrom };
}

/** Where the action first writes out one of a thing's names, for scripts and names that the finder does not read. */
function firstNamed({ actions }: SceneGround, { identity }: Thing): number | null {
  for (const { text, place } of actions) {
    for (const name of identity.names) {
      const at = indexOfWords(text, name);
      if (at >= 0) return place(at, at + name.length).start.offset;
    }
  }
  return null;
}

function firstAction({ scene }: SceneGround): number | null {
  return scene.blocks.find(({ kind }) => kind === 'action' || kind === 'speech')?.at.start.offset ?? null;
}

function identitiesOf(scenes: readonly (readonly Thing[])[], costumes: CostumePlot): Identity[] {
  const things = scenes.flat().map(({ identity }) => identity);
  const pieces = costumes.dressed.flat().flatMap((one) => one.pieces.map(({ identity }) => identity));
  return [...new Set([...things, ...pieces])];
}
