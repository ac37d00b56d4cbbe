import { addDays, type CalendarDate } from '../base/calendar-date.js';
import { slug } from '../base/slug.js';
import { findSupplier } from '../book/to-entries.js';
import type { Book, BookElement, BookSupplier } from '../book/types.js';
import { listLabels } from '../breakdown/scene-label.js';
import type { Breakdown, ElementEntry } from '../breakdown/types.js';
import { categoryOf } from '../trade/categories.js';
import { listTests, type Occasion } from './first-need.js';
import { calendarOf } from './line-calendar.js';
import { countDates } from './line-dates.js';
import { costLine, countUnits, lacksPack } from './line-money.js';
import { isHere, isOwnShort, judgeStatus } from './line-status.js';
import type { LineCost, PlanLine } from './line-types.js';
import type { Need } from './need-types.js';
import { countAllPacks, type PackCount, type PackedLine } from './packs.js';
import { countBatteries } from './per-take.js';
import { listReadyOccasions } from './ready-states.js';
import type { ShootingOrder } from './shooting-order.js';
import { conversionGround } from './state-conversion.js';
import { lastWorkingDay, nextWorkingDay, type WorkCalendar } from './working-days.js';

/** What the lines of the plan are made from. */
export interface LineGround {
  readonly breakdown: Breakdown;
  readonly book: Book;
  readonly order: ShootingOrder;
  readonly today: CalendarDate;
  readonly labels: ReadonlyMap<string, string>;
  /** Things that another one stands in for, with the name of that one. */
  readonly replaced: ReadonlyMap<string, string>;
}

/** One need with what is known of it. */
export interface NeededThing extends PackedLine {
  readonly entry: ElementEntry | null;
  /** Days before its scenes on which another thing needs it. */
  readonly occasions?: readonly Occasion[];
}

/** The purchase list with everything the book says: one line for each thing, packs pooled, dates and money counted. */
export function makePlanLines(things: readonly NeededThing[], ground: LineGround): PlanLine[] {
  const packs = countAllPacks(things);
  const here = new Set(things.filter(({ element }) => isHere(element)).map(({ need }) => need.id));
  return things.map((thing) => {
    const pack = packs.get(thing.need.id) as PackCount;
    const buyer = pack.pooledWith ?? thing.need.id;
    return { ...makeLine(thing, pack, ground), isHere: here.has(thing.need.id) || here.has(buyer) };
  });
}

function makeLine(
  { need, element, entry, occasions }: NeededThing,
  pack: PackCount,
  ground: LineGround,
): Omit<PlanLine, 'isHere'> {
  const { book, order, today } = ground;
  const supplier = findSupplier(book.suppliers, element?.from ?? null);
  const firstDay = order.days.find((day) => day.slots.length > 0)?.day.date ?? null;
  const ready = listReadyOccasions(need, conversionGround(need, element, book.drier.value));
  const dates = countDates(
    { need, element, supplier, occasions: [...(occasions ?? []), ...ready] },
    { book, today, firstShootingDate: firstDay },
  );
  const hire =
    element?.source === 'hire' || element?.source === 'borrow'
      ? hireDates(element, need, dates.inHand, order, openingOf(element, supplier, book))
      : { collect: element?.collect ?? null, back: element?.back ?? null };
  const { priced } = pack;
  const { units, words } = priced
    ? countUnits(priced, need.toGet, pack.packs, hire.collect, hire.back)
    : { units: need.toGet, words: String(need.toGet) };
  const isPooled = pack.pooledWith !== null;
  return {
    id: need.id,
    need,
    element,
    supplierId: supplier?.id ?? null,
    name: need.name,
    description: entry?.description ?? null,
    known: entry?.known ?? null,
    department: entry ? categoryOf(entry.category).department : 'kit',
    scenes: entry ? listLabels(entry.scenes, ground.breakdown.scenes, ground.labels) : [],
    usedBy: entry?.by ?? [],
    source: { value: element?.source ?? null, given: (element?.source ?? null) !== null },
    from: supplier?.name ?? element?.from ?? null,
    secondSource: element?.secondSource ?? null,
    packText: element?.pack?.text ?? null,
    packs: pack.packs,
    pooledWith: pack.pooledWith,
    unitPrice: priced?.price ?? null,
    per: priced?.per ?? 'piece',
    cost: isPooled || ground.replaced.has(need.id) ? null : costOf(need, priced, units, words, book),
    deposit: depositOf(element, need),
    dates,
    status: ground.replaced.has(need.id) ? 'replaced' : judgeStatus(need, element, dates.expected, today),
    ...hire,
    ordered: element?.ordered ?? null,
    promised: element?.promised ?? null,
    received: element?.received ?? null,
    owner: element?.owner ?? null,
    paid: element?.paid ?? null,
    paidBy: element?.paidBy ?? null,
    receipt: element?.receipt ?? null,
    who: element?.who ?? null,
    box: element?.box ?? null,
    note: element?.note ?? null,
    remarks: [...listRemarks(need, element, ground.replaced), ...priceRemarks(priced)],
  };
}

/** What is had costs nothing; of what nobody has counted the cost is not known. */
function costOf(need: Need, element: BookElement | null, units: number, words: string, book: Book): LineCost | null {
  const isHad = element?.source === 'own' && !isOwnShort(need, element);
  if (element === null || need.uncounted || isHad || element.source === 'cut') return null;
  return costLine(element, units, words, book);
}

