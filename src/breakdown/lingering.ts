import { leavingWords } from '../trade/presence-words.js';
import { continuousWords } from '../trade/story-day-words.js';
import { type Answers, questionIds, saysYes } from './answers.js';
import type { SceneGround } from './ground.js';
import type { NameMatcher } from './name-matcher.js';
import { placeKey } from './places.js';
import type { Presence } from './presence.js';

/** Someone who was in the scene before, in the same place, a moment ago, and of whom nothing says that they left. */
export interface Lingering {
  readonly presence: Presence;
  readonly since: string;
}

/** Finds who may still be there: a scene that goes on in the same place without a gap loses nobody by itself. */
export function findLingering(
  scene: SceneGround,
  before: SceneGround | null,
  seenBefore: readonly Presence[],
  seenHere: readonly Presence[],
  matcher: NameMatcher,
): Lingering[] {
  if (!before || !goesOnInPlace(before, scene)) return [];
  const missing = seenBefore.filter(({ person }) => !seenHere.some((one) => one.person === person));
  const gone = new Set(missing.filter((presence) => leaves(presence, before, matcher)));
  return missing.filter((presence) => !gone.has(presence)).map((presence) => ({ presence, since: before.label }));
}

/** The people of whom the writer answered that they are still there, as silent people of the scene. */
export function stayOn(lingering: readonly Lingering[], scene: SceneGround, answers: Answers): Presence[] {
  const staying = lingering.filter(({ presence }) => saysYes(answers, questionIds.there(presence.person.id, scene.id)));
  const { at } = scene.scene.heading;
  return staying.map(({ presence: { person, cast } }) => {
    const mentions = [{ words: person.name, line: at.start.line, at }];
    return {
      person,
      firstSeen: null,
      cast: { ...cast, presence: 'seen', voice: null, speaks: false, known: 'noted', mentions },
    };
  });
}

function goesOnInPlace(before: SceneGround, { scene }: SceneGround): boolean {
  const { heading } = scene;
  const goesOn = heading.time?.split(/ [-\u2013\u2014] /).some((part) => continuousWords.test(part)) ?? false;
  const other = before.scene.heading;
  return goesOn && heading.setting === other.setting && placeKey(heading.place) === placeKey(other.place);
}

function leaves({ person }: Presence, { actions }: SceneGround, matcher: NameMatcher): boolean {
  return actions.some((action) =>
    matcher(action).some((match) => {
      const rest = /^[^.!?]*/.exec(action.text.slice(match.end))?.[0] ?? '';
      return match.person === person && leavingWords.test(rest);
    }),
  );
}
