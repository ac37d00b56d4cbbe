import type { BreakdownScene } from '../../breakdown/types.js';
import type { Block } from '../layout/blocks.js';
import type { SectionName } from './fold-steps.js';
import { sceneTitle } from './sections/identity.js';
import { sections } from './sections.js';
import type { SheetContext } from './sheet-context.js';
import { headingSentence } from './sheet-words.js';

/** A scene with the sections that its sheet could not show whole. */
export interface LeftOver {
  readonly scene: BreakdownScene;
  readonly names: readonly SectionName[];
}

/** What the sheets folded, in full, by scene; an empty list when nothing was. Dangers stand in full among the cautions. */
export function writeLeftOver(leftOver: readonly LeftOver[], context: SheetContext): Block[] {
  const some = leftOver
    .map(({ scene, names }) => ({ scene, names: names.filter((name) => name !== 'danger') }))
    .filter(({ names }) => names.length > 0);
  if (some.length === 0) return [];
  return [
    { kind: 'heading', level: 1, text: 'Left over: what full sheets could not show', bookmark: 'Left over' },
    ...some.flatMap(({ scene, names }): Block[] => [
      { kind: 'heading', level: 2, text: `${sceneTitle(scene, context)}. ${headingSentence(scene)}.` },
      ...names.flatMap((name) => sections[name](scene, context, 0)),
    ]),
  ];
}