/** The deposit of all pieces that are out, those already fetched among them. */
function depositOf(element: BookElement | null, need: Need): LineCost['net'] | null {
  const each = element?.deposit ?? null;
  if (each === null) return null;
  const pieces = need.uncounted ? 1 : need.toGet || (need.decided ?? need.recommended);
  return { ...each, minor: each.minor * Math.max(1, pieces) };
}

/** What keeps a cost from being known. */
function priceRemarks(priced: BookElement | null): string[] {
  return priced && lacksPack(priced)
    ? ['no cost is counted until the book says under "pack" how much one bottle, bag or roll holds']
    : [];
}

/** More here than needed, what stands in for what. */
function listRemarks(need: Need, element: BookElement | null, replaced: ReadonlyMap<string, string>): string[] {
  const wanted = need.decided ?? need.recommended;
  const more = need.have - wanted;
  const shot = need.uses.filter((use) => use.slot.day !== null).map((use) => use.slot.label);
  const by = replaced.get(need.id);
  const scenes = shot.length > 0 ? `; ask before it is swapped in scenes already shot (${shot.join(', ')})` : '';
  return [
    ...(need.have > 0 && more > 0 && wanted > 0 ? [`${more} more than needed: keep as spare, or give back`] : []),
    ...(need.have > 0 && wanted === 0 ? [`no longer needed: give back or keep as spare`] : []),
    ...(need.uncounted && element?.price ? ['no cost is counted until it is known how many'] : []),
    ...(by ? [`${by} stands in for it${scenes}`] : []),
    ...(element?.replaces ? [`stands in for ${element.replaces.replace(/-/g, ' ')}`] : []),
  ];
}

/** The days on which the owner of a thing is open: a shop's, listed or not; null for whoever lends it as a friend. */
function openingOf(element: BookElement, supplier: BookSupplier | null, book: Book): WorkCalendar | null {
  return supplier === null && element.source !== 'hire' ? null : calendarOf(book, supplier);
}

/**
 * From when to when a hired or lent thing is out: as the book says, else from the day it must be in hand to the day after its
 * last scene, and never on a day on which its owner is shut. What no scene names (a ladder, towels) is out for the whole shoot.
 */
function hireDates(
  element: BookElement,
  need: Need,
  inHand: CalendarDate | null,
  order: ShootingOrder,
  calendar: WorkCalendar | null,
) {
  const slots = need.uses.length > 0 ? need.uses.map((use) => use.slot) : order.slots;
  const last =
    slots
      .map((slot) => slot.date)
      .filter((date) => date !== null)
      .sort()
      .at(-1) ?? null;
  const after = last === null ? null : addDays(last, 1);
  return {
    collect: element.collect ?? (inHand && calendar ? lastWorkingDay(inHand, calendar) : inHand),
    back: element.back ?? (after && calendar ? nextWorkingDay(after, calendar) : after),
  };
}

/** Batteries for everything that says how many it takes, one line for each kind. */
export function countAllBatteries(things: readonly NeededThing[], ground: LineGround): NeededThing[] {
  const kinds = new Map<string, BatteryKind>();
  for (const { need, element } of things) {
    const each = element?.batteries;
    if (!each) continue;
    const days = new Map(need.uses.map((use) => [use.slot.day ?? `scene ${use.scene}`, use]));
    const cold = [...days.values()].filter((use) => ground.order.bookScenes.get(use.scene)?.cold).length;
    const practicals = Math.max(1, ...need.uses.map((use) => use.count));
    const count = countBatteries(each.count, practicals, days.size, cold);
    const known = kinds.get(each.kind) ?? { count: 0, reasons: [], uses: [], occasions: [] };
    const reason = `${need.name}: ${each.count} × ${practicals} × ${days.size} days${cold > 0 ? `, ${cold} of them cold and counted twice` : ''}`;
    kinds.set(each.kind, {
      count: known.count + count,
      reasons: [...known.reasons, reason],
      uses: [...known.uses, ...need.uses],
      occasions: [...known.occasions, ...listTests(element, ` of ${need.name}`)],
    });
  }
  return [...kinds].map(([kind, counts]) => batteryLine(kind, counts, ground.book));
}

interface BatteryKind {
  readonly count: number;
  readonly reasons: readonly string[];
  readonly uses: Need['uses'];
  readonly occasions: readonly Occasion[];
}

function batteryLine(kind: string, { count, reasons, uses, occasions }: BatteryKind, book: Book): NeededThing {
  const id = `batteries-${slug(kind)}`;
  const element = book.kit.find((one) => one.id === id) ?? null;
  const have = element?.have ?? 0;
  const need: Need = {
    id,
    name: element?.name ?? `batteries ${kind}`,
    category: null,
    uses: [...uses].sort((a, b) => a.slot.index - b.slot.index),
    usedUp: true,
    uncounted: false,
    unit: 'piece',
    minimum: count,
    minimumReason: reasons.join('; '),
    recommended: count,
    recommendedReason: 'as the strict minimum',
    decided: element?.copies ?? null,
    have,
    toGet: Math.max(0, (element?.copies ?? count) - have),
    conversions: [],
    copies: [],
    states: [],
    questions: [],
  };
  return { need, element, entry: null, occasions };
}
