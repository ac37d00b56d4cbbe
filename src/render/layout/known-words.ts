import type { SceneLabels } from '../../breakdown/scene-label.js';
import type { Known } from '../../breakdown/types.js';
import type { Strength } from '../../find/types.js';

/** What the foot of every page says about the words below. */
export const knownKey =
  'No word after a name: the writer marked it. (found): read in the text. (implied): not in the text, ask. ?: open.';

/** How a thing is known. */
export interface KnownHow {
  readonly known: Known;
  readonly strength?: Strength | null;
  readonly carried?: boolean;
  /** Id of the scene it is carried from. */
  readonly from?: string | null;
}

/**
 * The words that follow a thing's name: none for what the writer marked or noted, `(found)`, `(implied, likely)`,
 * `(carried from sc 4)`. `labels` gives a scene's label by its id.
 */
export function knownWords(how: KnownHow, labels: SceneLabels): string {
  const words = [...knownPart(how), ...carriedPart(how, labels)];
  return words.length > 0 ? `(${words.join(', ')})` : '';
}

function knownPart(how: KnownHow): string[] {
  if (how.known === 'found') return ['found'];
  if (how.known === 'implied') return [how.strength ? `implied, ${how.strength}` : 'implied'];
  return [];
}

function carriedPart(how: KnownHow, labels: SceneLabels): string[] {
  if (!how.carried) return [];
  const label = how.from ? labels.get(how.from) : undefined;
  return [label ? `carried from sc ${label}` : 'carried'];
}

/** A state going in and coming out, with those passed through between. */
export interface StatesTold {
  readonly stateIn: string | null;
  readonly stateOut: string | null;
  readonly statesBetween?: readonly string[];
}

/** True when a state changes before the camera: another at the end, or others between. */
export function changesState({ stateIn, stateOut, statesBetween = [] }: StatesTold): boolean {
  return statesBetween.length > 0 || (stateOut !== null && stateOut !== stateIn);
}

/** States in words and arrows: `dry → soaked`, `clean → wet → torn`, `lit`, `→ broken`; empty when none is known. */
export function stateWords({ stateIn, stateOut, statesBetween = [] }: StatesTold): string {
  const all = [stateIn, ...statesBetween, stateOut].filter((state) => state !== null);
  const told = all.filter((state, i) => state !== all[i - 1]);
  return stateIn === null && told.length > 0 ? `→ ${told.join(' → ')}` : told.join(' → ');
}
