import type { HazardFind } from '../types.js';

/** One reason to raise a hazard; `rank` orders reasons, the lowest first. */
export interface Reason extends HazardFind {
  readonly rank: number;
}
