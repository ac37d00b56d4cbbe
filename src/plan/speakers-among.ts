import { foldName } from '../base/slug.js';
import { singular } from '../breakdown/same-thing.js';
import type { SceneCast, SceneExtra } from '../breakdown/types.js';

/** Everybody seen in a scene who by name is one of a group in its background: HIKER, or HIKER #2, of three hikers. */
export function listSpeakersAmong(extra: SceneExtra, cast: readonly SceneCast[]): SceneCast[] {
  const words = foldName(extra.name).split(' ');
  const last = words.at(-1) ?? '';
  const one = [...words.slice(0, -1), singular(last)].join(' ');
  if (singular(last) === last || extra.count === 1) return [];
  return cast.filter((person) => person.presence === 'seen' && bareName(person.name) === one);
}

/** A part's name without the number that tells it from others: `HIKER #2` is a hiker. */
function bareName(name: string): string {
  return foldName(name).replace(/ ?#?\d+$/, '');
}
