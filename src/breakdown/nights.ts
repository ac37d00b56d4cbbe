import { slug } from '../base/slug.js';
import { type Answers, questionIds, saysYes } from './answers.js';
import type { SceneGround } from './ground.js';
import type { PeopleInScenes } from './people-in-scenes.js';
import type { ScenePlace } from './places.js';
import type { NightDoubt } from './questions.js';
import type { StoryDay } from './types.js';

/** True for a person and a scene of a new day when the writer answered that the clothes stay on. */
export function keepsClothes(answers: Answers): (scene: SceneGround, person: string) => boolean {
  return (scene, person) => saysYes(answers, questionIds.clothes(slug(person), scene.id));
}

interface NightInput {
  readonly ground: SceneGround;
  readonly day: StoryDay;
  readonly place: ScenePlace;
}

/**
 * Finds people who begin a new day where they were at night, or at dawn: they may have kept their clothes on. Only a note that dresses them settles
 * it, or an answer.
 */
export function doubtNights(inputs: readonly NightInput[], present: PeopleInScenes): NightDoubt[][] {
  const last = new Map<string, NightInput>();
  return inputs.map((input, index) => {
    const doubts: NightDoubt[] = [];
    if (input.day.series !== 'D') return doubts;
    for (const { person, cast } of present.scenes[index]?.presences ?? []) {
      if (cast.presence !== 'seen') continue;
      const before = last.get(person.id);
      last.set(person.id, input);
      if (!before || before.day.number === input.day.number || !mayHaveStayed(before, input)) continue;
      if (isDressed(input.ground, person.name)) continue;
      const id = questionIds.clothes(slug(person.name), input.ground.id);
      doubts.push({ id, person: person.name, before: before.ground.label, line: cast.mentions[0]?.line ?? 0 });
    }
    return doubts;
  });
}

/** From night to dawn people are often still up; from night to day they may have slept where they were. */
function mayHaveStayed(before: NightInput, now: NightInput): boolean {
  if (before.ground.scene.heading.light !== 'night') return false;
  return before.place.key === now.place.key || now.ground.scene.heading.light === 'dawn';
}

function isDressed({ scene }: SceneGround, person: string): boolean {
  return scene.notes.some(
    (note) =>
      note.kind === 'costume' && note.person === person && (note.verb === 'wears' || note.verb === 'changes to'),
  );
}
