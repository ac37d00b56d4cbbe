import { likenessOfContent, likenessOfPeople, type SceneWords, wordsOf } from './scene-likeness.js';
import type { SceneFacts } from './types.js';

/** A scene in both drafts, or in one of them. */
export interface ScenePair {
  readonly before: SceneFacts | null;
  readonly after: SceneFacts | null;
}

/**
 * Finds each scene of one draft in the other: by id, heading, people, things and what happens. A number is a label and
 * decides nothing. Pairs stand in the order of the present draft, scenes that are gone behind the one they followed.
 */
export function matchScenes(before: readonly SceneFacts[], after: readonly SceneFacts[]): ScenePair[] {
  const partners = pairUp(before, after);
  const found = new Set(partners.values());
  const gone = before.filter((scene) => !found.has(scene));
  const pairs: ScenePair[] = after.map((scene) => ({ before: partners.get(scene) ?? null, after: scene }));
  for (const scene of gone) {
    const order = before.indexOf(scene);
    const last = before.slice(0, order).at(-1);
    const at = pairs.findIndex((pair) => last !== undefined && pair.before === last);
    pairs.splice(at + 1, 0, { before: scene, after: null });
  }
  return pairs;
}

/** The earlier scene of each present one that has one. */
function pairUp(before: readonly SceneFacts[], after: readonly SceneFacts[]): Map<SceneFacts, SceneFacts> {
  const partners = new Map<SceneFacts, SceneFacts>();
  const taken = new Set<SceneFacts>();
  const pair = (one: SceneFacts, other: SceneFacts) => {
    if (partners.has(other) || taken.has(one)) return;
    partners.set(other, one);
    taken.add(one);
  };
  const byId = new Map(before.map((scene) => [scene.id, scene]));
  for (const scene of after) {
    const same = byId.get(scene.id);
    if (same && same.synopsis === scene.synopsis && same.place === scene.place) pair(same, scene);
  }
  for (const { one, other } of rankPairs(before, after, (one, other) => !taken.has(one) && !partners.has(other)))
    pair(one, other);
  for (const scene of after) {
    const same = byId.get(scene.id);
    if (same) pair(same, scene);
  }
  return partners;
}

interface Ranked {
  readonly one: SceneFacts;
  readonly other: SceneFacts;
  readonly score: number;
  readonly distance: number;
  readonly sum: number;
}

function rankPairs(
  before: readonly SceneFacts[],
  after: readonly SceneFacts[],
  isFree: (one: SceneFacts, other: SceneFacts) => boolean,
): Ranked[] {
  const words = new Map([...before, ...after].map((scene) => [scene, wordsOf(scene)]));
  const ranked = before.flatMap((one, i) =>
    after.flatMap((other, j): Ranked[] => {
      if (!isFree(one, other)) return [];
      const score = scoreOf(one, other, words);
      return score === null ? [] : [{ one, other, score, distance: Math.abs(i - j), sum: i + j }];
    }),
  );
  return ranked.sort((a, b) => b.score - a.score || a.distance - b.distance || a.sum - b.sum);
}

/** Points of likeness that two scenes need, and of these what must lie in what happens, unless the id is the same. */
const enough = 4;
const enoughContent = 1;

function scoreOf(one: SceneFacts, other: SceneFacts, words: ReadonlyMap<SceneFacts, SceneWords>): number | null {
  const [mine, theirs] = [words.get(one) as SceneWords, words.get(other) as SceneWords];
  const content = likenessOfContent(mine, theirs);
  const people = likenessOfPeople(mine, theirs);
  const heading =
    (one.place === other.place ? 2 : 0) +
    (one.setting === other.setting ? 0.5 : 0) +
    (one.light === other.light ? 0.5 : 0);
  const isSame = one.id === other.id;
  const score = content + people + heading + (isSame ? 2 : 0);
  return score >= enough && (isSame || content >= enoughContent) ? score : null;
}
