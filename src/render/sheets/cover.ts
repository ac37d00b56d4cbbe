import { formatDuration } from '../../base/duration.js';
import type { Breakdown } from '../../breakdown/types.js';
import { categories } from '../../trade/categories.js';
import { severityOf } from '../../trade/hazards-order.js';
import type { Block } from '../layout/blocks.js';
import { blank, bold, danger, type Inline, tick } from '../layout/inline.js';
import { indexScenes, listScenes } from '../words/scene-list-words.js';
import type { SheetContext } from './sheet-context.js';
import { countWords, pageWords, rangeWords } from './sheet-words.js';

/** The first page: what this is, how long it is in both measures, what is in it, what is open, how to read it. */
export function writeCover(context: SheetContext): Block[] {
  const { breakdown } = context;
  return [
    { kind: 'paragraph', size: 28, after: 2, text: bold(breakdown.title) },
    { kind: 'paragraph', size: 13, after: 4, text: 'Scene sheets: one page for each scene' },
    { kind: 'paragraph', size: 13, after: 14, text: [draftWords(breakdown), '.  Printed for ', blank(150)] },
    section('Length', lengthEntries(breakdown)),
    section('In it', contentEntries(breakdown)),
    section('Dangers', dangerEntries(context)),
    section('Still open', openEntries(context)),
    ...changedBlocks(context.changes),
    section('How to read a sheet', readingEntries()),
  ];
}

function section(label: string, entries: readonly Inline[]): Block {
  return {
    kind: 'section',
    label,
    labelWidth: 100,
    blocks: [
      { kind: 'entries', entries },
      { kind: 'space', height: 6 },
    ],
  };
}

function draftWords(breakdown: Breakdown): string {
  const draft = breakdown.draft ? `Draft ${breakdown.draft}` : 'No draft named';
  const author = breakdown.author ? `, by ${breakdown.author}` : '';
  return `${draft}, ${breakdown.date ?? 'undated'}${author}`;
}

function lengthEntries(breakdown: Breakdown): Inline[] {
  const { pages, eighths, screenTime } = breakdown;
  return [
    [
      bold(countWords(breakdown.scenes.length, 'scene')),
      `; their lengths add up to ${pageWords(eighths)}, the script is ${countWords(pages, 'page')} long`,
    ],
    [
      bold('On screen, from what happens: '),
      `${formatDuration(screenTime.seconds)} (${rangeWords(screenTime)})${screenTime.noted ? ', some scenes set by the writer' : ''}`,
    ],
    [bold('On screen, by the page rule: '), `${formatDuration(screenTime.pageRule)}, a minute a page`],
    'A page a minute holds roughly over many films and poorly for any single one: so says a study of 761 films made (2020). Read the scenes aloud with a stopwatch before you trust either figure.',
  ];
}

function contentEntries(breakdown: Breakdown): Inline[] {
  const people = breakdown.cast.filter((person) => !person.background);
  const heard = people.filter((person) => person.seen.length === 0).length;
  const days = new Set(breakdown.scenes.map((scene) => scene.storyDay.label)).size;
  const counts = [
    countWords(people.length, 'person', 'people') + (heard > 0 ? ` (${heard} only heard)` : ''),
    countWords(breakdown.places.length, 'place'),
    countWords(days, 'story day'),
  ];
  return [counts.join('  ·  '), categoryCounts(breakdown).join('  ·  ')].filter((line) => line !== '');
}

function categoryCounts(breakdown: Breakdown): string[] {
  return categories.flatMap((category) => {
    const count = breakdown.elements.filter((element) => element.category === category.name).length;
    return count === 0 ? [] : [`${category.label.toLowerCase()} ${count}`];
  });
}

function dangerEntries(context: SheetContext): Inline[] {
  const rows = new Map<string, { severity: number; scenes: string[] }>();
  for (const scene of context.breakdown.scenes) {
    for (const { id, title } of scene.hazards) {
      const row = rows.get(title) ?? { severity: severityOf(id), scenes: [] };
      row.scenes.push(scene.id);
      rows.set(title, row);
    }
  }
  if (rows.size === 0) return [['Nothing raised. That does not mean there is none. Checked by ', blank(120)]];
  return [...rows]
    .sort(([, a], [, b]) => a.severity - b.severity)
    .map(([title, { scenes }]) => [danger, ' ', bold(title), `: ${sceneWords(scenes, context)}`]);
}

function openEntries(context: SheetContext): Inline[] {
  const { breakdown } = context;
  const asked = breakdown.scenes.filter((scene) => scene.questions.length > 0);
  const count = asked.reduce((sum, scene) => sum + scene.questions.length, 0);
  const entries: Inline[] = [
    count === 0
      ? 'No question.'
      : [
          bold(countWords(count, 'question')),
          `: ${sceneWords(
            asked.map((scene) => scene.id),
            context,
          )}`,
        ],
  ];
  if (breakdown.scenes.every((scene) => scene.number === null))
    entries.push(
      'The scenes have no numbers yet: the sheets count them in order. Number them before paper is handed out.',
    );
  if (breakdown.omitted.length > 0) entries.push(`Left out, number kept: ${breakdown.omitted.join(', ')}`);
  return entries;
}

/** `scene 4`, `scenes 1, 3–5`. */
function sceneWords(ids: readonly string[], context: SheetContext): string {
  const list = listScenes(ids, indexScenes(context.breakdown.scenes));
  return `${new Set(ids).size === 1 ? 'scene' : 'scenes'} ${list}`;
}

/** Which sheets to replace, with the bar that marks what changed. */
function changedBlocks(changes: SheetContext['changes']): Block[] {
  if (changes === null) return [];
  const { since, changed, added, gone } = changes;
  const none = changed.length + added.length + gone.length === 0;
  const key = none
    ? [bold(`Nothing changed since ${since}`), ' in the scenes.']
    : [bold(`Since ${since}.`), ' A bar in the margin, like the one here, stands beside what changed.'];
  const lists: Inline[] = [
    ...(changed.length > 0 ? [['Changed, replace the old sheet: ', bold(sceneLabels(changed))]] : []),
    ...(added.length > 0 ? [['New: ', bold(sceneLabels(added))]] : []),
    ...(gone.length > 0 ? [['Cut, throw the old sheet away: ', bold(`old ${sceneLabels(gone)}`)]] : []),
  ];
  const keyBlock: Block = { kind: 'entries', entries: [key] };
  const blocks: Block[] = [
    none ? keyBlock : { kind: 'changed', blocks: [keyBlock] },
    { kind: 'entries', entries: lists },
    { kind: 'space', height: 6 },
  ];
  return [{ kind: 'section', label: 'Changed', labelWidth: 100, blocks }];
}

function sceneLabels(labels: readonly string[]): string {
  return `${labels.length === 1 ? 'scene' : 'scenes'} ${labels.join(', ')}`;
}

function readingEntries(): Inline[] {
  return [
    [tick, '  to tick when it is done'],
    [danger, '  danger: read the framed box first'],
    ['?  open: ask, do not guess'],
    ['dry → soaked  how it goes into the scene and how it comes out'],
    [bold('storm lantern'), '  the writer marked it or noted it'],
    [bold('crate'), ' (found)  nobody marked it; the program read it in the text'],
    [bold('matches'), ' (implied, likely)  not in the text; the words call for it: certain, likely, or ask'],
    [bold('van key'), ' (carried from sc 1)  not named in this scene; still here from an earlier one'],
  ];
}
