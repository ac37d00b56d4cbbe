import { foldName } from '../base/slug.js';
import { groupInCue, singularName } from '../script/people.js';
import type { Cue, VoiceKind } from '../script/types.js';
import { crowdCues, deviceCues, togetherCues } from '../trade/cue-words.js';

/** A name that a cue stands for, and how that voice comes. */
export interface CueName {
  readonly name: string;
  readonly voice: VoiceKind;
}

/** What a cue that names no single person stands for. */
export type CueKind = 'person' | 'together' | 'crowd';

/** Tells a person's cue from one of several mouths. */
export function kindOfCue(name: string): CueKind {
  const folded = foldName(name).replace(/^the /, '');
  if (togetherCues.has(folded) || togetherCues.has(`the ${folded}`)) return 'together';
  if (/^(?:both|all) \S/.test(folded) && groupInCue(name) !== null) return 'together';
  return crowdCues.has(folded) ? 'crowd' : 'person';
}

/** At most so many people of a kind are told apart by numbers. */
const mostNumbers = 20;

/** COP 1 and COP 2 for `BOTH COPS` and `COPS`: those of the group whom the script numbers. */
function numberedOf(name: string, isKnown: (name: string) => boolean): string[] {
  const group = groupInCue(name);
  if (group === null || isKnown(name)) return [];
  const one = singularName(group);
  const names = Array.from({ length: mostNumbers }, (_, index) => `${one} ${index + 1}`);
  return names.filter(isKnown);
}

/** `Two cops` beside COP 1 and COP 2 are these two: the people whom a group in the action stands for; none when the number differs. */
export function peopleOfGroup(name: string, count: number | null, isKnown: (name: string) => boolean): string[] {
  const numbered = numberedOf(name, isKnown);
  return numbered.length > 1 && (count ?? numbered.length) === numbered.length ? numbered : [];
}

const voiceOnTheLine = /\bvoice (?:on|over|from) (?:the )?(?:phone|telephone|line|intercom|radio)$/;

/** The names that a cue stands for: one, two that speak at once, the owner of a voice; none when all speak together. */
export function namesOfCue(cue: Cue, isKnown: (name: string) => boolean): CueName[] {
  const { name, voice } = cue;
  const numbered = numberedOf(name, isKnown);
  if (numbered.length > 1) return numbered.map((one) => ({ name: one, voice }));
  if (kindOfCue(name) !== 'person') return [];
  const owner = /^(.+)['\u2019]s voice$/i.exec(name)?.[1];
  if (owner && isKnown(owner)) return [{ name: owner, voice: voice === 'on-screen' ? 'off-screen' : voice }];
  const folded = foldName(name);
  if (voice === 'on-screen' && deviceCues.has(folded)) return [{ name, voice: 'voice-over' }];
  if (voice === 'on-screen' && voiceOnTheLine.test(folded)) return [{ name, voice: 'phone' }];
  if (voice === 'on-screen' && /\bvoice$/.test(folded)) return [{ name, voice: 'off-screen' }];
  if (isKnown(name)) return [{ name, voice }];
  const several = name.split(/\s*(?:&|\/|,|\+|\band\b)\s*/i).filter((part) => part !== '');
  return several.length > 1 && several.every(isKnown)
    ? several.map((part) => ({ name: part, voice }))
    : [{ name, voice }];
}
