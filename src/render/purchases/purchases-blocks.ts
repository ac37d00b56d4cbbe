import type { PurchaseLine } from '../../plan/types.js';
import { groupRow } from '../layout/group-row.js';
import { type Block, blank, bold, type Inline, knownWords, type TableRow, tick } from '../layout/kit.js';

const columns = [
  { head: 'What', share: 3 },
  { head: 'Scenes, the\nfirst in bold', share: 1.2 },
  { head: 'In\nscript', width: 34 },
  { head: 'To get', width: 36 },
  { head: 'Used up in\neach take?', width: 64 },
  { head: 'Who uses it', share: 1.2 },
  { head: 'Source', width: 74 },
  { head: 'Price', width: 42 },
  { head: 'Ordered', width: 46 },
  { head: 'Received', width: 50 },
];

/** The purchase list on paper: by department, one line a thing, with boxes to tick and blanks to fill by hand. */
export function purchaseBlocks(purchases: readonly PurchaseLine[], identity: string): Block[] {
  const departments = [...new Set(purchases.map((line) => line.department))];
  const rows = departments.flatMap((department) => [
    groupRow(department),
    ...purchases.filter((line) => line.department === department).map(purchaseRow),
  ]);
  return [
    { kind: 'heading', level: 1, text: `What to get for ${identity}`, bookmark: 'What to get' },
    { kind: 'paragraph', text: introduction(purchases.length) },
    ...(rows.length > 0 ? [{ kind: 'table', columns, rows } as const] : []),
  ];
}

function introduction(count: number): Inline {
  if (count === 0) return 'The script names nothing to get. Mark things in brackets, or name them in a note.';
  return [
    `${count} ${count === 1 ? 'thing' : 'things'}. Ask at home and among friends before you buy. `,
    bold('In script'),
    ': the most that any one scene shows. ',
    bold('To get'),
    ': what you decide; a thing that each take uses up needs one for every take, and a spare.',
  ];
}

function purchaseRow(line: PurchaseLine): TableRow {
  return {
    cells: [
      whatCell(line),
      scenesCell(line),
      line.inScript === null ? '' : String(line.inScript),
      blank(32),
      line.usedUp ? 'yes' : [tick, ' yes  ', tick, ' no'],
      line.usedBy.join(', '),
      blank(70),
      blank(38),
      tick,
      tick,
    ],
  };
}

function scenesCell(line: PurchaseLine): Inline {
  const later = line.scenes.filter((scene) => scene !== line.firstScene);
  return [bold(line.firstScene), later.map((scene) => `, ${scene}`).join('')];
}

function whatCell(line: PurchaseLine): { stack: Inline[] } {
  const known = knownWords({ known: line.known }, new Map());
  const first: Inline = [bold(line.name), known === '' ? '' : ` ${known}`];
  const several = line.states.length > 1 ? 'in each of these states' : 'state';
  const states = line.states.length > 0 ? `${several}: ${line.states.join('; ')}` : '';
  const more = [line.description, states].filter((part): part is string => part !== null && part !== '');
  return { stack: [first, ...more] };
}
