import type { SceneElement } from '../../../breakdown/types.js';
import type { CategoryName } from '../../../trade/categories.js';
import type { Block, TableRow } from '../../layout/blocks.js';
import { blank, type Inline, inlineRuns, tick } from '../../layout/inline.js';
import { stateWords } from '../../layout/known-words.js';
import type { Section, SheetContext } from '../sheet-context.js';
import { categoriesOf, elementName, elementsIn, elementWords } from './element-words.js';

const inHand = categoriesOf('in hand');

/** What is handled, who has it, in which state it comes and goes; folded, in running text. */
export const writeInHand: Section = (scene, context, fold) => {
  const elements = elementsIn(scene, inHand);
  if (elements.length === 0) return [];
  const blocks: Block[] =
    fold > 0
      ? [{ kind: 'paragraph', size: 10, text: elements.map((element) => elementWords(element, context)).join('; ') }]
      : [
          {
            kind: 'table',
            headed: false,
            size: 10.5,
            columns: [
              { head: '', fit: true },
              { head: '', share: 3 },
              { head: '', share: 1.1 },
              { head: '', share: 1.9 },
            ],
            rows: elements.map((element) => elementRow(element, context)),
          },
        ];
  return [{ kind: 'section', label: 'In hand', blocks }];
};

/** Words for the kinds of things that need care of their own. */
const kinds: Partial<Record<CategoryName, string>> = {
  food: '; food: each take uses it up',
  graphics: '; to print, draw or show on a screen',
  vehicles: '; vehicle',
  animals: '; animal',
};

function elementRow(element: SceneElement, context: SheetContext): TableRow {
  const name: Inline = [...inlineRuns(elementName(element, context)), kinds[element.category] ?? ''];
  const stack = element.category === 'animals' ? [name, ['handler ', blank(100)]] : [name];
  return { cells: [tick, { stack }, element.by ?? '', stateWords(element.stateIn, element.stateOut)] };
}
