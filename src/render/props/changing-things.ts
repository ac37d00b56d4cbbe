import type { ElementEntry } from '../../breakdown/types.js';
import type { Need } from '../../plan/need-types.js';
import { shortWords } from '../../plan/short-copies.js';
import { type Block, blank, bold, type Inline, type TableRow } from '../layout/kit.js';
import { amountWords } from '../plan/plan-words.js';
import type { RenderInput } from '../types.js';
import { labelOf, listScenes, type SceneIndex } from '../words/scene-list-words.js';
import { handledCategories } from './prop-categories.js';

const columns = [
  { head: 'What', share: 2 },
  { head: 'How it looks, and from when', share: 4 },
  { head: 'How many to have', width: 92 },
];

type ChangingInput = Pick<RenderInput, 'breakdown' | 'production'>;

/** Things that look different at different times, each with its chain of states. */
export function changingBlocks({ breakdown, production }: ChangingInput, index: SceneIndex): Block[] {
  const needs = new Map(production?.plan.lines.map(({ id, need }) => [id, need]));
  const things = breakdown.elements.filter((one) => handledCategories.has(one.category) && changes(one));
  if (things.length === 0) return [];
  return [
    { kind: 'heading', level: 2, text: 'Things that change or are used up', bookmark: 'Things that change' },
    { kind: 'paragraph', text: explanation, keepWithNext: true },
    { kind: 'table', columns, rows: things.map((thing) => chainRow(thing, needs.get(thing.id) ?? null, index)) },
  ];
}

const explanation =
  'A change on camera that cannot be undone uses up one piece in every take. A change between scenes uses none, but it needs one piece for each look, unless the earlier scene is shot first.';

function changes(thing: ElementEntry): boolean {
  return thing.states.length > 0 || thing.category === 'food';
}

function chainRow(thing: ElementEntry, need: Need | null, index: SceneIndex): TableRow {
  const eaten =
    (need?.usedUp ?? thing.category === 'food') && thing.states.length === 0
      ? [`used up in each take, sc ${listScenes(thing.scenes, index)}`]
      : [];
  const states = thing.states.map((state) => stateLine(state, index));
  return { cells: [bold(thing.name), { stack: [...states, ...eaten] }, howMany(need)] };
}

/** What the book decides, else what the plan advises; a blank without a plan. */
function howMany(need: Need | null): Inline {
  return need === null
    ? blank(80)
    : bold(shortWords({ need, element: null }) ?? amountWords(need.decided ?? need.recommended, need.unit));
}

function stateLine({ state, scene, onCamera }: ElementEntry['states'][number], index: SceneIndex): Inline {
  const label = labelOf(scene, index);
  return onCamera ? [bold(state), `: changes on camera in sc ${label}`] : [bold(state), `: from sc ${label}`];
}
