import { formatDuration } from '../../../base/duration.js';
import type { BreakdownScene } from '../../../breakdown/types.js';
import type { Block } from '../../layout/blocks.js';
import { bold } from '../../layout/inline.js';
import { sizes } from '../../layout/measures.js';
import { dayAndPlaceWords } from '../../plan/scene-day-words.js';
import { labelOf, type Section, type SheetContext } from '../sheet-context.js';
import { dayWords, headingSentence, pageWords, timeWords } from '../sheet-words.js';

/** Which scene this is, in large type; its measures; the day, the address and who answers for it, or blanks for them. */
export const writeIdentity: Section = (scene, context) => [
  {
    kind: 'paragraph',
    size: sizes.identity,
    after: 3,
    text: bold(`${sceneTitle(scene, context)}. ${headingSentence(scene)}.`),
  },
  ...changedBlocks(scene, context),
  { kind: 'paragraph', after: 7, text: measureWords(scene) },
  { kind: 'paragraph', after: 8, text: dayAndPlaceWords(scene, context) },
];

/** What changed here since the draft that the reader holds, beside a bar in the margin. */
function changedBlocks(scene: BreakdownScene, { changes, production }: SheetContext): Block[] {
  const words = changes?.sentences.get(scene.id);
  if (!changes || words === undefined) return [];
  const isShot = production?.plan.days.some((day) => day.shot && day.scenes.some((slot) => slot.scene === scene.id));
  const loud = isShot ? [bold('SHOT ALREADY, before this change: tell the director. ')] : [];
  const text = words === '' ? [bold(`New since ${changes.since}.`)] : [bold(`Changed since ${changes.since}: `), words];
  return [{ kind: 'changed', blocks: [{ kind: 'paragraph', after: 4, text: [...loud, ...text] }] }];
}

/** `Scene 12A`; in a script that numbers other scenes, `3rd scene, no number`. */
export function sceneTitle(scene: BreakdownScene, context: SheetContext): string {
  const label = labelOf(scene, context);
  const others = scene.number === null && context.breakdown.scenes.some((one) => one.number !== null);
  return others ? `${label} scene, no number` : `Scene ${label}`;
}

function measureWords(scene: BreakdownScene): string {
  const measures = [
    pageWords(scene.eighths),
    timeWords(scene.screenTime),
    `${formatDuration(scene.screenTime.pageRule)} by the page rule`,
    dayWords(scene.storyDay),
    `script page ${scene.page}`,
  ];
  return measures.join('  ·  ');
}
