import type { CategoryName } from '../../trade/categories.js';
import { type Block, bold, type Inline } from '../layout/kit.js';
import type { RenderInput } from '../types.js';
import { notComparedWords, sinceWords } from './change-words.js';
import { helperLines } from './helper-changes.js';

/** Lines on a first page; the rest stands in the list of changes. */
const mostLines = 8;

/** What a first page says of the changes for its reader: the most costly, or plainly that there are none or that nothing was compared. */
export function changedSection(
  { comparison }: Pick<RenderInput, 'comparison'>,
  mine: ReadonlySet<CategoryName>,
): Block {
  return { kind: 'section', label: 'Changed', blocks: changedBlocks(comparison, mine) };
}

function changedBlocks(comparison: RenderInput['comparison'], mine: ReadonlySet<CategoryName>): Block[] {
  if (comparison.kind === 'not compared') return [entries([notComparedWords(comparison)])];
  const since = sinceWords(comparison.changes);
  const lines = helperLines(comparison.changes, mine);
  if (lines.length === 0) return [entries([[bold(`Nothing changed for you since ${since}.`)]])];
  const more = lines.length - mostLines;
  const shown = (more > 1 ? lines.slice(0, mostLines) : lines).map(markUrgent);
  const rest: Inline[] = more > 1 ? [`and ${more} more: see changes.md (ask for it).`] : [];
  const head: Inline = [bold(`Since ${since}`), ', the most costly first:'];
  return [entries([head]), { kind: 'changed', blocks: [entries([...shown, ...rest])] }];
}

function entries(list: readonly Inline[]): Block {
  return { kind: 'entries', entries: list };
}

/** Words in capitals at the head of a line stand in bold. */
function markUrgent(line: string): Inline {
  const urgent = /^(?:STOP|GET|DANGER)\b/.exec(line)?.[0];
  return urgent ? [bold(urgent), line.slice(urgent.length)] : line;
}
