import { foldName } from '../../base/slug.js';
import { singular } from '../../breakdown/same-thing.js';
import type { SceneCast, SceneExtra } from '../../breakdown/types.js';
import { collectiveNouns } from '../../trade/cue-words.js';

/** An extra's name with its count: `3 hikers`, `crowd of 20`; the bare name when no one tells how many. */
export function extraWords({ name, count }: SceneExtra): string {
  if (count === null) return name;
  const isGroup = count > 1 && collectiveNouns.has(foldName(name).split(' ').at(-1) ?? '');
  return isGroup ? `${name} of ${count}` : `${count} ${name}`;
}

/**
 * `, one of them HIKER` after a group of which somebody seen in the scene is one by name, so that no one counts that
 * person twice; empty when there is none.
 */
export function speakerAmong(extra: SceneExtra, cast: readonly SceneCast[]): string {
  const words = foldName(extra.name).split(' ');
  const last = words.at(-1) ?? '';
  const one = [...words.slice(0, -1), singular(last)].join(' ');
  if (singular(last) === last || extra.count === 1) return '';
  const names = cast.filter((person) => person.presence === 'seen' && bareName(person.name) === one);
  if (names.length === 0) return '';
  const list = names.map((person) => person.name).join(' and ');
  return names.length === 1 ? `, one of them ${list}` : `, among them ${list}`;
}

/** A part's name without the number that tells it from others: `HIKER #2` is a hiker. */
function bareName(name: string): string {
  return foldName(name).replace(/ ?#?\d+$/, '');
}
