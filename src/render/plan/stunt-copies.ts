import { type Block, bold, type Inline } from '../layout/kit.js';
import { labelOf, type SceneIndex } from '../words/scene-list-words.js';

/** The row of the hazard table for stunts, fights and falls. */
const stunts = 'H3';

/** Whoever falls or fights may need clothes a size up for pads, and a double clothes in their own size: asked before anything is bought. */
export function stuntBlocks(index: SceneIndex): Block[] {
  const scenes = index.scenes.filter((scene) => scene.hazards.some((hazard) => hazard.id === stunts));
  const entries = scenes.flatMap((scene): Inline[] => {
    const dressed = scene.wears.filter((wears) => wears.garments.some((one) => !one.absent)).map((one) => one.person);
    return dressed.length === 0 ? [] : [[bold(`Sc ${labelOf(scene.id, index)}: `), dressed.join(', ')]];
  });
  if (entries.length === 0) return [];
  return [
    { kind: 'heading', level: 3, text: 'Stunts, fights and falls: sizes' },
    {
      kind: 'paragraph',
      text: 'Pads or a harness under the costume ask for one size up; a double needs every piece in their own size. Ask who falls, before anything is bought.',
      keepWithNext: true,
    },
    { kind: 'entries', entries },
  ];
}
