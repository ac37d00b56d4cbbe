import type { SceneElement } from '../../../breakdown/types.js';
import { bold, type Inline, joinInline } from '../../layout/inline.js';
import { changesState } from '../../layout/known-words.js';
import { roomOf } from '../../words/place-dressing.js';
import type { Section, SheetContext } from '../sheet-context.js';
import { foldedWords, placeWords } from '../sheet-words.js';
import { categoriesOf, elementsIn, elementWords } from './element-words.js';

const thePlace = categoriesOf('the place');

/** From so many things that merely stand there, the place sheet lists them and the scene's sheet only its exceptions. */
const longDressing = 5;

/** How the place is dressed: what is new or changes here; the rest as it stood, or as the place sheet has it. Folded, a reference. */
export const writePlace: Section = (scene, context, fold) => {
  const elements = elementsIn(scene, thePlace);
  const room = roomOf(scene, context.breakdown);
  const missing = room?.departures.find((one) => one.scene === scene.id)?.minus ?? [];
  if (elements.length + missing.length === 0) return [];
  const entries =
    fold > 0
      ? [foldedWords(elements.length, 'thing')]
      : placeEntries(elements, missing, room?.set.place ?? '', context);
  return [{ kind: 'section', label: 'The place', blocks: [{ kind: 'entries', entries }] }];
};

function placeEntries(
  elements: readonly SceneElement[],
  missing: readonly string[],
  room: string,
  context: SheetContext,
): Inline[] {
  const standing = elements.filter((element) => element.carried && !changesState(element));
  const own = elements.filter((element) => !standing.includes(element));
  const entries: Inline[] = [];
  if (own.length > 0) entries.push(own.map((element) => elementWords(element, context)).join('; '));
  const minus: Inline[] = missing.length > 0 ? [[bold('MINUS'), ` ${missing.join(', ')}`]] : [];
  if (standing.length >= longDressing) {
    const sheet = `as the place sheet of ${placeWords([room])} (${standing.length} things more)`;
    return [...entries, joinInline([sheet, ...minus])];
  }
  for (const [from, names] of groupByScene(standing)) {
    const label = from === null ? undefined : context.labels.get(from);
    entries.push(`${label ? `as in scene ${label}` : 'as before'}: ${names.join(', ')}`);
  }
  return [...entries, ...minus];
}

function groupByScene(elements: readonly SceneElement[]): Map<string | null, string[]> {
  const groups = new Map<string | null, string[]>();
  for (const element of elements) groups.set(element.from, [...(groups.get(element.from) ?? []), element.name]);
  return groups;
}
