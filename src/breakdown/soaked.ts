import type { Range } from '../base/text-range.js';
import type { ActionText } from './action-text.js';
import type { SceneGround } from './ground.js';
import type { NameMatcher } from './name-matcher.js';
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

const waters = 'water|river|sea|lake|canal|pond|harbour|harbor|pool|stream|dock';
const intoWater = new RegExp(
  `\\b(?:falls|jumps|dives|slips|tumbles|plunges|topples|drops|goes|is (?:pushed|thrown|dragged|pulled))\\b[^;:]*\\b(?:in|into|under)\\b(?: (?:the|a|an))?(?: [\\w-]+)? (?:${waters})\\b|\\bgoes under\\b`,
  'i',
);
/** Words that mean water only where there is some. */
const inWater =
  /\b(?:(?:overbalances|slips|trips|stumbles|topples|tips|lunges|loses)\b[^.;:]* goes in|falls in|jumps in|dives in|goes over(?:board| the side)|falls overboard|comes up (?:spluttering|gasping|coughing|for air))\b(?! (?:the|a|an|his|her|with) (?!oar))/i;
const byWater = new RegExp(`\\b(?:${waters}|boat|dinghy|canoe|punt|raft|oars?|quay|jetty|pier)\\b`, 'i');
const wetThrough = /\b(?:soaked|drenched|sodden|wet through|dripping wet|soaking wet|dripping(?=\s*(?:[,.;]|and\b)))/i;
const dirt = 'mud|plaster|dust|flour|paint|soot|oil|blood|slime|coal dust|ash';
const dirty = new RegExp(
  `\\b(?:muddy|filthy|bloodied|blood-?stained|mud-spattered|sooty|(?:covered|caked|spattered|smeared|plastered) (?:in|with) (?:${dirt}))(?: to the [a-z]+)?`,
  'i',
);
/** Between a name and what the person is: an age, other such words, or a verb of being or coming. */
const tellsOfPerson =
  /^(?:\s*\([^)]*\))?(?:,(?:\s*[\w-]+){1,3})?(?:,|\s+(?:is|are|gets|comes? (?:in|up|out|back)|stands|returns|enters|arrives|sits|lies))?\s*(?:now|still|all|half|quite)?\s*$/i;

/** Finds who gets wet or dirty, or is so, by the action: each person and kind once. */
export function findSoakings({ actions, scene, finds }: SceneGround, matcher: NameMatcher): Soaking[] {
  const nearWater = byWater.test(scene.heading.text) || actions.some(({ text }) => byWater.test(text));
  const found = new Map<string, Soaking>();
  for (const action of actions) {
    for (const { start, text } of splitSentences(action.text)) {
      const read = readSentence(text, nearWater);
      if (!read) continue;
      const at = action.place(start + read.index, start + read.index + read.words.length);
      const whole = action.place(start, start + text.length);
      const person = namedBefore(action, start, read, matcher) ?? holderIn(finds.elements, whole, text);
      if (person === null || found.has(`${person} ${read.kind}`)) continue;
      const { kind, state, begins, words } = read;
      found.set(`${person} ${kind}`, { person, kind, state, begins, words, at });
    }
  }
  return [...found.values()];
}

type Read = Pick<Soaking, 'kind' | 'state' | 'begins' | 'words'> & { readonly index: number };

function readSentence(text: string, nearWater: boolean): Read | null {
  const falls = intoWater.exec(text) ?? (nearWater ? inWater.exec(text) : null);
  if (falls) return { kind: 'wet', state: 'wet', begins: true, words: falls[0], index: falls.index };
  const is = wetThrough.exec(text) ?? dirty.exec(text);
  if (!is || isOfThing(text.slice(is.index + is[0].length))) return null;
  const kind = wetThrough.test(is[0]) || /^dripping/i.test(is[0]) ? 'wet' : 'dirty';
  const begins = /\bgets\s*$/i.test(text.slice(0, is.index));
  return { kind, state: is[0].toLowerCase(), begins, words: is[0], index: is.index };
}

/** True when the word tells of a thing that follows: `a muddy path`. */
function isOfThing(after: string): boolean {
  return /^ (?!(?:and|in|to|by|from|but|as|now|with|through|on|at|under|against|before|after|like|over|behind|beside)\b)[a-z]/i.test(
    after,
  );
}

/** The name nearest before the words; of dirt only a name of which the words tell directly. */
function namedBefore(action: ActionText, start: number, read: Read, matcher: NameMatcher): string | null {
  const names = matcher(action).filter((match) => match.start >= start && match.start < start + read.index);
  const last = names.filter(({ possessive }) => !possessive).at(-1);
  if (!last || names.at(-1) !== last) return null;
  const between = action.text.slice(last.end, start + read.index);
  return read.kind === 'wet' || tellsOfPerson.test(between) ? last.person.name : null;
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
