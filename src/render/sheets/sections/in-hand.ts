import type { SceneElement } from '../../../breakdown/types.js';
import type { CategoryName } from '../../../trade/categories.js';
import type { Block, TableColumn, TableRow } from '../../layout/blocks.js';
import { blank, type Inline, type InlineRun, inlineRuns, tick } from '../../layout/inline.js';
import { stateWords } from '../../layout/known-words.js';
import { thingsInHand } from '../../words/in-hand.js';
import type { Section, SheetContext } from '../sheet-context.js';
import { elementName, elementWords, sortByKind } from './element-words.js';

/**
 * What is handled, who has it, in which state it comes and goes. Folded once, rows stand close, and things without a
 * word besides their name follow one another; folded twice, all in running text with their boxes.
 */
export const writeInHand: Section = (scene, context, fold) => {
  const elements = sortByKind(thingsInHand(scene));
  if (elements.length === 0) return [];
  const isChanged = ({ name }: SceneElement) => context.changes?.subjects.get(scene.id)?.has(name) ?? false;
  return [{ kind: 'section', label: 'In hand', blocks: writeElements(elements, context, fold, isChanged) }];
};

function writeElements(
  elements: readonly SceneElement[],
  context: SheetContext,
  fold: number,
  isChanged: (element: SceneElement) => boolean,
): Block[] {
  if (fold > 1)
    return [
      {
        kind: 'paragraph',
        size: 10,
        text: elements.flatMap((one) => [tick, `\u00a0${elementWords(one, context)}  `]),
      },
    ];
  const bare = fold === 1 ? elements.filter((element) => isBare(element) && !context.notes.has(element.id)) : [];
  const full = elements.filter((element) => !bare.includes(element));
  return [...fullTable(full, context, fold > 0, isChanged), ...runIn(bare, context)];
}

/** True when there is nothing to say of a thing but its name and who has it. */
function isBare(element: SceneElement): boolean {
  const { stateIn, stateOut, description } = element;
  const short = element.category === 'vehicles' || !kinds[element.category];
  return short && stateIn === null && stateOut === null && description === null;
}

function fullTable(
  elements: readonly SceneElement[],
  context: SheetContext,
  tight: boolean,
  isChanged: (element: SceneElement) => boolean,
): Block[] {
  if (elements.length === 0) return [];
  const states = elements.some((element) => element.stateIn !== null || element.stateOut !== null);
  const columns = [
    { head: '', fit: true },
    { head: '', share: 3.2 },
    { head: '', fit: true },
    ...(states ? [stateColumn(elements)] : []),
  ];
  const rows = elements.map((element) => ({ ...elementRow(element, context, states), changed: isChanged(element) }));
  return [{ kind: 'table', headed: false, tight, size: 10.5, columns, rows }];
}

/** States of more characters than this wrap, so that names keep their room. */
const longState = 26;

function stateColumn(elements: readonly SceneElement[]): TableColumn {
  const long = elements.some((one) => stateWords(one).length > longState);
  return long ? { head: '', share: 1.9 } : { head: '', fit: true };
}

/** Things with their boxes one after another; a name stays on one line with its box. */
function runIn(elements: readonly SceneElement[], context: SheetContext): Block[] {
  if (elements.length === 0) return [];
  const text = elements.flatMap((one) => {
    const words = [...inlineRuns(nameAndKind(one, context)), ...inlineRuns(one.by === null ? '' : `, ${one.by}`)];
    return [tick, '\u00a0', ...words.map(holdTogether), '   '];
  });
  return [{ kind: 'paragraph', size: 10.5, text }];
}

function holdTogether(run: InlineRun): InlineRun {
  return run.kind === 'text' ? { ...run, text: run.text.replaceAll(' ', '\u00a0') } : run;
}

/** Words for the kinds of things that need care of their own. */
const kinds: Partial<Record<CategoryName, Inline>> = {
  food: '; food: each take uses it up',
  graphics: '; to print, draw or show on a screen',
  vehicles: '; vehicle',
  animals: ['; animal, handler ', blank(70)],
};

function elementRow(element: SceneElement, context: SheetContext, states: boolean): TableRow {
  const state = states ? [stateWords(element)] : [];
  return { cells: [tick, nameAndKind(element, context), element.by ?? '', ...state] };
}

function nameAndKind(element: SceneElement, context: SheetContext): Inline {
  return [...inlineRuns(elementName(element, context)), ...inlineRuns(kinds[element.category] ?? '')];
}
