import type { CalendarDate } from '../base/calendar-date.js';
import type { Money } from '../base/money.js';
import { multiplyRounded, parsePercent, type Ratio } from '../base/ratio.js';
import type { Book, Choice } from '../book/types.js';
import type { Breakdown } from '../breakdown/types.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import { findStateChanges } from '../trade/state-changes.js';
import { layCash } from './cash-book.js';
import type { PlanDay } from './day-types.js';
import { isOwnShort } from './line-status.js';
import type { PlanLine } from './line-types.js';
import { listMoneyLines } from './money-lines.js';
import type { MoneyPlan } from './money-types.js';

/** Adds up what the film costs and lays the cash on days. Every total is the sum of lines that are in the result. */
export function planMoney(
  breakdown: Breakdown,
  book: Book,
  lines: readonly PlanLine[],
  days: readonly PlanDay[],
  today: CalendarDate,
): MoneyPlan {
  const currency = book.money.currency.value;
  const money = (minor: number): Money => ({ minor, currency });
  const listed = listMoneyLines(breakdown, book, lines, days);
  const sum = (pick: (line: (typeof listed)[number]) => number) =>
    listed.reduce((total, line) => total + pick(line), 0);
  const paid = sum((line) => line.paid.minor);
  const orderedUnpaid = sum((line) => (line.committed ? line.amount.minor - line.paid.minor : 0));
  const stillToGet = sum((line) => (line.committed ? 0 : line.amount.minor - line.paid.minor));
  const rate = chooseContingency(breakdown, book);
  const contingency = multiplyRounded(Math.max(0, orderedUnpaid + stillToGet), rate.choice.value);
  const forecast = paid + orderedUnpaid + stillToGet + contingency;
  const budget = book.money.budget;
  const cash = layCash(book, lines, listed, days, today);
  return {
    currency,
    currencyGiven: book.money.currency.given,
    budget,
    lines: listed,
    paid: money(paid),
    orderedUnpaid: money(orderedUnpaid),
    stillToGet: money(stillToGet),
    contingencyRate: rate.choice,
    contingencyReason: rate.reason,
    contingency: money(contingency),
    forecast: money(forecast),
    headroom: budget === null ? null : money(budget.minor - forecast),
    withoutPrice: lines.filter((line) => isWithoutPrice(line)).map((line) => line.name),
    ...cash,
  };
}

function isWithoutPrice(line: PlanLine): boolean {
  const source = line.source.value;
  return (
    line.need.toGet > 0 &&
    line.status !== 'replaced' &&
    line.cost === null &&
    line.paid === null &&
    line.pooledWith === null &&
    (source !== 'own' || isOwnShort(line.need, line.element)) &&
    source !== 'borrow' &&
    source !== 'cut' &&
    source !== 'make'
  );
}

function chooseContingency(breakdown: Breakdown, book: Book): { choice: Choice<Ratio>; reason: string } {
  if (book.money.contingency !== null) {
    return {
      choice: { value: book.money.contingency, given: true },
      reason: 'as the book says, on what is not yet paid',
    };
  }
  const hard = isHardShoot(breakdown);
  const row = hard ? quantityDefaults.hardContingency : quantityDefaults.contingency;
  return { choice: { value: parsePercent(row.value) as Ratio, given: false }, reason: row.words };
}

/** Water, an animal or a child: shoots that cost more than anyone thought. */
function isHardShoot(breakdown: Breakdown): boolean {
  const isWet = (state: string) => findStateChanges(state).some((row) => row.kind === 'wet');
  return (
    breakdown.cast.some((person) => person.minor) ||
    breakdown.elements.some(
      (element) => element.category === 'animals' || element.states.some((one) => isWet(one.state)),
    )
  );
}
