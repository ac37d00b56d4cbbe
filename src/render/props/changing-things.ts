import type { Breakdown, ElementEntry } from '../../breakdown/types.js';
import { isUsedUpByWords } from '../../plan/used-up-by-words.js';
import { type Block, blank, bold, type Inline, type TableRow } from '../layout/kit.js';
import { labelOf, listScenes, type SceneIndex } from '../words/scene-list-words.js';
import { handledCategories } from './prop-categories.js';

const columns = [
  { head: 'What', share: 2 },
  { head: 'How it looks, and from when', share: 4 },
  { head: 'How many to have', width: 92 },
];

/** Things that look different at different times, each with its chain of states and a blank for how many there must be. */
export function changingBlocks({ elements }: Breakdown, index: SceneIndex): Block[] {
  const things = elements.filter((one) => handledCategories.has(one.category) && changes(one));
  if (things.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Things that change or are used up', bookmark: 'Things that change' },
    { kind: 'paragraph', text: explanation, keepWithNext: true },
    { kind: 'table', columns, rows: things.map((thing) => chainRow(thing, index)), tight: true },
  ];
}

const explanation =
  'A change on camera that cannot be undone uses up one piece in every take. A change between scenes uses none, but it needs one piece for each look, unless the earlier scene is shot first.';

function changes(thing: ElementEntry): boolean {
  return thing.states.length > 0 || isUsedUpByWords(thing);
}

function chainRow(thing: ElementEntry, index: SceneIndex): TableRow {
  const eaten =
    isUsedUpByWords(thing) && thing.states.length === 0
      ? [`used up in each take, sc ${listScenes(thing.scenes, index)}`]
      : [];
  const states = thing.states.map((state) => stateLine(state, index));
  return { cells: [bold(thing.name), { stack: [...states, ...eaten] }, blank(80)] };
}

function stateLine({ state, scene, onCamera }: ElementEntry['states'][number], index: SceneIndex): Inline {
  const label = labelOf(scene, index);
  return onCamera ? [bold(state), `: changes on camera in sc ${label}`] : [bold(state), `: from sc ${label}`];
}
