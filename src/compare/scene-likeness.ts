import type { SceneFacts } from './types.js';

/** The words of a scene by which it is found again. */
export interface SceneWords {
  readonly synopsis: ReadonlySet<string>;
  readonly people: ReadonlySet<string>;
  readonly things: ReadonlySet<string>;
}

/** The words of a scene: of what happens, its people and its things. */
export function wordsOf(scene: SceneFacts): SceneWords {
  return {
    synopsis: new Set(scene.synopsis.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []),
    people: new Set(scene.cast.map((person) => person.name)),
    things: new Set(scene.things.map((thing) => thing.id)),
  };
}

/** Points for what happens and the things it takes, 0 to 4.5. */
export function likenessOfContent(one: SceneWords, other: SceneWords): number {
  return 3 * likeness(one.synopsis, other.synopsis) + 1.5 * likeness(one.things, other.things);
}

/** Points for the people, 0 to 1.5. */
export function likenessOfPeople(one: SceneWords, other: SceneWords): number {
  return 1.5 * likeness(one.people, other.people);
}

/** How many of the words of two sets are in both, 0 to 1; nothing is told by two empty sets. */
function likeness(one: ReadonlySet<string>, other: ReadonlySet<string>): number {
  let both = 0;
  for (const word of one) if (other.has(word)) both++;
  const all = one.size + other.size - both;
  return all === 0 ? 0 : both / all;
}
