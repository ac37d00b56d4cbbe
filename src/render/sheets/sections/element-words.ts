import type { BreakdownScene, SceneElement } from '../../../breakdown/types.js';
import { type CategoryGroup, type CategoryName, categories, categoryOf } from '../../../trade/categories.js';
import { bold, type Inline, type InlineRun, italic } from '../../layout/inline.js';
import { knownWords, stateWords } from '../../layout/known-words.js';
import type { SheetContext } from '../sheet-context.js';

const ranks = new Map(categories.map((category, i) => [category.name, i]));

/** The elements of some categories, in the order of the table of categories, else as they come. */
export function elementsIn(scene: BreakdownScene, names: readonly CategoryName[]): SceneElement[] {
  return sortByKind(scene.elements.filter((element) => names.includes(element.category)));
}

/** Elements in the order of the table of categories, else as they come. */
export function sortByKind(elements: readonly SceneElement[]): SceneElement[] {
  return [...elements].sort((a, b) => (ranks.get(a.category) as number) - (ranks.get(b.category) as number));
}

/** The categories of a group. */
export function categoriesOf(group: CategoryGroup): CategoryName[] {
  return categories.filter((category) => category.group === group).map((category) => category.name);
}

/** `6 × crate (found)`, the name bold, with its description. */
export function elementName(element: SceneElement, context: SheetContext): Inline {
  const known = knownWords(element, context.labels);
  return [
    bold(element.count !== null && element.count !== 1 ? `${element.count} × ${element.name}` : element.name),
    known ? ` ${known}` : '',
    element.description ? `, ${element.description}` : '',
    ...noteWords(element, context),
  ];
}

function noteWords(element: SceneElement, context: SheetContext): InlineRun[] {
  const note = context.notes.get(element.id);
  return note === undefined ? [] : [italic(` Note: ${note}`)];
}

/** An element in running text: `storm lantern (found), lit → broken, with NORA`. */
export function elementWords(element: SceneElement, context: SheetContext, kind = false): string {
  const count = element.count !== null && element.count !== 1 ? `${element.count} × ` : '';
  const known = knownWords(element, context.labels);
  const state = stateWords(element);
  const parts = [`${count}${element.name}${known ? ` ${known}` : ''}`];
  if (kind) parts.push(categoryOf(element.category).label.toLowerCase());
  if (state) parts.push(state);
  if (element.by) parts.push(`with ${element.by}`);
  const note = context.notes.get(element.id);
  if (note !== undefined) parts.push(`note: ${note}`);
  return parts.join(', ');
}
