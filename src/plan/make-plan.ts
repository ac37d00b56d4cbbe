import { parseCalendarDate } from '../base/calendar-date.js';
import type { Diagnostic } from '../base/diagnostic.js';
import { reportStrangers } from '../book/add-to-book.js';
import { matchEntries } from '../book/match-entries.js';
import type { Book, BookElement } from '../book/types.js';
import { labelScenes } from '../breakdown/scene-label.js';
import type { Breakdown, ElementEntry } from '../breakdown/types.js';
import { categoryOf } from '../trade/categories.js';
import { watchAllergies } from './allergy-watch.js';
import { listBackground } from './background.js';
import { checkPlan } from './check-plan.js';
import { trackContinuity } from './continuity.js';
import { listDefaults } from './defaults.js';
import { findMessFirst } from './mess-first.js';
import { planMoney } from './money-plan.js';
import { tellNamesakesApart } from './namesakes.js';
import { listOvernight } from './overnight.js';
import { countAllBatteries, makePlanLines, type NeededThing } from './plan-lines.js';
import type { Plan } from './plan-types.js';
import { listPurchases } from './purchase-lines.js';
import { countKit, countNeed } from './quantities.js';
import { planDays } from './shooting-days.js';
import { orderShooting, type ShootingOrder } from './shooting-order.js';
import { listTasks } from './tasks.js';
import { listAppearances } from './uses.js';

/*
 * The plan, phase by phase. Each phase is one call and rests on the ones above it.
 *
 *   breakdown ─┬─ 1 order ─┬─ 2 needs ── 3 lines ─┬─ 5 money ─┐
 *   book ──────┘           ├─ 4 days ─────────────┤           ├─ 8 defaults, messages
 *                          └─ 6 continuity        └─ 7 tasks ─┘
 */

/**
 * Plans how a film is got, made, paid and shot. `today` is an ISO date: what lies before it is late. Throws RangeError when
 * it is none, for that is a mistake of the caller; every mistake of the filmmaker is a message.
 */
export function makePlan(breakdown: Breakdown, book: Book, today: string): { plan: Plan; messages: Diagnostic[] } {
  const date = parseCalendarDate(today);
  if (date === null) throw new RangeError(`not a calendar date: ${today}`);

  // 1. The scenes in the order they are shot.
  const { order, messages } = orderShooting(breakdown, book);
  // 2. How many of each thing, in which states, with what conversions.
  const things = listThings(breakdown, book, order);
  // 3. What to get: packs, dates, cost and state of each line.
  const ground = {
    breakdown,
    book,
    order,
    today: date,
    labels: labelScenes(breakdown.scenes),
    replaced: listReplaced(book),
  };
  const lines = makePlanLines([...things, ...countAllBatteries(things, ground)], ground);
  // 4. The shooting days: load, rest, moves, hours of minors, light.
  const days = planDays(breakdown, book, order);
  // 5. Money: forecast, and cash day by day.
  const money = planMoney(breakdown, book, lines, days, date);
  // 6. Continuity in both orders, and what must dry or change overnight.
  const tracks = trackContinuity(breakdown, order);
  const needs = things.map((thing) => thing.need);
  const overnight = listOvernight(needs);
  // 7. Everything to do, by date.
  const tasks = listTasks(breakdown, book, lines, days, overnight, date);
  // 8. What was assumed, and what speaks against the plan.
  const plan: Plan = {
    title: breakdown.title,
    draft: breakdown.draft,
    today: date,
    slots: order.slots,
    days,
    unscheduled: order.unscheduled,
    needs,
    lines,
    money,
    tracks,
    overnight,
    messes: findMessFirst(breakdown, needs, order),
    allergies: watchAllergies(breakdown, book, lines),
    background: listBackground(breakdown, book),
    tasks,
    defaults: listDefaults(book, lines, days, money),
  };
  const found = [...messages, ...reportStrangers(book, breakdown), ...checkPlan(plan, book)];
  return { plan, messages: found.map((message) => ({ file: book.file, ...message })) };
}

/** Everything to be got: elements of the script that are not refused, implied ones only when accepted, and the kit. */
function listThings(breakdown: Breakdown, book: Book, order: ShootingOrder): NeededThing[] {
  const appearances = listAppearances(breakdown);
  const decisions = matchEntries(book.elements, breakdown.elements).byThing;
  const refused = new Set(book.refused.map((one) => one.id));
  const entries = new Map(breakdown.elements.map((entry) => [entry.id, entry]));
  const listed = listPurchases(breakdown);
  const isListed = new Set(listed.map((one) => one.id));
  // What is doubtful is got once the book says how: that is how it is accepted.
  const accepted = breakdown.elements.filter(
    (one) => !isListed.has(one.id) && isAccepted(one, decisions.get(one.id)) && categoryOf(one.category).bought,
  );
  const ids = [...listed, ...accepted].map((one) => one.id).filter((id) => !refused.has(id));
  const apart = tellNamesakesApart(
    ids.map((id) => entries.get(id) as ElementEntry),
    book.kit.flatMap(({ name }) => name ?? []),
  );
  const elements = ids.map((id): NeededThing => {
    const entry = entries.get(id) as ElementEntry;
    const element = decisions.get(id) ?? null;
    const ground = { breakdown, book, order, name: apart.get(id) ?? entry.name };
    return { need: countNeed(entry, appearances.get(id) ?? [], element, ground), element, entry };
  });
  const isBatteries = (id: string) =>
    id.startsWith('batteries-') && book.elements.some((one) => one.batteries !== null);
  const kit = book.kit
    .filter((one) => !isBatteries(one.id))
    .map((one): NeededThing => ({ need: countKit(one), element: one, entry: null }));
  return [...elements, ...kit];
}

/** An entry accepts what the words imply; of what is asked about, the book lists every name, so that only a decision accepts it. */
function isAccepted({ known }: ElementEntry, entry: BookElement | undefined): boolean {
  if (!entry) return false;
  return known === 'implied' || entry.source !== null || entry.copies !== null || entry.perTake !== null;
}

/** Things that another one stands in for, with its name. */
function listReplaced(book: Book): ReadonlyMap<string, string> {
  return new Map(
    [...book.elements, ...book.kit].flatMap((one) =>
      one.replaces === null ? [] : [[one.replaces, one.name ?? one.id.replace(/-/g, ' ')] as const],
    ),
  );
}
