import type { Diagnostic } from '../base/diagnostic.js';
import { foldName } from '../base/slug.js';
import { sayBreakdown } from '../messages/breakdown.js';
import { readCount } from './answer-fits.js';
import { type Answers, questionIds } from './answers.js';
import { countExtras } from './extras.js';
import type { Ground } from './ground.js';
import { findLingering, type Lingering, stayOn } from './lingering.js';
import { makeNameMatcher, type NameMatcher } from './name-matcher.js';
import type { PeopleIndex } from './people-index.js';
import { type Presence, tellPresence } from './presence.js';
import { indexOfWords } from './same-thing.js';
import type { SceneExtra } from './types.js';
import { readUnnamed, standFor, type Unnamed } from './unnamed.js';

/** The people of one scene. */
export interface ScenePeople {
  readonly presences: readonly Presence[];
  readonly extras: readonly SceneExtra[];
  /** Someone who is shown by a pronoun alone. */
  readonly unnamed: Unnamed | null;
  /** People of the scene before who may still be there. */
  readonly lingering: readonly Lingering[];
  /** Names of everyone seen. */
  readonly seen: ReadonlySet<string>;
}

export interface PeopleInScenes {
  readonly scenes: readonly ScenePeople[];
  readonly matcher: NameMatcher;
  /** Ids of the people seen in a scene. */
  readonly seenIds: (scene: number) => readonly string[];
  readonly messages: readonly Diagnostic[];
}

/** Tells who is in every scene: cast seen or heard, and extras. */
export function tellPeople(ground: Ground, people: PeopleIndex, answers: Answers): PeopleInScenes {
  const matcher = makeNameMatcher(
    people,
    ground.scenes.flatMap(({ actions }) => actions),
  );
  const defined = new Map(
    ground.script.definitions
      .filter(({ category }) => category === 'extras')
      .map(({ name, count }) => [foldName(name), count] as const),
  );
  let before: readonly Presence[] = [];
  const scenes = ground.scenes.map((scene, index) => {
    const named = tellPresence(scene, people, matcher);
    const unnamed = correctUnnamed(readUnnamed(scene, before, seenOf(named)), scene.id, before, answers);
    const heard = named.filter(({ person }) => !unnamed?.read.some((one) => one.person === person));
    const first = [...(unnamed?.read ?? []), ...heard];
    const lingering = findLingering(scene, ground.scenes[index - 1] ?? null, before, seenOf(first), matcher);
    const staying = stayOn(lingering, scene, answers);
    const presences = [...first.filter(({ person }) => !staying.some((one) => one.person === person)), ...staying];
    before = seenOf(presences);
    return {
      presences,
      unnamed,
      lingering,
      extras: countByAnswers(countExtras(scene, people, presences, defined, ground.script.source), scene.id, answers),
      seen: new Set(before.map(({ person }) => person.name)),
    };
  });
  const seenIds = (scene: number) =>
    (scenes[scene]?.presences ?? []).filter(({ cast }) => cast.presence === 'seen').map(({ person }) => person.id);
  return { scenes, matcher, seenIds, messages: tellSpeakers(scenes) };
}

/** The writer's answer to who it is: a no takes the guess back, a name of the scene before puts that person in. */
function correctUnnamed(
  unnamed: Unnamed | null,
  scene: string,
  before: readonly Presence[],
  answers: Answers,
): Unnamed | null {
  const answer = unnamed ? answers.get(questionIds.unnamed(scene)) : null;
  if (!unnamed || answer === null || /^yes\b/i.test(answer)) return unnamed;
  const named = before.filter(({ person }) => person.names.some((name) => indexOfWords(answer, name) >= 0));
  return { ...unnamed, read: named.map((presence) => standFor(presence, unnamed.word, unnamed.at)) };
}

/** A number answered to how many there are is their count. */
function countByAnswers(extras: readonly SceneExtra[], scene: string, answers: Answers): SceneExtra[] {
  return extras.map((extra) => {
    if (extra.count !== null) return extra;
    return { ...extra, count: readCount(answers.get(questionIds.count(extra.id, scene)) ?? '') };
  });
}

function seenOf(presences: readonly Presence[]): readonly Presence[] {
  return presences.filter(({ cast }) => cast.presence === 'seen');
}

/** One message for each background person who speaks. */
function tellSpeakers(scenes: readonly ScenePeople[]): Diagnostic[] {
  const told = new Set<string>();
  return scenes.flatMap(({ presences }) =>
    presences.flatMap(({ person, cast }) => {
      if (!person.background || !cast.speaks || told.has(person.id)) return [];
      told.add(person.id);
      return [sayBreakdown('background-speaks', { person: person.name }, cast.mentions[0]?.at)];
    }),
  );
}
