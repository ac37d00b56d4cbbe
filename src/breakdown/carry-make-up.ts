import { goneState, lastingMakeUp } from '../trade/lasting-make-up.js';
import { type Answers, questionIds, saysYes } from './answers.js';
import { categoryOfIdentity, type Identity } from './element-register.js';
import { notesOf, type SceneGround } from './ground.js';
import { obtain } from './grouping.js';
import type { Thing } from './merge-sightings.js';
import { headOf, isNamed } from './same-thing.js';
import { lineOf } from './story-order.js';
import type { StoryDay } from './types.js';

/** What the make-up pass is told of a scene, in story order. */
export interface MakeUpInput {
  readonly ground: SceneGround;
  readonly day: StoryDay;
  /** Names of the people seen. */
  readonly seen: ReadonlySet<string>;
  readonly things: readonly Thing[];
  readonly idOf: (identity: Identity) => string;
  readonly refuses: (name: string) => boolean;
}

/** Make-up of the day before on someone who is seen again: still there? */
export interface MakeUpDoubt {
  readonly scene: number;
  readonly identity: Identity;
  readonly person: string;
  readonly since: string;
  readonly line: number;
}

export interface CarriedMakeUp {
  readonly things: readonly (readonly Thing[])[];
  readonly doubts: readonly MakeUpDoubt[];
}

interface Track {
  readonly thing: Thing;
  readonly scene: SceneGround;
  day: string;
}

/**
 * Carries make-up on a person to the later scenes of the story day in which the person is seen: wounds do not heal within a day. What a
 * mark or a note names always stays; what is only found stays when it is of a lasting kind. On a new day it is asked about, and carried
 * when the answer is yes. Flashbacks keep to themselves.
 */
export function carryMakeUp(inputs: readonly MakeUpInput[], answers: Answers): CarriedMakeUp {
  const lines = new Map<string, Map<Identity, Track>>();
  const doubts: MakeUpDoubt[] = [];
  const things = inputs.map((input) => {
    const tracks = obtain(lines, lineOf(input.day), () => new Map<Identity, Track>());
    const carried = carryInto(input, tracks, answers, doubts);
    for (const thing of input.things) {
      const by = thing.by ?? tracks.get(thing.identity)?.thing.by ?? null;
      if (isGone(thing, input.ground)) tracks.delete(thing.identity);
      else if (stays({ ...thing, by })) {
        tracks.set(thing.identity, { thing: { ...thing, by }, scene: input.ground, day: input.day.label });
      }
    }
    return carried;
  });
  return { things, doubts };
}

function stays({ identity, known, by }: Thing): boolean {
  if (by === null || categoryOfIdentity(identity) !== 'makeup' || known === 'implied') return false;
  return known !== 'found' || lastingMakeUp.has(headOf(identity.name));
}

function carryInto(
  { ground, day, seen, things, idOf, refuses }: MakeUpInput,
  tracks: Map<Identity, Track>,
  answers: Answers,
  doubts: MakeUpDoubt[],
): Thing[] {
  const here = new Set(things.map(({ identity }) => identity));
  const carried: Thing[] = [];
  for (const [identity, track] of tracks) {
    const { thing, scene } = track;
    if (here.has(identity) || !seen.has(thing.by as string) || refuses(identity.name)) continue;
    if (track.day !== day.label) {
      const id = questionIds.still(idOf(identity), ground.id);
      if (!saysYes(answers, id)) {
        doubts.push({
          scene: ground.index,
          identity,
          person: thing.by as string,
          since: scene.label,
          line: thing.line,
        });
        tracks.delete(identity);
        continue;
      }
      track.day = day.label;
    }
    carried.push({ ...thing, carried: true, from: scene.id });
  }
  return carried;
}

function isGone({ identity }: Thing, { scene }: SceneGround): boolean {
  return notesOf(scene.notes, 'state').some(
    ({ element, state }) => isNamed(identity.names, element) && goneState.test(state),
  );
}
