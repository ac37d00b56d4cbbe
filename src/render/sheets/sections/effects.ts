import type { CategoryName } from '../../../trade/categories.js';
import { categoryOf } from '../../../trade/categories.js';
import { type Inline, inlineRuns, joinInline } from '../../layout/inline.js';
import { stateWords } from '../../layout/known-words.js';
import type { Section } from '../sheet-context.js';
import { foldedWords } from '../sheet-words.js';
import { elementName, elementsIn } from './element-words.js';

const made: readonly CategoryName[] = ['stunts', 'effects', 'visual-effects', 'gear'];

/** Effects, stunts, weather and special gear, each kind in words; folded, in running text, then a count. */
export const writeEffects: Section = (scene, context, fold) => {
  const entries = made.flatMap((category): Inline[] => {
    const elements = elementsIn(scene, [category]);
    if (elements.length === 0) return [];
    const names = elements.flatMap((element, i) => {
      const state = stateWords(element);
      return [i > 0 ? '; ' : '', ...inlineRuns(elementName(element, context)), state ? `, ${state}` : ''];
    });
    return [[`${categoryOf(category).label}: `, ...names]];
  });
  if (entries.length === 0) return [];
  const shown =
    [entries, [joinInline(entries, '; ')], [foldedWords(elementsIn(scene, made).length, 'thing')]][fold] ?? entries;
  return [{ kind: 'section', label: 'Effects', blocks: [{ kind: 'entries', entries: shown }] }];
};
