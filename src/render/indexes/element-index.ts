import { compareText } from '../../base/diagnostic.js';
import { foldName } from '../../base/slug.js';
import type { Breakdown, ElementEntry } from '../../breakdown/types.js';
import { type CategoryName, categories } from '../../trade/categories.js';
import { groupRow } from '../layout/group-row.js';
import { type Block, bold, type Inline, italic, knownWords, type TableRow } from '../layout/kit.js';
import type { BookNotes } from '../words/book-notes.js';
import { labelOf, listScenes, type SceneIndex } from '../words/scene-list-words.js';

const columns = [
  { head: 'Thing', share: 3 },
  { head: 'Scenes', share: 1.6 },
  { head: 'Most at once', width: 44 },
  { head: 'Who', share: 1.4 },
  { head: 'States, and the scene each begins in', share: 3 },
];

/** Kinds that nobody has or carries, whoever stands near them. */
const ownerless: ReadonlySet<CategoryName> = new Set(['effects', 'visual-effects', 'sound', 'music']);

/** Index by element: every thing under its one name, by category and then by the alphabet. */
export function elementIndex(breakdown: Breakdown, notes: BookNotes, index: SceneIndex): Block[] {
  const groups = categories
    .map((category) => ({ category, entries: breakdown.elements.filter((one) => one.category === category.name) }))
    .filter(({ entries }) => entries.length > 0);
  const rows = groups.flatMap(({ category, entries }) => [
    groupRow(category.label),
    ...sortByName(entries).map((entry) => elementRow(entry, notes, index)),
  ]);
  return [
    { kind: 'heading', level: 2, text: 'By thing', bookmark: 'By thing' },
    rows.length === 0 ? nothing : { kind: 'table', columns, rows },
  ];
}

const nothing: Block = { kind: 'paragraph', text: 'The script names no things.' };

function sortByName(entries: readonly ElementEntry[]): ElementEntry[] {
  return [...entries].sort((a, b) => compareText(foldName(a.name), foldName(b.name)) || compareText(a.id, b.id));
}

function elementRow(entry: ElementEntry, notes: BookNotes, index: SceneIndex): TableRow {
  return {
    cells: [
      { stack: nameCell(entry, notes, index) },
      listScenes(entry.scenes, index),
      entry.count === null ? '' : String(entry.count),
      ownerless.has(entry.category) ? '' : entry.by.join(', '),
      { stack: entry.states.map(({ state, scene, onCamera }) => stateCell(state, labelOf(scene, index), onCamera)) },
    ],
  };
}

function nameCell(entry: ElementEntry, notes: BookNotes, index: SceneIndex): Inline[] {
  const known = knownWords(entry, index.labels);
  const note = notes.get(entry.id);
  const others = entry.names.filter((name) => name !== entry.name);
  return [
    [bold(entry.name), known === '' ? '' : ` ${known}`],
    ...(others.length > 0 ? [`also called ${others.join(', ')}`] : []),
    ...(entry.description === null ? [] : [entry.description]),
    ...(note === undefined ? [] : [italic(`Note: ${note}`)]),
  ];
}

function stateCell(state: string, scene: string, onCamera: boolean): string {
  return `${state}: ${onCamera ? `changes on camera in sc ${scene}` : `from sc ${scene}`}`;
}
