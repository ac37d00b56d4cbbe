import type { BreakdownScene, SceneHazard } from '../../breakdown/types.js';
import { hazardCaution } from '../../trade/hazards.js';
import { severityOf } from '../../trade/hazards-order.js';
import type { Block } from '../layout/blocks.js';
import { bold, danger, type Inline, inlineRuns, joinInline } from '../layout/inline.js';
import { sizes } from '../layout/measures.js';
import { chargeWords } from '../words/charge-words.js';
import { indexScenes } from '../words/scene-list-words.js';
import { qualifiedWords, raisedBy, readingWords } from './sections/danger.js';
import { labelOf, type SheetContext } from './sheet-context.js';

interface Caution {
  readonly hazard: SceneHazard;
  readonly raised: Inline[];
  readonly scenes: BreakdownScene[];
}

/** Every danger of the script once, in full, the gravest first, with all scenes that raise it; an empty list when none does. */
export function writeCautions(context: SheetContext): Block[] {
  const cautions = gather(context);
  if (cautions.length === 0) return [];
  return [
    { kind: 'heading', level: 1, text: [danger, ' Cautions'], bookmark: 'Cautions' },
    { kind: 'paragraph', after: 8, text: hazardCaution },
    ...cautions.map((caution): Block => ({ kind: 'keep', blocks: [writeCaution(caution, context)] })),
  ];
}

function gather(context: SheetContext): Caution[] {
  const cautions = new Map<string, Caution>();
  for (const scene of context.breakdown.scenes) {
    for (const hazard of scene.hazards) {
      const key = `${hazard.id} ${hazard.title} ${hazard.precaution}`;
      const caution = cautions.get(key) ?? { hazard, raised: [], scenes: [] };
      caution.scenes.push(scene);
      caution.raised.push([bold(`Scene\u00a0${labelOf(scene, context)}: `), ...inlineRuns(raisedBy(hazard))]);
      cautions.set(key, caution);
    }
  }
  return [...cautions.values()].sort((a, b) => severityOf(a.hazard.id) - severityOf(b.hazard.id));
}

function writeCaution({ hazard, raised, scenes }: Caution, { breakdown, production }: SheetContext): Block {
  const names = chargeWords(scenes, production, indexScenes(breakdown.scenes), 160);
  const charge: Inline = ['In\u00a0charge:\u00a0', ...inlineRuns(names)];
  const text = joinInline([hazard.precaution, qualifiedWords(hazard), readingWords(hazard)], ' ');
  return {
    kind: 'section',
    label: hazard.title,
    labelWidth: 116,
    blocks: [
      { kind: 'paragraph', size: sizes.small, text },
      {
        kind: 'paragraph',
        size: sizes.small,
        text: [...inlineRuns(joinInline(raised, '; ')), '.  ', ...inlineRuns(charge)],
      },
    ],
  };
}
