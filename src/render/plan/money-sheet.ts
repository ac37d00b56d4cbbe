import { formatAmount, formatMoney } from '../../base/money.js';
import { formatPercent } from '../../base/ratio.js';
import type { MoneyPlan } from '../../plan/money-types.js';
import { type Block, bold, type TableRow } from '../layout/kit.js';
import { dateWords } from './plan-words.js';

/** Budget against forecast, every line that makes it, and the cash day by day. */
export function moneyBlocks(money: MoneyPlan): Block[] {
  return [
    { kind: 'heading', level: 2, text: `Money, in ${money.currency}`, bookmark: 'Money' },
    totals(money),
    ...(money.withoutPrice.length > 0
      ? [
          {
            kind: 'paragraph',
            text: [
              bold(`${money.withoutPrice.length} things have no price yet`),
              ' and are not in the forecast: ',
              money.withoutPrice.slice(0, 12).join(', '),
              money.withoutPrice.length > 12 ? ' …' : '',
              '.',
            ],
          } as const,
        ]
      : []),
    { kind: 'heading', level: 3, text: 'What makes the forecast' },
    {
      kind: 'table',
      columns: [
        { head: 'Line', share: 4 },
        { head: 'Amount', width: 70, align: 'right' },
        { head: 'Paid', width: 70, align: 'right' },
        { head: 'Still open', width: 80, align: 'right' },
      ],
      rows: lineRows(money),
      tight: true,
    },
    { kind: 'heading', level: 3, text: 'Cash, day by day' },
    {
      kind: 'paragraph',
      text: 'Cash is not cost: a deposit is money that is away and comes back. What is not yet paid stands on the day it must be paid.',
    },
    {
      kind: 'table',
      columns: [
        { head: 'Day', width: 92 },
        { head: 'What', share: 3 },
        { head: 'Out or back', width: 76, align: 'right' },
        { head: 'Out in all', width: 76, align: 'right' },
      ],
      rows: cashRows(money),
      tight: true,
    },
  ];
}

function totals(money: MoneyPlan): Block {
  const row = (label: string, amount: string, words = ''): TableRow => ({ cells: [label, amount, words] });
  const peak =
    money.peak === null
      ? []
      : [
          row(
            'Peak cash',
            formatAmount(money.peak.out),
            `the most that is out at one time, on ${dateWords(money.peak.date)}, deposits among it`,
          ),
        ];
  const rows: TableRow[] = [
    ...(money.budget === null ? [] : [row('Budget', formatAmount(money.budget))]),
    row('Paid', formatAmount(money.paid)),
    row('Ordered, not paid', formatAmount(money.orderedUnpaid)),
    row('Still to get', formatAmount(money.stillToGet)),
    row(
      'Contingency',
      formatAmount(money.contingency),
      `${formatPercent(money.contingencyRate.value)} ${money.contingencyRate.given ? '' : '(assumed) '}of what is not yet paid`,
    ),
    { cells: [bold('Forecast'), bold(formatAmount(money.forecast)), 'the four lines above, together'] },
    ...(money.headroom === null
      ? []
      : [
          {
            cells: [
              bold(money.headroom.minor < 0 ? 'OVER BUDGET' : 'Headroom'),
              bold(formatAmount(money.headroom)),
              'budget less forecast',
            ],
          },
        ]),
    ...peak,
  ];
  return {
    kind: 'table',
    columns: [
      { head: '', width: 120 },
      { head: '', width: 84, align: 'right' },
      { head: '', share: 1 },
    ],
    rows,
    headed: false,
  };
}

function lineRows(money: MoneyPlan): TableRow[] {
  const rows = money.lines.map(
    (line): TableRow => ({
      cells: [
        line.words,
        formatAmount(line.amount),
        formatAmount(line.paid),
        formatAmount({ minor: line.amount.minor - line.paid.minor, currency: money.currency }),
      ],
    }),
  );
  const total = money.lines.reduce((sum, line) => sum + line.amount.minor, 0);
  const open = money.orderedUnpaid.minor + money.stillToGet.minor;
  return [
    ...rows,
    {
      cells: [
        bold('Together'),
        bold(formatAmount({ minor: total, currency: money.currency })),
        bold(formatAmount(money.paid)),
        bold(formatAmount({ minor: open, currency: money.currency })),
      ],
    },
  ];
}

function cashRows(money: MoneyPlan): TableRow[] {
  return money.cash.flatMap((day) =>
    day.moves.map(
      (move, index): TableRow => ({
        cells: [
          index === 0 ? dateWords(day.date) : '',
          move.words,
          formatMoneySigned(move.amount.minor, money.currency),
          index === day.moves.length - 1 ? bold(formatAmount(day.out)) : '',
        ],
      }),
    ),
  );
}

function formatMoneySigned(minor: number, currency: string): string {
  const text = formatMoney({ minor: Math.abs(minor), currency }).slice(currency.length + 1);
  return minor < 0 ? `back ${text}` : text;
}
