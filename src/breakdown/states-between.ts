import type { Identity } from './element-register.js';
import type { FollowedStates } from './follow-states.js';
import type { BreakdownScene } from './types.js';

/** The states a thing passes through on camera in a scene, between the one it comes with and the one it leaves with. */
export type StatesBetween = (scene: string, element: string) => readonly string[];

/** Looks the states between up by the ids of scene and element. */
export function findStatesBetween(
  scenes: readonly BreakdownScene[],
  { spans }: FollowedStates,
  ids: ReadonlyMap<Identity, string>,
): StatesBetween {
  const known = new Map<string, readonly string[]>();
  for (const [index, span] of spans.entries()) {
    for (const [identity, { between }] of span) {
      if (between.length > 0) known.set(keyOf(scenes[index]?.id ?? '', ids.get(identity) ?? ''), between);
    }
  }
  return (scene, element) => known.get(keyOf(scene, element)) ?? [];
}

function keyOf(scene: string, element: string): string {
  return `${scene} ${element}`;
}
