import { hazards } from './hazards.js';
import { cuesOfElements } from './hazards-cues-elements.js';
import { cuesOfFalls } from './hazards-cues-falls.js';
import { cuesOfFire } from './hazards-cues-fire.js';
import { cuesOfForce } from './hazards-cues-force.js';
import { cuesOfHeight } from './hazards-cues-height.js';
import { cuesOfLiving } from './hazards-cues-living.js';
import { ownHazards } from './hazards-further.js';
import type { Cue } from './implications/cue.js';

/** The cues of one hazard. The words are our own choice. */
export interface HazardCues {
  readonly id: string;
  readonly cues: readonly Cue[];
}

const cues: Readonly<Record<string, readonly Cue[]>> = {
  ...cuesOfForce,
  ...cuesOfFalls,
  ...cuesOfHeight,
  ...cuesOfFire,
  ...cuesOfElements,
  ...cuesOfLiving,
};

/** What raises each hazard, in the order of the table. */
export const hazardCues: readonly HazardCues[] = [...hazards, ...ownHazards].map(({ id }) => ({
  id,
  cues: cues[id] ?? [],
}));
