import { formatMoney, type Money } from '../base/money.js';
import { findSupplier } from '../book/to-entries.js';
import type { Book, BookElement, BookSupplier } from '../book/types.js';
import type { Breakdown } from '../breakdown/types.js';
import type { PlanDay } from './day-types.js';
import { countHeads } from './head-count.js';
import { rateWords, toHome } from './line-money.js';
import type { PlanLine } from './line-types.js';
import type { MoneyLine } from './money-types.js';
import { counted } from './per-take.js';
import { listRoughCopies } from './rough-copies.js';

/** Every line of the forecast: things, their raw material, shipping once an order, refunds, and what no line of the script causes. */
export function listMoneyLines(
  breakdown: Breakdown,
  book: Book,
  lines: readonly PlanLine[],
  days: readonly PlanDay[],
): MoneyLine[] {
  const things = lines.flatMap((line) => thingLine(line, book));
  const rough = lines.flatMap((line) => roughLine(line, book));
  const refunds = lines.flatMap((line) => refundLine(line, book));
  const materials = lines.flatMap((line) => materialLines(line, book));
  return [
    ...things,
    ...rough,
    ...materials,
    ...shippingLines(book, lines),
    ...otherLines(breakdown, book, days),
    ...refunds,
  ];
}

function thingLine(line: PlanLine, book: Book): MoneyLine[] {
  const paid = line.paid === null ? null : toHome(line.paid, book);
  const cost = line.cost?.home ?? null;
  if (line.status === 'done without' && paid === null) return [];
  if (cost === null && paid === null) return [];
  const currency = book.money.currency.value;
  const amount = priceOf(line, cost, paid, book);
  return [
    {
      id: line.id,
      words: line.cost ? `${line.name}: ${line.cost.words}` : line.name,
      kind: 'thing',
      amount: { minor: amount, currency },
      paid: paid ?? { minor: 0, currency },
      committed: line.ordered !== null || line.received !== null,
    },
  ];
}

/** Stand-ins and background copies, where the book has a price for them. */
function roughLine(line: PlanLine, book: Book): MoneyLine[] {
  const rough = line.status === 'done without' ? null : listRoughCopies(line);
  if (rough === null || rough.cost === null) return [];
  const amount = toHome(rough.cost, book);
  const nothing = { minor: 0, currency: amount.currency };
  const words = `${line.name}: ${rough.words}${rateWords(rough.cost, book)}`;
  return [{ id: `${line.id}/rough`, words, kind: 'thing', amount, paid: nothing, committed: false }];
}

/** What a line costs in the end: the price, or what was paid where that was more, or where nothing is open any more. */
function priceOf(line: PlanLine, cost: Money | null, paid: Money | null, book: Book): number {
  const owed = line.element?.owed ?? null;
  if (owed !== null) return (paid?.minor ?? 0) + toHome(owed, book).minor;
  return isSettled(line) ? (paid?.minor ?? 0) : Math.max(cost?.minor ?? 0, paid?.minor ?? 0);
}

/** Paid, and here or with its receipt: what was paid is then the price. A deposit on an order is no full payment. */
function isSettled({ element, paid, received, receipt }: PlanLine): boolean {
  return paid !== null && (received !== null || receipt !== null) && !element?.problem;
}

function materialLines(line: PlanLine, book: Book): MoneyLine[] {
  const currency = book.money.currency.value;
  return (line.element?.materials ?? []).flatMap((material, index): MoneyLine[] => {
    const paid = material.paid === null ? 0 : toHome(material.paid, book).minor;
    const price = material.price;
    const cost = price === null ? 0 : toHome({ ...price, minor: price.minor * material.pieces }, book).minor;
    if (price === null && material.paid === null) return [];
    const words = `${material.what} for ${line.name}${price === null ? '' : `: ${material.pieces} × ${formatMoney(price)}`}`;
    const committed = material.ordered !== null || material.received !== null;
    const amount = { minor: material.paid === null ? cost : paid, currency };
    return [
      { id: `${line.id}/${index + 1}`, words, kind: 'material', amount, paid: { minor: paid, currency }, committed },
    ];
  });
}

