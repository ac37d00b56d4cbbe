import { formatMoney, type Money } from '../base/money.js';
import { findSupplier } from '../book/to-entries.js';
import type { Book, BookElement, BookSupplier } from '../book/types.js';
import type { Breakdown } from '../breakdown/types.js';
import type { PlanDay } from './day-types.js';
import { toHome } from './line-money.js';
import type { PlanLine } from './line-types.js';
import type { MoneyLine } from './money-types.js';
import { counted } from './per-take.js';

/** Every line of the forecast: things, their raw material, shipping once an order, refunds, and what no line of the script causes. */
export function listMoneyLines(
  breakdown: Breakdown,
  book: Book,
  lines: readonly PlanLine[],
  days: readonly PlanDay[],
): MoneyLine[] {
  const things = lines.flatMap((line) => thingLine(line, book));
  const refunds = lines.flatMap((line) => refundLine(line, book));
  const materials = lines.flatMap((line) => materialLines(line, book));
  return [...things, ...materials, ...shippingLines(book, lines), ...otherLines(breakdown, book, days), ...refunds];
}

function thingLine(line: PlanLine, book: Book): MoneyLine[] {
  const paid = line.paid === null ? null : toHome(line.paid, book);
  const cost = line.cost?.home ?? null;
  if (line.status === 'done without' && paid === null) return [];
  if (cost === null && paid === null) return [];
  const currency = book.money.currency.value;
  // What was paid may be more than the price said; then it is the price.
  const amount = Math.max(cost?.minor ?? 0, paid?.minor ?? 0);
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

function materialLines(line: PlanLine, book: Book): MoneyLine[] {
  const currency = book.money.currency.value;
  return (line.element?.materials ?? []).flatMap((material, index): MoneyLine[] => {
    const paid = material.paid === null ? 0 : toHome(material.paid, book).minor;
    const price = material.price;
    const cost = price === null ? 0 : toHome({ ...price, minor: price.minor * material.pieces }, book).minor;
    if (price === null && material.paid === null) return [];
    const words = `${material.what} for ${line.name}${price === null ? '' : `: ${material.pieces} × ${formatMoney(price)}`}`;
    const committed = material.ordered !== null || material.received !== null;
    const amount = { minor: Math.max(cost, paid), currency };
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
  const orders = new Map<string, { supplier: BookSupplier; ordered: string | null; goods: number }>();
  for (const part of lines.flatMap((line) => shippedParts(line, book))) {
    const supplier = findSupplier(book.suppliers, part.from);
    if (!supplier || supplier.shipping === null) continue;
    const key = `${supplier.id}/${part.ordered ?? 'open'}`;
    const order = orders.get(key) ?? { supplier, ordered: part.ordered, goods: 0 };
    orders.set(key, { ...order, goods: order.goods + part.cost.minor });
  }
  return [...orders].flatMap(([key, { supplier, ordered, goods }]): MoneyLine[] => {
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
        paid: { minor: 0, currency: amount.currency },
        committed: ordered !== null,
      },
    ];
  });
}

function shippedParts(line: PlanLine, book: Book): { from: string | null; ordered: string | null; cost: Money }[] {
  const element: BookElement | null = line.element;
  const materials = (element?.materials ?? []).flatMap((material) =>
    material.price
      ? [
          {
            from: material.from,
            ordered: material.ordered,
            cost: toHome({ ...material.price, minor: material.price.minor * material.pieces }, book),
          },
        ]
      : [],
  );
  const isShipped = line.cost !== null && line.packs > 0 && line.source.value !== 'hire' && line.source.value !== 'cut';
  return [
    ...(isShipped
      ? [{ from: line.from, ordered: line.ordered, cost: (line.cost as NonNullable<typeof line.cost>).home }]
      : []),
    ...materials,
  ];
}

function otherLines(breakdown: Breakdown, book: Book, days: readonly PlanDay[]): MoneyLine[] {
  return book.money.otherCosts.map((other, index): MoneyLine => {
    const heads = days.reduce((sum, day) => sum + countHeads(day, breakdown, book), 0);
    const times = other.per === 'once' ? 1 : other.per === 'day' ? days.length : heads;
    const each = toHome(other.cost, book);
    const paid = other.paid === null ? 0 : toHome(other.paid, book).minor;
    const amount = { minor: Math.max(each.minor * times, paid), currency: each.currency };
    const per =
      other.per === 'once'
        ? ''
        : other.per === 'day'
          ? `: ${times} days × ${formatMoney(each)}`
          : `: ${times} heads over ${counted(days.length, 'day')} × ${formatMoney(each)}`;
    return {
      id: `other/${index + 1}`,
      words: `${other.what}${per}`,
      kind: 'other',
      amount,
      paid: { minor: paid, currency: each.currency },
      committed: false,
    };
  });
}

/** People on set on one day: the cast seen in its scenes, and every helper. */
export function countHeads(day: PlanDay, breakdown: Breakdown, book: Book): number {
  const scenes = new Set(day.scenes.map((slot) => slot.scene));
  const seen = new Set(
    breakdown.scenes
      .filter((scene) => scenes.has(scene.id))
      .flatMap((scene) => scene.cast.filter((person) => person.presence === 'seen').map((person) => person.id)),
  );
  return seen.size + book.helpers.length;
}
