import type { SceneElement } from '../../../breakdown/types.js';
import type { Inline } from '../../layout/inline.js';
import type { Section, SheetContext } from '../sheet-context.js';
import { foldedWords } from '../sheet-words.js';
import { categoriesOf, elementsIn, elementWords } from './element-words.js';

const thePlace = categoriesOf('the place');

/** How the place is dressed: what is new or changes here; the rest as it stood. Folded, a reference. */
export const writePlace: Section = (scene, context, fold) => {
  const elements = elementsIn(scene, thePlace);
  if (elements.length === 0) return [];
  const entries = fold > 0 ? [foldedWords(elements.length, 'thing')] : placeEntries(elements, context);
  return [{ kind: 'section', label: 'The place', blocks: [{ kind: 'entries', entries }] }];
};

function placeEntries(elements: readonly SceneElement[], context: SheetContext): Inline[] {
  const standing = elements.filter((element) => element.carried && !changes(element));
  const own = elements.filter((element) => !standing.includes(element));
  const entries: Inline[] = [];
  if (own.length > 0) entries.push(own.map((element) => elementWords(element, context)).join('; '));
  for (const [from, names] of groupByScene(standing)) {
    const label = from === null ? undefined : context.labels.get(from);
    entries.push(`${label ? `as in scene ${label}` : 'as before'}: ${names.join(', ')}`);
  }
  return entries;
}

function changes(element: SceneElement): boolean {
  return element.stateOut !== null && element.stateOut !== element.stateIn;
}

function groupByScene(elements: readonly SceneElement[]): Map<string | null, string[]> {
  const groups = new Map<string | null, string[]>();
  for (const element of elements) groups.set(element.from, [...(groups.get(element.from) ?? []), element.name]);
  return groups;
}
