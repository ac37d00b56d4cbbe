import { type HazardCues, hazardCues } from '../../trade/hazards-cues.js';
import type { Implication } from '../../trade/implications/implication.js';
import { implications } from '../../trade/implications/implications.js';
import type { Sentence } from '../reading.js';
import { indexCues, type SettingCue } from './cue-index.js';
import { type CueMatch, matchCues } from './match.js';

type Owner = Implication | HazardCues;

/** The cues of both tables that stand in a sentence. */
interface Cued {
  readonly implications: readonly CueMatch<Implication>[];
  readonly hazards: readonly CueMatch<HazardCues>[];
}

const nothing: Cued = { implications: [], hazards: [] };
const known = new WeakMap<Sentence, Cued>();

/** Both tables in one index, made when first asked for: a sentence is gone through once. */
function makeIndex() {
  const index = indexCues<Owner>([...implications, ...hazardCues]);
  const { settings } = index;
  return {
    index,
    implications: settings.filter((one): one is SettingCue<Implication> => !isHazard(one.owner)),
    hazards: settings.filter((one): one is SettingCue<HazardCues> => isHazard(one.owner)),
  };
}

let made: ReturnType<typeof makeIndex> | null = null;

function tables() {
  made ??= makeIndex();
  return made;
}

const isHazard = (owner: Owner): owner is HazardCues => !('elements' in owner);

/** The cues that stand in a sentence, from left to right; worked out once. */
export function cuesIn(sentence: Sentence): Cued {
  const before = known.get(sentence);
  if (before !== undefined) return before;
  const matches = matchCues(sentence, tables().index);
  const cued = matches.length === 0 ? nothing : divideByTable(matches);
  known.set(sentence, cued);
  return cued;
}

function divideByTable(matches: readonly CueMatch<Owner>[]): Cued {
  const cued = { implications: [] as CueMatch<Implication>[], hazards: [] as CueMatch<HazardCues>[] };
  for (const match of matches) {
    if (isHazard(match.owner)) cued.hazards.push(match as CueMatch<HazardCues>);
    else cued.implications.push(match as CueMatch<Implication>);
  }
  return cued;
}

/** The cues of whole scenes that imply something. */
export const settingsThatImply = (): readonly SettingCue<Implication>[] => tables().implications;

/** The cues of whole scenes that raise a hazard. */
export const settingsOfHazards = (): readonly SettingCue<HazardCues>[] => tables().hazards;
