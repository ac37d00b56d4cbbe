import type { Breakdown } from '../../breakdown/types.js';
import type { Change, Changes, SceneChanges } from '../../compare/types.js';
import { sortByCost } from '../words/change-ranks.js';
import { changeWords, sceneHeadWords, sinceWords } from '../words/change-words.js';

/** The list of all changes as Markdown, by scene. */
export function changesMarkdown(breakdown: Breakdown, changes: Changes): string {
  const present = breakdown.draft === null ? 'this draft' : `draft ${breakdown.draft}`;
  const lines = [
    `# ${breakdown.title}: what changed`,
    '',
    `From ${sinceWords(changes)} to ${present}.`,
    ...(changes.whole.length > 0 ? ['', '## In all', '', ...changes.whole.map(listItem)] : []),
    ...changes.scenes.flatMap(sceneLines),
    ...(changes.whole.length + changes.scenes.length === 0 ? ['', 'Nothing that is compared has changed.'] : []),
    '',
    footWords(changes),
  ];
  return `${lines.join('\n')}\n`;
}

/** A scene with its changes; of one that is cut only what went with it altogether. */
function sceneLines(scene: SceneChanges): string[] {
  const head = scene.changes.find((change) => change.kind === 'scene');
  const told = scene.changes.filter(
    ({ kind, whole }) => kind !== 'scene' && kind !== 'label' && (scene.after !== null || whole),
  );
  const items = sortByCost(told, (change) => change).map(listItem);
  return ['', `## ${sceneTitle(scene, head)}`, ...(items.length > 0 ? ['', ...items] : [])];
}

function sceneTitle({ before, after }: SceneChanges, head: Change | undefined): string {
  if (before === null) return `Scene ${after}: new (${sceneHeadWords(head?.after ?? null)})`;
  if (after === null) return `Old scene ${before}: cut (${sceneHeadWords(head?.before ?? null)})`;
  return before === after ? `Scene ${after}` : `Scene ${after} (was ${before})`;
}

function listItem(change: Change): string {
  return `- ${changeWords(change)}`;
}

function footWords({ daysCompared }: Changes): string {
  const days = daysCompared ? '' : ' Shooting days were not compared: one of the drafts tells of none.';
  return `Compared: scenes, people, things, costumes, dangers and shooting days. Not compared: things that are only a question, and the words of action and speech.${days}`;
}
