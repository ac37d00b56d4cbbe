import { formatDate } from '../../base/calendar-date.js';
import { formatAmount, formatMoney, plainAmount } from '../../base/money.js';
import { formatPercent, formatRatio } from '../../base/ratio.js';
import { lacksPack, rateWords } from '../../plan/line-money.js';
import { isHere } from '../../plan/line-status.js';
import type { PlanLine } from '../../plan/line-types.js';
import type { MoneyLine } from '../../plan/money-types.js';
import { listRoughCopies } from '../../plan/rough-copies.js';
import { countNeeded, shortWords } from '../../plan/short-copies.js';
import { type Cell, joinCell } from '../csv/format-csv.js';
import { groupRow } from '../layout/group-row.js';
import { type Block, blank, bold, type Inline, knownWords, type TableRow, tick } from '../layout/kit.js';
import type { Production } from '../types.js';
import { amountWords, getWords, helperWords, narrowDate, sourceWords } from './plan-words.js';

const columns = [
  { head: '', width: 12 },
  { head: 'What', share: 3 },
  { head: 'Scenes', width: 48 },
  { head: 'First needed', width: 68 },
  { head: 'Need', width: 34 },
  { head: 'Have', width: 32 },
  { head: 'Get', width: 34 },
  { head: 'Packs', width: 40 },
  { head: 'Where from', share: 1.5 },
  { head: 'Cost', width: 54, align: 'right' },
  { head: 'Order by,\nbetter', width: 62 },
  { head: 'How far', width: 52 },
  { head: 'Paid by,\nreceipt', width: 56 },
] as const;

/** The purchase list with everything the book and the plan say: by department, one line a thing. */
export function planPurchaseBlocks({ plan, book }: Production, identity: string): Block[] {
  const departments = [...new Set(plan.lines.map((line) => line.department))];
  const rows = departments.flatMap((department) => [
    groupRow(department),
    ...plan.lines.filter((line) => line.department === department).map((line) => purchaseRow(line, book)),
  ]);
  const late = plan.lines.flatMap(({ name, dates }) =>
    [dates.tooLate, dates.workShort].flatMap((words): Inline[] => (words === null ? [] : [[bold(name), `: ${words}`]])),
  );
  const shipping = plan.money.lines.filter((line) => line.kind === 'shipping');
  return [
    { kind: 'heading', level: 1, text: `What to get for ${identity}`, bookmark: 'What to get' },
    {
      kind: 'paragraph',
      text: [
        `As of ${formatDate(plan.today)}. `,
        bold('Need'),
        ': what the takes and states ask for, with spares. ',
        bold('Order by'),
        ': the last day; below it the better one, a working day earlier. Shipping is counted once an order.',
      ],
    },
    ...(late.length > 0
      ? [
          {
            kind: 'frame',
            blocks: [
              { kind: 'paragraph', text: bold('Too late'), after: 1 },
              { kind: 'entries', entries: late },
            ],
          } as const,
        ]
      : []),
    { kind: 'table', columns, rows, tight: true },
    ...(shipping.length > 0
      ? [{ kind: 'entries', entries: shipping.map((line) => `${line.words}: ${formatMoney(line.amount)}`) } as const]
      : []),
  ];
}

function purchaseRow(line: PlanLine, book: Production['book']): TableRow {
  const { need, dates, element } = line;
  const done = line.status === 'here already' || line.status === 'checked' || line.status === 'ready';
  const known = line.known === null ? '' : knownWords({ known: line.known }, new Map());
  const rough = listRoughCopies(line);
  const what: Inline[] = [
    [bold(line.name), known === '' ? '' : ` ${known}`],
    ...(line.description ? [line.description] : []),
    ...(line.note ? [line.note] : []),
    ...line.remarks,
    ...[shortWords(line)].flatMap((short) => (short === null ? [] : [[bold(short)]])),
    ...(rough === null ? [] : [`and ${rough.words}`]),
  ];
  const first = dates.needed === null ? dates.neededFor : `${narrowDate(dates.needed)}\n${dates.neededFor}`;
  const packs = line.pooledWith !== null ? 'shared' : line.packText === null ? '' : `${line.packs} × ${line.packText}`;
  const from = [
    sourceWords(line.source.value),
    line.from ?? line.owner,
    line.secondSource === null ? null : `else ${line.secondSource}`,
  ].filter((part) => part !== null);
  return {
    cells: [
      done ? '' : tick,
      { stack: what },
      line.scenes.join(', '),
      first,
      need.uncounted ? bold('how many?') : amountWords(countNeeded(need), need.unit),
      String(need.have),
      bold(getWords(line)),
      packs,
      from.join(', '),
      line.cost
        ? { stack: [formatAmount(line.cost.home), ...foreignWords(line, book)] }
        : need.toGet > 0 && !['own', 'borrow', 'cut'].includes(line.source.value ?? '')
          ? blank(44)
          : '',
      dates.orderBy === null || isHere(element)
        ? ''
        : { stack: [bold(narrowDate(dates.orderBy)), narrowDate(dates.recommended)] },
      line.status,
      line.paid ? `${line.paidBy ? helperWords(line.paidBy, book) : ''} ${line.receipt ?? ''}` : '',
    ],
  };
}

