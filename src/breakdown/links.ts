import { categoryOf } from '../trade/categories.js';
import { pushTo } from './grouping.js';
import type { Link, SceneElement, Wears } from './types.js';

/** What the pass of links is told of a scene. */
export interface LinkInput {
  readonly id: string;
  /** `D`, or the label of a flashback: links never leave the line of a story. */
  readonly series: string;
  readonly elements: readonly SceneElement[];
  readonly wears: readonly Wears[];
}

export interface Links {
  readonly comesFrom: readonly Link[];
  readonly goesTo: readonly Link[];
}

interface Last {
  readonly index: number;
  readonly what: string;
}

/**
 * Ties each scene to the nearest earlier and later ones of its line that must match it: a thing that has a state or is carried, a change
 * of costume that goes on. `order` lists scene indexes as the story runs.
 */
export function linkScenes(inputs: readonly LinkInput[], order: readonly number[]): Links[] {
  const last = new Map<string, Last>();
  const from: Map<number, string[]>[] = inputs.map(() => new Map());
  const to: Map<number, string[]>[] = inputs.map(() => new Map());
  for (const index of order) {
    const input = inputs[index] as LinkInput;
    for (const { key, comes, leaves } of tiesOf(input)) {
      const full = `${input.series}\u0000${key}`;
      const before = last.get(full);
      if (before && comes !== null) {
        pushTo(from[index] as Map<number, string[]>, before.index, before.what);
        pushTo(to[before.index] as Map<number, string[]>, index, before.what);
      }
      if (leaves === null) last.delete(full);
      else last.set(full, { index, what: leaves });
    }
  }
  const list = (map: Map<number, string[]> | undefined): Link[] =>
    [...(map ?? [])]
      .sort(([a], [b]) => a - b)
      .map(([index, what]) => ({ scene: (inputs[index] as LinkInput).id, what }));
  return inputs.map((_, index) => ({ comesFrom: list(from[index]), goesTo: list(to[index]) }));
}

interface Tie {
  readonly key: string;
  /** What must match on the way in, or null when nothing must. */
  readonly comes: string | null;
  readonly leaves: string | null;
}

function* tiesOf({ elements, wears }: LinkInput): Generator<Tie> {
  for (const { person, change, changeOut } of wears) {
    yield {
      key: `wears ${person} ${change}`,
      comes: person,
      leaves: change === changeOut ? `${person} change ${change}` : null,
    };
    if (change !== changeOut) {
      yield { key: `wears ${person} ${changeOut}`, comes: null, leaves: `${person} change ${changeOut}` };
    }
  }
  for (const { id, name, category, carried, worn, stateIn, stateOut } of elements) {
    // What is worn goes with its change, what stands in a place with the place, unless it has a state.
    const told = worn || categoryOf(category).group === 'the place';
    if (told && stateIn === null && stateOut === null) continue;
    const comes = stateIn !== null || carried ? name : null;
    yield { key: `thing ${id}`, comes, leaves: stateOut === null ? name : `${name} (${stateOut})` };
  }
}
