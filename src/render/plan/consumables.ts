import { formatPercent } from '../../base/ratio.js';
import { matchEntries } from '../../book/match-entries.js';
import type { Book } from '../../book/types.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { Use } from '../../plan/need-types.js';
import { countTakes, spareOf, type TakeCount } from '../../plan/per-take.js';
import type { Plan } from '../../plan/plan-types.js';
import { countNeeded, shortWords } from '../../plan/short-copies.js';
import { listEating } from '../../plan/used-up.js';
import { type Block, bold, type Inline, type TableRow } from '../layout/kit.js';
import { getWithPacks } from './multiples.js';
import { needWords } from './plan-words.js';

const columns = [
  { head: 'What', share: 2.2 },
  { head: 'Per\ntake', width: 38 },
  { head: 'Scenes', share: 0.8 },
  { head: 'Setups', width: 34 },
  { head: 'Takes', width: 32 },
  { head: 'Rehear-\nsals', width: 38 },
  { head: 'Spare', width: 36 },
  { head: 'At\nleast', width: 36 },
  { head: 'In all', width: 36 },
  { head: 'Get', width: 84 },
];

/** What each take uses up: takes × setups + rehearsals, and how it adds to packs. */
export function consumableBlocks(plan: Plan, book: Book, isMine: (line: PlanLine) => boolean): Block[] {
  const lines = plan.lines.filter((line) => isMine(line) && line.need.usedUp && line.department !== 'kit');
  if (lines.length === 0) return [];
  const food = lines.some((line) => line.need.category === 'food');
  const rows = lines.map((line) => consumableRow(line, book));
  return [
    { kind: 'heading', level: 2, text: 'Used up in each take', bookmark: 'Used up' },
    { kind: 'table', columns, rows, tight: true },
    ...(food ? [{ kind: 'paragraph', text: foodRule } as const] : []),
  ];
}

const foodRule: Inline = [
  bold('Food: '),
  'the crew will eat it, so label it. Ask every actor about allergies by name before they bite; keep a spit cup and water at hand.',
];

function consumableRow(line: PlanLine, book: Book): TableRow {
  const { need, element } = line;
  const eating = listEating(need.uses, element);
  const sums = need.uses.length === 0 || line.scenes.length === 0 ? noSums : sumCells(line, eating, book);
  return {
    cells: [
      { stack: [bold(need.name), ...besideWords(line, eating)] },
      ...sums,
      needWords(need, need.minimum),
      needWords(need, countNeeded(need)),
      line.status === 'done without' ? 'cut' : getWithPacks(line),
    ],
  };
}

const noSums = ['', '', '', '', '', ''];

/** Per take, scenes, setups, takes, rehearsals, spare. */
function sumCells({ need, element }: PlanLine, eating: readonly Use[], book: Book): string[] {
  const scenes = matchEntries(
    book.scenes,
    need.uses.map((use) => ({ id: use.scene, names: [] })),
  ).byThing;
  const counts = eating.map((use) => countTakes(book, element, scenes.get(use.scene) ?? null, [need.name]));
  const range = (pick: (count: TakeCount) => number) => [...new Set(counts.map(pick))].join(' or ');
  const pieces = [...new Set(eating.map((use) => use.count))].join(' or ');
  const isMeasured = need.unit === 'ml' || need.unit === 'g';
  return [
    element?.perTake?.text ?? pieces,
    [...eating]
      .sort((a, b) => a.storyOrder - b.storyOrder)
      .map((use) => use.slot.label)
      .join(', '),
    range((count) => count.setups),
    range((count) => count.takes),
    range((count) => count.rehearsals),
    isMeasured ? '30 % is lost' : formatPercent(spareOf(book, element)),
  ];
}

/** What the figures of the row do not say: what only lies there, what is here, what is missing, what is asked. */
function besideWords(line: PlanLine, eating: readonly Use[]): Inline[] {
  const { need } = line;
  const lying = need.uses.filter((use) => !eating.includes(use) && !use.carried);
  const most = Math.max(0, ...lying.map((use) => use.count));
  const short = shortWords(line);
  return [
    ...(most > 0 ? [`and ${most} that only lie there, sc ${lying.map((use) => use.slot.label).join(', ')}`] : []),
    ...(need.have > 0 ? [`${needWords(need, need.have)} here`] : []),
    ...(short === null ? [] : [bold(short)]),
    ...need.questions.map((question): Inline => [bold('? '), question]),
  ];
}
