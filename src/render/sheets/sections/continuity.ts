import type { Link } from '../../../breakdown/types.js';
import { bold, type Inline } from '../../layout/inline.js';
import { shotWords } from '../../plan/scene-day-words.js';
import type { Section, SheetContext } from '../sheet-context.js';
import { foldedWords } from '../sheet-words.js';

/** What must match the scenes before, and what later scenes must match. */
export const writeContinuity: Section = (scene, context, fold) => {
  const entries = [
    ...scene.comesFrom.map((link) => linkWords('From', scene.id, link, context, fold)),
    ...scene.goesTo.map((link) => linkWords('To', scene.id, link, context, fold)),
  ];
  return entries.length === 0 ? [] : [{ kind: 'section', label: 'Must match', blocks: [{ kind: 'entries', entries }] }];
};

function linkWords(way: string, here: string, link: Link, context: SheetContext, fold: number): Inline {
  const label = context.labels.get(link.scene) ?? link.scene;
  const what = fold > 0 ? foldedWords(link.what.length, 'thing') : link.what.join('; ');
  return [bold(`${way} scene ${label}${shotWords(here, link.scene, context.production)}: `), what];
}
