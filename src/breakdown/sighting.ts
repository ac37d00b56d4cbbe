import type { Range } from '../base/text-range.js';
import type { Strength } from '../find/types.js';
import type { Identity } from './element-register.js';
import type { Known } from './types.js';

/** One place of a scene that speaks of a thing: a mark, a note, a find. */
export interface Sighting {
  /** May be given anew while names are settled. */
  identity: Identity;
  readonly known: Known;
  readonly words: string;
  readonly at: Range;
  readonly by: string | null;
  /** True and false are said; null leaves it open. */
  readonly worn: boolean | null;
  readonly count: number | null;
  readonly description: string | null;
  /** A state that the words of a find give. */
  readonly state: string | null;
  /** True when that state begins on camera at these words: she tears it. */
  readonly stateBegins: boolean;
  readonly confidence: number | null;
  readonly strength: Strength | null;
  readonly rules: readonly string[];
  /** True when the picture shows it here: in action, not in speech and not in a note. */
  readonly seen: boolean;
}

const bare = {
  by: null,
  worn: null,
  count: null,
  description: null,
  state: null,
  stateBegins: false,
  confidence: null,
  strength: null,
  rules: [],
} as const;

/** A sighting of which little is said. */
export function sight(
  identity: Identity,
  known: Known,
  words: string,
  at: Range,
  more: Partial<Omit<Sighting, 'identity' | 'known' | 'words' | 'at'>> = {},
): Sighting {
  return { identity, known, words, at, seen: false, ...bare, ...more };
}
