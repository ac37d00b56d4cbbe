import type { PurchaseLine } from '../../plan/types.js';
import { categoryOf } from '../../trade/categories.js';
import { type Cell, joinCell } from '../csv/format-csv.js';

const head = [
  'department',
  'name',
  'description',
  'category',
  'scenes',
  'first scene',
  'states',
  'in script',
  'to get',
  'used up in each take? yes / no',
  'who uses it',
  'known',
  'source',
  'price',
  'ordered',
  'received',
];

/** The purchase list as rows, one thing to get a line; what only the filmmaker knows is left blank. */
export function purchaseRows(purchases: readonly PurchaseLine[]): Cell[][] {
  return [head, ...purchases.map(purchaseCells)];
}

function purchaseCells(line: PurchaseLine): Cell[] {
  return [
    line.department,
    line.name,
    line.description,
    categoryOf(line.category).label,
    joinCell(line.scenes),
    line.firstScene,
    joinCell(line.states),
    line.inScript,
    null,
    line.usedUp ? 'yes' : null,
    joinCell(line.usedBy),
    line.known,
    null,
    null,
    null,
    null,
  ];
}
