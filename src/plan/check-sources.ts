import type { Diagnostic } from '../base/diagnostic.js';
import { formatMoney } from '../base/money.js';
import { editDistance, findNearest } from '../base/nearest.js';
import { slug } from '../base/slug.js';
import type { Book, BookElement } from '../book/types.js';
import { sayPlan } from '../messages/plan.js';
import { isHere } from './line-status.js';
import type { PlanLine } from './line-types.js';
import { isAlike, type Shared } from './packs.js';
import type { Plan } from './plan-types.js';

/** A line of which the book says something. */
type SaidLine = PlanLine & { readonly element: BookElement };

/** What is doubtful about where things come from: own ones that nobody counted, and suppliers that the book does not list. */
export function checkSources(plan: Plan, book: Book): Diagnostic[] {
  const lines = plan.lines.filter((line): line is SaidLine => line.element !== null && line.status !== 'replaced');
  return [...lines.flatMap(checkOwn), ...checkSuppliers(lines, book), ...checkPools(lines)];
}

/** One is had by who says that it is one's own; of several, somebody must have counted. */
function checkOwn({ element, need, name }: SaidLine): Diagnostic[] {
  const wanted = need.decided ?? need.minimum;
  if (element.source !== 'own' || element.have > 0 || need.uncounted || wanted < 2 || isHere(element)) return [];
  return [sayPlan('plan-own-uncounted', { name, wanted }, element.at)];
}

/** A supplier may be any name; but one that is nearly one of the book is a slip, and of the others the delivery is not known. */
function checkSuppliers(lines: readonly SaidLine[], book: Book): Diagnostic[] {
  const listed = book.suppliers.flatMap(({ id, name }) => [slug(id), slug(name)]);
  const strangers = lines.filter(
    ({ element, supplierId }) => element.from !== null && supplierId === null && isOpen(element),
  );
  const near = strangers.flatMap((line) => {
    const from = line.element.from as string;
    const found = findNearest(slug(from), listed);
    return found !== null && editDistance(slug(from), found) * 3 <= found.length ? [{ line, from, found }] : [];
  });
  const slips = new Set(near.map(({ line }) => line));
  const names = (supplier: string) =>
    book.suppliers.find((one) => [slug(one.id), slug(one.name)].includes(supplier))?.id;
  return [
    ...near.map(({ line, from, found }) =>
      sayPlan('plan-supplier-near', { from, near: names(found) ?? found, name: line.name }, line.element.at),
    ),
    ...sayUnlisted(strangers.filter((line) => !slips.has(line) && isUndated(line))),
  ];
}

function sayUnlisted(lines: readonly SaidLine[]): Diagnostic[] {
  const [first] = lines;
  if (first === undefined) return [];
  const bySupplier = new Map<string, string[]>();
  for (const { element, name } of lines) {
    bySupplier.set(element.from as string, [...(bySupplier.get(element.from as string) ?? []), name]);
  }
  const names = [...bySupplier].map(([from, things]) => `"${from}" (${[...new Set(things)].join(', ')})`);
  return [sayPlan('plan-suppliers-unlisted', { names, example: slug(first.element.from as string) }, first.element.at)];
}

/** Lines under one word that cannot come out of one pack: other sizes, suppliers or prices. */
function checkPools(lines: readonly SaidLine[]): Diagnostic[] {
  const pools = new Map<string, SaidLine[]>();
  for (const line of lines) {
    const { pool } = line.element;
    if (pool !== null && line.pooledWith === null && line.need.toGet > 0)
      pools.set(pool, [...(pools.get(pool) ?? []), line]);
  }
  return [...pools].flatMap(([pool, buyers]) => {
    const [first, ...others] = buyers;
    const other = others.at(-1);
    if (!first || !other) return [];
    const what = shared.find((one) => others.some((line) => !isAlike(first.element, line.element, one)));
    if (what === undefined) return [];
    const named = buyers.map((line) => `"${line.name}" (${sharedWords(line, what)})`);
    return [
      sayPlan('plan-pool-prices', { pool, lines: named, what: what === 'pack' ? 'pack size' : what }, other.element.at),
    ];
  });
}

const shared: readonly Shared[] = ['pack', 'supplier', 'price'];

function sharedWords({ element, packText, from, unitPrice }: SaidLine, what: Shared): string {
  if (what === 'pack') return packText ?? 'no pack';
  if (what === 'supplier') return from ?? 'no supplier';
  return `${unitPrice === null ? 'no price' : formatMoney(unitPrice)} a ${element.per}`;
}

function isOpen(element: BookElement): boolean {
  return element.source !== 'cut' && element.source !== 'own' && !isHere(element);
}

/** True where usual days of delivery are counted, for nobody gave any. */
function isUndated({ element, need, dates }: SaidLine): boolean {
  return need.toGet > 0 && element.collect === null && element.ordered === null && !dates.deliveryDays.given;
}
