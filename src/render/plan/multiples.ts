import type { Book } from '../../book/types.js';
import type { PlanLine } from '../../plan/line-types.js';
import { counted } from '../../plan/per-take.js';
import type { Plan } from '../../plan/plan-types.js';
import { listRoughCopies } from '../../plan/rough-copies.js';
import { shortWords } from '../../plan/short-copies.js';
import { type Block, bold, type Inline, type TableRow } from '../layout/kit.js';
import { amountWords, getWords, needWords } from './plan-words.js';
import { stateChainBlocks } from './state-chains.js';

const columns = [
  { head: 'What', share: 1.3 },
  { head: 'At\nleast', width: 36 },
  { head: 'Better', width: 38 },
  { head: 'Why', share: 4.8 },
  { head: 'Have', width: 28 },
  { head: 'Get', width: 44 },
];

const enough = 'One of each is enough, as far as the script tells.';
const enoughBeside = 'One of each that is not used up is enough, as far as the script tells.';

/** How many copies of each thing, with the reason, and how its states begin and end. */
export function multiplesBlocks(plan: Plan, book: Book, isMine: (line: PlanLine) => boolean): Block[] {
  const lines = plan.lines.filter((line) => isMine(line) && line.department !== 'kit' && isWorthSaying(line));
  // What takes use up has a table of its own.
  const rows = lines.filter((line) => !line.need.usedUp).map(multipleRow);
  return [
    { kind: 'heading', level: 2, text: 'How many of each, and why', bookmark: 'How many' },
    {
      kind: 'paragraph',
      text: [
        'A change ',
        bold('on camera'),
        ' uses a copy in each take. A change ',
        bold('between scenes'),
        ' uses none, but each state needs its copy unless one can be turned into the next in time.',
      ],
    },
    rows.length > 0
      ? { kind: 'table', columns, rows, tight: true }
      : { kind: 'paragraph', text: lines.length > 0 ? enoughBeside : enough },
    ...stateChainBlocks(lines, book),
  ];
}

function isWorthSaying({ need, element, name }: PlanLine): boolean {
  return (
    need.minimum > 1 ||
    need.recommended > 1 ||
    need.states.length > 1 ||
    need.questions.length > 0 ||
    need.decided !== null ||
    listRoughCopies({ element, name }) !== null
  );
}

function multipleRow(line: PlanLine): TableRow {
  const { need, status } = line;
  const better = need.recommendedReason === 'as the strict minimum' ? [] : [[bold('Better: '), need.recommendedReason]];
  const decided = need.decided === null ? [] : [[bold('Decided: '), shortWords(line) ?? decidedWords(need)]];
  const copies = listRoughCopies(line);
  const rough = copies === null ? [] : [[bold('Beside them: '), copies.words]];
  const questions = need.questions.map((question): Inline => [bold('? '), question]);
  return {
    cells: [
      bold(need.name),
      needWords(need, need.minimum),
      needWords(need, need.recommended),
      { stack: [...(need.uncounted ? [] : [need.minimumReason, ...better]), ...decided, ...rough, ...questions] },
      status === 'done without' ? 'cut' : String(need.have),
      getWithPacks(line),
    ],
  };
}

/** How many to get, and in how many packs where the book says how much is in one. */
export function getWithPacks(line: PlanLine): string {
  const get = getWords(line);
  if (line.pooledWith !== null) return `${get}, shared pack`;
  return get === '?' || line.packText === null || line.packs === 0
    ? get
    : `${get}: ${counted(line.packs, 'pack')} of ${line.packText}`;
}

/** More than was reckoned means that the book knows something which the script does not say. */
function decidedWords({ decided, recommended, unit, usedUp, states }: PlanLine['need']): string {
  const words = amountWords(decided ?? 0, unit);
  const isMore = (decided ?? 0) > recommended && !usedUp && states.length < 2;
  return isMore ? `${words}; the script tells of no change that needs so many` : words;
}
