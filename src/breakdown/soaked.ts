import type { Range } from '../base/text-range.js';
import type { ActionText } from './action-text.js';
import type { SceneGround } from './ground.js';
import type { NameMatcher } from './name-matcher.js';
import { readSoaking, type SoakingRead } from './read-soaking.js';
import { splitSentences } from './synopsis.js';

/** Somebody gets wet or dirty before the camera, or comes in so. */
export interface Soaking {
  readonly person: string;
  readonly kind: 'wet' | 'dirty';
  /** What the clothes are in, when an answer does not say it better. */
  readonly state: string;
  /** True when it happens before the camera. */
  readonly begins: boolean;
  readonly words: string;
  readonly at: Range;
}

const byWater =
  /\b(?:water|river|sea|lake|canal|pond|harbour|harbor|pool|stream|dock|boat|dinghy|canoe|punt|raft|oars?|quay|jetty|pier)\b/i;
/** Between a name and what the person is: an age, other such words, or a verb of being or coming. */
const tellsOfPerson =
  /^(?:\s*\([^)]*\))?(?:,(?:\s*[\w-]+){1,3})?(?:,|\s+(?:is|are|gets|comes? (?:in|up|out|back)|stands|returns|enters|arrives|sits|lies),?)?\s*(?:now|still|all|half|quite)?\s*$/i;

/** Finds who gets wet or dirty, or is so, by the action: each person and kind once. */
export function findSoakings({ actions, scene, finds }: SceneGround, matcher: NameMatcher): Soaking[] {
  const nearWater = byWater.test(scene.heading.text) || actions.some(({ text }) => byWater.test(text));
  const found = new Map<string, Soaking>();
  for (const action of actions) {
    for (const { start, text } of splitSentences(action.text)) {
      const read = readSoaking(text, nearWater);
      if (!read) continue;
      const at = action.place(start + read.index, start + read.index + read.words.length);
      const whole = action.place(start, start + text.length);
      const named =
        read.whom === 'after' ? namedAfter(action, start, read, matcher) : namedBefore(action, start, read, matcher);
      const person =
        named ??
        (read.whom === 'before'
          ? meantByPronoun(action, start, text, matcher, holderIn(finds.elements, whole, text))
          : null);
      if (person === null || found.has(`${person} ${read.kind}`)) continue;
      const { kind, state, begins, words } = read;
      found.set(`${person} ${kind}`, { person, kind, state, begins, words, at });
    }
  }
  return [...found.values()];
}

/** The name nearest before the words; of dirt only a name of which the words tell directly. */
function namedBefore(action: ActionText, start: number, read: SoakingRead, matcher: NameMatcher): string | null {
  const names = matcher(action).filter((match) => match.start >= start && match.start < start + read.index);
  const last = names.filter(({ possessive }) => !possessive).at(-1);
  if (!last || names.at(-1) !== last) return null;
  const between = action.text.slice(last.end, start + read.index);
  return read.kind === 'wet' || read.begins || tellsOfPerson.test(between) ? last.person.name : null;
}

/** "He" or "she" at the start of a sentence is whom the finder reads, else the one person named before in the paragraph. */
function meantByPronoun(
  action: ActionText,
  start: number,
  text: string,
  matcher: NameMatcher,
  holder: string | null,
): string | null {
  if (holder !== null || !/^(?:he|she)\b/i.test(text.trim())) return holder;
  const earlier = new Set(matcher(action).flatMap((match) => (match.start < start ? [match.person.name] : [])));
  return earlier.size === 1 ? ([...earlier][0] as string) : null;
}

/** The name right behind the words, a word or two between: "a bucket of water over Bill". */
function namedAfter(action: ActionText, start: number, read: SoakingRead, matcher: NameMatcher): string | null {
  const end = start + read.index + read.words.length;
  const next = matcher(action).find((match) => match.start >= end);
  return next && /^\s*(?:the )?$/.test(action.text.slice(end, next.start)) ? next.person.name : null;
}

/** Whom the finder reads as the one who acts in a sentence that begins with a pronoun. */
function holderIn(elements: SceneGround['finds']['elements'], sentence: Range, text: string): string | null {
  if (!/^(?:he|she)\b/i.test(text.trim())) return null;
  const inside = elements.filter(
    ({ at, known }) =>
      known === 'found' && at.start.offset >= sentence.start.offset && at.end.offset <= sentence.end.offset,
  );
  return inside.find(({ by }) => by !== null)?.by ?? null;
}