/** What the price was before it was changed into the currency of the budget, and at which rate. */
function foreignWords({ cost }: PlanLine, book: Production['book']): string[] {
  const gross = cost?.gross ?? null;
  const rate = gross === null ? '' : rateWords(gross, book);
  return gross === null || rate === '' ? [] : [`${formatMoney(gross)}${rate}`];
}

const head = [
  'line',
  'name',
  'description',
  'department',
  'scenes',
  'first needed',
  'first needed for',
  'need at least',
  'need',
  'have',
  'to get',
  'unit',
  'pack size',
  'packs',
  'get',
  'source',
  'second source',
  'unit price',
  'currency',
  'price is for',
  'tax included',
  'tax',
  'deposit',
  'line cost',
  'budget currency',
  'rate',
  'rate date',
  'order by',
  'better',
  'latest hope',
  'ordered',
  'promised',
  'received',
  'state',
  'paid',
  'paid by',
  'receipt',
  'collect',
  'back',
  'note',
  'why',
];

/** The same as rows for a spreadsheet: amounts as plain decimals, dates as ISO 8601. */
export function planPurchaseRows({ plan, book }: Production): Cell[][] {
  const shipping = plan.money.lines.filter((line) => line.kind === 'shipping').map(shippingCells);
  return [head, ...plan.lines.map((line) => purchaseCells(line, book)), ...shipping];
}

/** Shipping is paid once an order: a row of its own, with nothing in the columns that belong to a thing. */
function shippingCells(line: MoneyLine): Cell[] {
  const known: Readonly<Record<string, Cell>> = {
    line: line.id,
    name: line.words,
    department: 'shipping',
    'line cost': plainAmount(line.amount),
    'budget currency': line.amount.currency,
    paid: line.paid.minor > 0 ? plainAmount(line.paid) : null,
  };
  return head.map((name) => known[name] ?? null);
}

function purchaseCells(line: PlanLine, book: Production['book']): Cell[] {
  const { need, dates, element } = line;
  const price = line.unitPrice;
  const tax = element?.tax ?? book.money.tax;
  const rate = book.money.rates.find((one) => one.currency === price?.currency) ?? null;
  return [
    line.id,
    line.name,
    line.description,
    line.department,
    joinCell(line.scenes),
    dates.needed,
    dates.neededFor,
    need.uncounted ? null : need.minimum,
    need.uncounted ? null : countNeeded(need),
    need.have,
    need.uncounted ? null : line.isHere ? 0 : need.toGet,
    need.unit,
    line.packText,
    arePacksKnown(line) ? line.packs : null,
    line.source.value,
    line.from ?? line.owner,
    line.secondSource,
    price ? plainAmount(price) : null,
    price?.currency ?? null,
    price ? line.per : null,
    price ? ((element?.taxIncluded ?? book.money.pricesIncludeTax.value) ? 'yes' : 'no') : null,
    price && tax ? formatPercent(tax) : null,
    line.deposit ? plainAmount(line.deposit) : null,
    line.cost ? plainAmount(line.cost.home) : null,
    line.cost ? line.cost.home.currency : null,
    rate ? formatRatio(rate.rate, 8) : null,
    rate?.on ?? null,
    dates.orderBy,
    dates.recommended,
    dates.latestHope,
    line.ordered,
    line.promised,
    line.received,
    line.status,
    line.paid ? plainAmount(line.paid) : null,
    line.paidBy,
    line.receipt,
    line.collect,
    line.back,
    joinCell([...(line.note ? [line.note] : []), ...line.remarks]),
    need.uncounted ? (need.questions[0] ?? null) : whyWords(line),
  ];
}

/** Why so many, next to the figure that counts: the book's own, when it has one. */
function whyWords(line: PlanLine): string {
  const { decided, recommended, recommendedReason, unit } = line.need;
  if (decided === null) return recommendedReason;
  const said = shortWords(line) ?? `the book says ${amountWords(decided, unit)}`;
  return decided === recommended ? said : `${said}; reckoned ${amountWords(recommended, unit)}: ${recommendedReason}`;
}

/** False while nobody says how many there are, or what one bottle, bag or roll holds. */
function arePacksKnown({ need, element, packText }: PlanLine): boolean {
  if (need.uncounted) return false;
  return packText !== null || (need.unit === 'piece' && !(element && lacksPack(element)));
}
