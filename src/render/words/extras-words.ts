import { foldName } from '../../base/slug.js';
import { groupName } from '../../breakdown/extras.js';
import type { SceneCast, SceneExtra } from '../../breakdown/types.js';
import { listSpeakersAmong } from '../../plan/speakers-among.js';
import { collectiveNouns } from '../../trade/cue-words.js';

/** An extra's name with its count: `3 hikers`, `crowd of 20`; the bare name when no one tells how many. */
export function extraWords(extra: SceneExtra): string {
  const { count } = extra;
  const name = groupName(extra);
  if (count === null) return name;
  const isGroup = count > 1 && collectiveNouns.has(foldName(name).split(' ').at(-1) ?? '');
  return isGroup ? `${name} of ${count}` : `${count} ${name}`;
}

/**
 * `, one of them HIKER` after a group of which somebody seen in the scene is one by name, so that no one counts that
 * person twice; empty when there is none.
 */
export function speakerAmong(extra: SceneExtra, cast: readonly SceneCast[]): string {
  const names = listSpeakersAmong(extra, cast);
  if (names.length === 0) return '';
  const list = names.map((person) => person.name).join(' and ');
  return names.length === 1 ? `, one of them ${list}` : `, among them ${list}`;
}
