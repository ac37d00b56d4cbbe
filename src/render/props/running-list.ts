import type { Breakdown, BreakdownScene, SceneElement } from '../../breakdown/types.js';
import { type Block, bold, type Inline, italic, knownWords, stateWords, type TableRow, tick } from '../layout/kit.js';
import { headingSentence } from '../sheets/sheet-words.js';
import type { BookNotes } from '../words/book-notes.js';
import { dangerLines } from '../words/danger-words.js';
import { thingsInHand } from '../words/in-hand.js';
import { labelOf, type SceneIndex } from '../words/scene-list-words.js';
import { countWords, dayWords } from '../words/story-words.js';

const columns = [
  { head: 'Scene', width: 34 },
  { head: '', width: 12 },
  { head: 'What', share: 4.2 },
  { head: 'Who has it', share: 1.7 },
  { head: 'How it looks', share: 1.8 },
  { head: 'Then', width: 50 },
];

/** Everything in hand, in story order: who has it, its state at the start and end of each scene, where it goes. */
export function runningBlocks(
  breakdown: Breakdown,
  notes: BookNotes,
  usedUp: ReadonlySet<string>,
  index: SceneIndex,
): Block[] {
  const known = { where: findAppearances(breakdown), notes, usedUp, index };
  const rows = breakdown.scenes.flatMap((scene) => sceneRows(scene, known));
  return [
    { kind: 'heading', level: 2, text: 'In hand, scene by scene', bookmark: 'In hand, scene by scene' },
    rows.length > 0
      ? { kind: 'table', columns, rows, tight: true }
      : { kind: 'paragraph', text: 'The script puts nothing in anybody’s hands.' },
  ];
}

/** A scene with more rows than this may be cut by a page's end. */
const mostKept = 16;

/** What the rows of every scene may ask. */
interface Known {
  readonly where: Appearances;
  readonly notes: BookNotes;
  /** Ids of what each take uses up. */
  readonly usedUp: ReadonlySet<string>;
  readonly index: SceneIndex;
}

function sceneRows(scene: BreakdownScene, known: Known): TableRow[] {
  const things = thingsInHand(scene);
  const heading: TableRow = {
    cells: [bold(labelOf(scene.id, known.index)), '', { stack: headingCell(scene) }],
    keepWithNext: true,
  };
  if (things.length === 0) return [heading, { cells: ['', '', 'nothing in hand'] }];
  const rows = [heading, ...things.map((thing) => thingRow(thing, scene, known))];
  return rows.length > mostKept ? rows : rows.map((row, i) => ({ ...row, keepWithNext: i < rows.length - 1 }));
}

function headingCell(scene: BreakdownScene): Inline[] {
  return [[bold(headingSentence(scene)), `, ${dayWords(scene.storyDay.label)}`], ...dangerLines(scene)];
}

function thingRow(thing: SceneElement, scene: BreakdownScene, { where, notes, usedUp, index }: Known): TableRow {
  const known = knownWords(thing, index.labels);
  const note = notes.get(thing.id);
  const isFirst = where.get(thing.id)?.[0] === index.positions.get(scene.id);
  const name: Inline = [bold(countWords(thing.name, thing.count)), known === '' ? '' : ` ${known}`];
  return {
    cells: [
      '',
      tick,
      {
        stack: [
          name,
          ...(thing.description !== null && isFirst ? [thing.description] : []),
          ...(note === undefined || !isFirst ? [] : [italic(`Note: ${note}`)]),
        ],
      },
      thing.by ?? '',
      stateWords(thing),
      nextWords(thing, scene, where, index) ?? (usedUp.has(thing.id) ? 'used up' : 'ends here'),
    ],
  };
}

/** The scenes in which each thing is, by its id, as positions in the script. */
type Appearances = ReadonlyMap<string, readonly number[]>;

function findAppearances(breakdown: Breakdown): Appearances {
  const found = new Map<string, number[]>();
  breakdown.scenes.forEach((scene, position) => {
    for (const { id } of scene.elements) {
      const list = found.get(id);
      if (list) list.push(position);
      else found.set(id, [position]);
    }
  });
  return found;
}

function nextWords(thing: SceneElement, scene: BreakdownScene, where: Appearances, index: SceneIndex): string | null {
  const here = index.positions.get(scene.id) ?? 0;
  const next = where.get(thing.id)?.find((position) => position > here);
  return next === undefined ? null : `sc ${labelOf(index.scenes[next]?.id ?? '', index)}`;
}
