import type { Strength } from '../find/types.js';
import { categoryOfIdentity, type Identity, strongerOf } from './element-register.js';
import { obtain } from './grouping.js';
import type { StatesBetween } from './states-between.js';
import type { BreakdownScene, ElementEntry, SceneElement } from './types.js';

interface Seen {
  readonly scene: BreakdownScene;
  readonly element: SceneElement;
}

/** The index of things over the script: the largest count in any one scene, never a sum, and the states in story order. */
export function listElements(
  scenes: readonly BreakdownScene[],
  order: readonly number[],
  ids: ReadonlyMap<Identity, string>,
  between: StatesBetween,
): ElementEntry[] {
  const identities = new Map([...ids].map(([identity, id]) => [id, identity] as const));
  const seen = new Map<string, Seen[]>();
  for (const scene of scenes) {
    for (const element of scene.elements) obtain(seen, element.id, () => []).push({ scene, element });
  }
  const storyOrder = new Map(order.map((index, position) => [scenes[index]?.id ?? '', position] as const));
  return [...seen].map(([id, all]) => writeEntry(id, identities.get(id) as Identity, all, storyOrder, between));
}

function writeEntry(
  id: string,
  identity: Identity,
  all: readonly Seen[],
  storyOrder: ReadonlyMap<string, number>,
  between: StatesBetween,
): ElementEntry {
  const elements = all.map(({ element }) => element);
  const counts = elements.map(({ count }) => count).filter((count) => count !== null);
  const known = elements.map((one) => one.known).reduce(strongerOf);
  return {
    id,
    name: identity.name,
    names: identity.names,
    category: categoryOfIdentity(identity),
    known,
    description: elements.find(({ description }) => description !== null)?.description ?? null,
    count: counts.length > 0 ? Math.max(...counts) : null,
    scenes: all.map(({ scene }) => scene.id),
    by: [...new Set(elements.map(({ by }) => by).filter((by) => by !== null))],
    states: listStates(all, storyOrder, between),
    strength: known === 'implied' ? strongest(elements) : null,
  };
}

function listStates(
  all: readonly Seen[],
  storyOrder: ReadonlyMap<string, number>,
  between: StatesBetween,
): ElementEntry['states'] {
  const ordered = [...all].sort((a, b) => (storyOrder.get(a.scene.id) ?? 0) - (storyOrder.get(b.scene.id) ?? 0));
  const states: { state: string; scene: string; onCamera: boolean }[] = [];
  const current = new Map<string, string | null>();
  for (const { scene, element } of ordered) {
    const line = scene.storyDay.series === 'D' ? 'D' : scene.storyDay.label;
    const { stateIn, stateOut } = element;
    if (stateIn !== null && stateIn !== (current.get(line) ?? null)) {
      states.push({ state: stateIn, scene: scene.id, onCamera: false });
    }
    let last = stateIn;
    for (const state of [...between(scene.id, element.id), stateOut]) {
      if (state !== null && state !== last) states.push({ state, scene: scene.id, onCamera: true });
      last = state;
    }
    current.set(line, stateOut);
  }
  return states;
}

const strengths: readonly Strength[] = ['certain', 'likely', 'ask'];

function strongest(elements: readonly SceneElement[]): Strength | null {
  return strengths.find((strength) => elements.some((one) => one.strength === strength)) ?? null;
}