function refundLine(line: PlanLine, book: Book): MoneyLine[] {
  const refund = line.element?.refund ?? null;
  if (refund === null) return [];
  const home = toHome(refund, book);
  const back = { minor: -home.minor, currency: home.currency };
  return [
    {
      id: `${line.id}/refund`,
      words: `refund for ${line.name}`,
      kind: 'refund',
      amount: back,
      paid: back,
      committed: true,
    },
  ];
}

/** Shipping once for each order: what was ordered from one supplier on one date, and what is still to be ordered there. */
function shippingLines(book: Book, lines: readonly PlanLine[]): MoneyLine[] {
  const orders = new Map<string, { supplier: BookSupplier; ordered: string | null; goods: number; paid: boolean }>();
  for (const part of lines.flatMap((line) => shippedParts(line, book))) {
    const supplier = findSupplier(book.suppliers, part.from);
    if (!supplier || supplier.shipping === null) continue;
    const key = `${supplier.id}/${part.ordered ?? 'open'}`;
    const order = orders.get(key) ?? { supplier, ordered: part.ordered, goods: 0, paid: true };
    orders.set(key, { ...order, goods: order.goods + part.cost.minor, paid: order.paid && part.paid });
  }
  return [...orders].flatMap(([key, { supplier, ordered, goods, paid }]): MoneyLine[] => {
    const free = supplier.freeFrom === null ? null : toHome(supplier.freeFrom, book).minor;
    if (free !== null && goods >= free) return [];
    const amount = toHome(supplier.shipping as Money, book);
    const words = `shipping, ${supplier.name}${ordered === null ? '' : `, order of ${ordered}`}`;
    return [
      {
        id: `shipping/${key}`,
        words,
        kind: 'shipping',
        amount,
        // Nobody pays the goods of an order and not its shipping.
        paid: { minor: paid && ordered !== null ? amount.minor : 0, currency: amount.currency },
        committed: ordered !== null,
      },
    ];
  });
}

interface ShippedPart {
  readonly from: string | null;
  readonly ordered: string | null;
  readonly cost: Money;
  readonly paid: boolean;
}

function shippedParts(line: PlanLine, book: Book): ShippedPart[] {
  const element: BookElement | null = line.element;
  const materials = (element?.materials ?? []).flatMap((material) =>
    material.price
      ? [
          {
            from: material.from,
            ordered: material.ordered,
            paid: material.paid !== null,
            cost: toHome({ ...material.price, minor: material.price.minor * material.pieces }, book),
          },
        ]
      : [],
  );
  const isShipped = line.cost !== null && line.packs > 0 && line.source.value !== 'hire' && line.source.value !== 'cut';
  return [
    ...(isShipped
      ? [
          {
            from: line.from,
            ordered: line.ordered,
            paid: isSettled(line),
            cost: (line.cost as NonNullable<typeof line.cost>).home,
          },
        ]
      : []),
    ...materials,
  ];
}

function otherLines(breakdown: Breakdown, book: Book, days: readonly PlanDay[]): MoneyLine[] {
  return book.money.otherCosts.map((other, index): MoneyLine => {
    const shares = shareDays(other.per, breakdown, book, days);
    const times = other.per === 'once' ? 1 : shares.reduce((sum, one) => sum + one, 0);
    const each = toHome(other.cost, book);
    const paid = other.paid === null ? 0 : toHome(other.paid, book).minor;
    const amount = { minor: Math.max(each.minor * times, paid), currency: each.currency };
    const per =
      other.per === 'once'
        ? ''
        : other.per === 'day'
          ? `: ${times} days × ${formatMoney(each)}`
          : `: ${times} heads over ${counted(days.length, 'day')} (cast, background, helpers and you) × ${formatMoney(each)}`;
    return {
      id: `other/${index + 1}`,
      words: `${other.what}${per}`,
      kind: 'other',
      amount,
      paid: { minor: paid, currency: each.currency },
      committed: false,
      ...(other.per === 'once' ? {} : { byDay: shares.map((share) => each.minor * share) }),
    };
  });
}

/** How many times a cost falls on each shooting day. */
function shareDays(
  per: Book['money']['otherCosts'][number]['per'],
  breakdown: Breakdown,
  book: Book,
  days: readonly PlanDay[],
): number[] {
  return days.map((day) => (per === 'head and day' ? countHeads(day, breakdown, book) : 1));
}
