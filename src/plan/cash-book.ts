import { addDays, type CalendarDate, latest } from '../base/calendar-date.js';
import type { Money } from '../base/money.js';
import { findSupplier } from '../book/to-entries.js';
import type { Book, OtherCost } from '../book/types.js';
import type { PlanDay } from './day-types.js';
import { toHome } from './line-money.js';
import type { PlanLine } from './line-types.js';
import type { CashDay, CashMove, MoneyLine, MoneyPlan } from './money-types.js';

/**
 * Lays all money on days: what was paid, what must be paid (never before today), deposits out and back. Peak cash is the
 * most that is out at the end of any one day: it can be more than the film costs, for a deposit is no cost.
 */
export function layCash(
  book: Book,
  lines: readonly PlanLine[],
  listed: readonly MoneyLine[],
  days: readonly PlanDay[],
  today: CalendarDate,
): Pick<MoneyPlan, 'depositsOutstanding' | 'cash' | 'peak'> {
  const currency = book.money.currency.value;
  const byId = new Map(lines.map((line) => [line.id, line]));
  const moves = [
    ...listed.flatMap((line) => payments(line, byId, book, days, today)),
    ...lines.flatMap((line) => deposits(line, book, days, today)),
  ].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  let out = 0;
  const cash: CashDay[] = [];
  for (const date of [...new Set(moves.map((move) => move.date))]) {
    const here = moves.filter((move) => move.date === date);
    out += here.reduce((sum, move) => sum + move.amount.minor, 0);
    cash.push({ date, moves: here, out: { minor: out, currency } });
  }
  const peak = cash.reduce<CashDay | null>(
    (most, day) => (most === null || day.out.minor > most.out.minor ? day : most),
    null,
  );
  const standing = moves
    .filter((move) => move.deposit && move.date <= today)
    .reduce((sum, move) => sum + move.amount.minor, 0);
  return {
    depositsOutstanding: { minor: standing, currency },
    cash,
    peak: peak ? { date: peak.date, out: peak.out } : null,
  };
}

function payments(
  line: MoneyLine,
  lines: ReadonlyMap<string, PlanLine>,
  book: Book,
  days: readonly PlanDay[],
  today: CalendarDate,
): CashMove[] {
  const dates = paymentDates(line, lines, book, days, today);
  const rest = line.amount.minor - line.paid.minor;
  const move = (date: CalendarDate, minor: number): CashMove[] =>
    minor === 0 ? [] : [{ date, words: line.words, amount: { minor, currency: line.amount.currency }, deposit: false }];
  if (line.byDay && days.length > 0) {
    const due = owedByDay(line.byDay, line.paid.minor);
    return [
      ...move(dates.paid, line.paid.minor),
      ...days.flatMap((day, index) => move(latest(day.date, today), due[index] ?? 0)),
    ];
  }
  const spread = dates.unpaid;
  const share = Math.trunc(rest / spread.length);
  return [
    ...move(dates.paid, line.paid.minor),
    // The first day takes what does not divide, so that the days add up to the line.
    ...spread.flatMap((date, index) => move(date, index === 0 ? rest - share * (spread.length - 1) : share)),
  ];
}

/** What is open on each day when what was paid is taken off the first ones. */
function owedByDay(shares: readonly number[], paid: number): number[] {
  let left = paid;
  return shares.map((share) => {
    const taken = Math.min(share, left);
    left -= taken;
    return share - taken;
  });
}

interface PaymentDates {
  readonly paid: CalendarDate;
  /** At least one date. */
  readonly unpaid: readonly CalendarDate[];
}

function paymentDates(
  line: MoneyLine,
  lines: ReadonlyMap<string, PlanLine>,
  book: Book,
  days: readonly PlanDay[],
  today: CalendarDate,
): PaymentDates {
  const fromToday = (date: CalendarDate | null | undefined) => (date ? latest(date, today) : today);
  if (line.kind === 'other') {
    const other = book.money.otherCosts[Number(line.id.split('/')[1]) - 1];
    const spread =
      other?.per === 'once' || days.length === 0
        ? [fromToday(restDue(other, days))]
        : days.map((day) => fromToday(day.date));
    return { paid: other?.on ?? today, unpaid: spread };
  }
  if (line.kind === 'shipping') {
    const [, supplier, ordered] = line.id.split('/');
    const mates = [...lines.values()].filter(
      (one) => one.supplierId === supplier || buysMaterial(one, supplier ?? '', book),
    );
    const open = mates
      .flatMap((one) => (one.supplierId === supplier ? [one.dates.recommended] : materialDates(one, supplier, book)))
      .filter((date) => date !== null)
      .sort()[0];
    const paid = ordered === 'open' ? today : (ordered as CalendarDate);
    return { paid, unpaid: [fromToday(ordered === 'open' ? open : (ordered as CalendarDate))] };
  }
  const [id = '', part] = splitId(line.id);
  const thing = lines.get(id);
  const material = line.kind === 'material' ? thing?.element?.materials[Number(part) - 1] : null;
  if (line.kind === 'refund') return { paid: thing?.element?.refundOn ?? today, unpaid: [today] };
  const paid = material ? (material.paidOn ?? material.ordered) : (thing?.element?.paidOn ?? thing?.ordered);
  const ofMaterial = material ? (thing?.dates.materials[Number(part) - 1]?.recommended ?? null) : null;
  const ofThing = line.committed
    ? (thing?.promised ?? null)
    : (thing?.dates.recommended ?? thing?.dates.inHand ?? null);
  const due = line.committed || ofMaterial === null ? ofThing : ofMaterial;
  return { paid: paid ?? today, unpaid: [fromToday(due)] };
}

/** The date in the book is that of what was paid; the rest is due when the shoot begins, for nothing says otherwise. */
function restDue(other: OtherCost | undefined, days: readonly PlanDay[]): CalendarDate | null {
  return other?.paid ? (days[0]?.date ?? null) : (other?.on ?? null);
}

/** When the raw material of one thing from one shop is to be ordered. */
function materialDates(line: PlanLine, supplier: string | undefined, book: Book): CalendarDate[] {
  return line.dates.materials
    .filter((one) => !one.ordered && findSupplier(book.suppliers, one.from)?.id === supplier)
    .map((one) => one.recommended);
}

function buysMaterial(line: PlanLine, supplier: string, book: Book): boolean {
  return (line.element?.materials ?? []).some(
    (material) => findSupplier(book.suppliers, material.from)?.id === supplier,
  );
}

function splitId(id: string): [string, string | null] {
  const at = id.lastIndexOf('/');
  return at < 0 ? [id, null] : [id.slice(0, at), id.slice(at + 1)];
}

function deposits(line: PlanLine, book: Book, days: readonly PlanDay[], today: CalendarDate): CashMove[] {
  if (line.deposit === null || line.source.value === 'cut') return [];
  const amount: Money = toHome(line.deposit, book);
  const out = line.collect ?? line.dates.inHand ?? line.dates.packed ?? today;
  const last = days.at(-1)?.date ?? null;
  const back = line.element?.depositReturned ?? line.back ?? (last ? addDays(last, 1) : null);
  const there: CashMove = { date: out, words: `deposit for ${line.name}`, amount, deposit: true };
  if (back === null) return [there];
  const again: CashMove = {
    date: latest(back, out),
    words: `deposit for ${line.name} comes back`,
    amount: { ...amount, minor: -amount.minor },
    deposit: true,
  };
  return [there, again];
}
