import { type HazardCues, hazardCues } from '../../trade/hazards-cues.js';
import type { Implication } from '../../trade/implications/implication.js';
import { implications } from '../../trade/implications/implications.js';
import type { Sentence } from '../reading.js';
import { indexCues, type SettingCue } from './cue-index.js';
import { type CueMatch, matchCues } from './match.js';

type Owner = Implication | HazardCues;

/** The cues of both tables that stand in sentences, from left to right. */
interface Cued {
  readonly implications: readonly CueMatch<Implication>[];
  readonly hazards: readonly CueMatch<HazardCues>[];
}

const known = new WeakMap<readonly Sentence[], Cued>();

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

/** The cues that stand in the sentences of a script; worked out once for both tables. */
export function cuesIn(sentences: readonly Sentence[]): Cued {
  const before = known.get(sentences);
  if (before !== undefined) return before;
  const { index } = tables();
  const cued = { implications: [] as CueMatch<Implication>[], hazards: [] as CueMatch<HazardCues>[] };
  for (const sentence of sentences) {
    for (const match of matchCues(sentence, index)) {
      if (isHazard(match.owner)) cued.hazards.push(match as CueMatch<HazardCues>);
      else cued.implications.push(match as CueMatch<Implication>);
    }
  }
  known.set(sentences, cued);
  return cued;
}

/** The cues of whole scenes that imply something. */
export const settingsThatImply = (): readonly SettingCue<Implication>[] => tables().implications;

/** The cues of whole scenes that raise a hazard. */
export const settingsOfHazards = (): readonly SettingCue<HazardCues>[] => tables().hazards;
