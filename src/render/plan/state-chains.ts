import type { Book } from '../../book/types.js';
import { copyWords } from '../../plan/copy-words.js';
import type { PlanLine } from '../../plan/line-types.js';
import { chainStates } from '../../plan/state-chain.js';
import { type Block, blank, bold, type TableRow } from '../layout/kit.js';

const columns = [
  { head: 'What', share: 1.3 },
  { head: 'State', share: 1.3 },
  { head: 'Starts', share: 1.6 },
  { head: 'Can be undone?', share: 1.4 },
  { head: 'Minutes to\nput back', width: 58 },
  { head: 'Which copies', share: 1.2 },
];

/** How each state begins, whether it can be undone and how fast, and which copies are in it. */
export function stateChainBlocks(lines: readonly PlanLine[], book: Book): Block[] {
  const rows = lines.flatMap((line) =>
    chainStates(line, book).map(
      (step, at): TableRow => ({
        cells: [
          at === 0 ? bold(line.name) : '',
          step.state,
          step.starts,
          step.undo,
          step.resetMinutes === null ? blank(34) : String(step.resetMinutes),
          step.copies.length > 0 && line.need.recommended > 1 ? copyWords(step.copies) : '',
        ],
        keepWithNext: at === 0 && line.need.states.length > 1,
      }),
    ),
  );
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', level: 3, text: 'How each state begins and ends' },
    { kind: 'table', columns, rows, tight: true },
  ];
}
