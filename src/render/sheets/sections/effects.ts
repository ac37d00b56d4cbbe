import type { CategoryName } from '../../../trade/categories.js';
import { categoryOf } from '../../../trade/categories.js';
import { bold, type Inline, inlineRuns } from '../../layout/inline.js';
import { stateWords } from '../../layout/known-words.js';
import type { Section } from '../sheet-context.js';
import { elementName, elementsIn } from './element-words.js';

const made: readonly CategoryName[] = ['stunts', 'effects', 'visual-effects', 'gear'];

/** Effects, stunts, weather and special gear, each kind in words. */
export const writeEffects: Section = (scene, context) => {
  const entries = made.flatMap((category): Inline[] => {
    const elements = elementsIn(scene, [category]);
    if (elements.length === 0) return [];
    const names = elements.flatMap((element, i) => {
      const state = stateWords(element.stateIn, element.stateOut);
      return [i > 0 ? '; ' : '', ...inlineRuns(elementName(element, context)), state ? `, ${state}` : ''];
    });
    return [[`${categoryOf(category).label}: `, ...names]];
  });
  return entries.length === 0
    ? []
    : [{ kind: 'section', label: bold('Effects'), blocks: [{ kind: 'entries', entries }] }];
};
