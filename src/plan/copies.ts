import type { BookElement } from '../book/types.js';
import { countCopies, nameCopies } from './copy-flow.js';
import type { Conversion, Use } from './need-types.js';
import { hoursBetween, nameSlot } from './shooting-order.js';
import { type ConversionGround, reckonConversion } from './state-conversion.js';

/** The copies that serve all uses of one thing, with each conversion on the way. */
export interface CopyPlan {
  readonly count: number;
  readonly copies: readonly (readonly string[])[];
  readonly conversions: readonly Conversion[];
  /** Why a new copy is needed where an earlier one cannot serve. */
  readonly blocks: readonly string[];
}

/** With hours at their best, or careful: hours at their worst, and no long conversion between days nobody has fixed. */
export type Care = 'at best' | 'careful';

/** What is done while the next scene is being lit: a reset, a tear, a wetting; no drying and no work. */
const quickHours = 0.5;

/** Finds the fewest copies for the uses of a thing in shooting order. */
export function planCopies(uses: readonly Use[], care: Care, ground: ConversionGround, label: string): CopyPlan {
  const asked = uses.map((use) => (care === 'at best' ? use.atLeast : use.advised));
  const canPass = (i: number, j: number) => blockedBy(uses[i] as Use, uses[j] as Use, care, ground) === null;
  const { copies: count, flow } = countCopies(asked, canPass);
  const names = nameCopies(asked, flow, (index) => (count === 1 ? label : `${label}-${index + 1}`));
  const conversions = uses.flatMap((earlier, i) =>
    uses.flatMap((later, j) => ((flow[i]?.[j] ?? 0) > 0 ? listConversion(earlier, later, names, i, j, ground) : [])),
  );
  const blocks = uses.flatMap((use, j) => {
    const served = uses.reduce((sum, _, i) => sum + (flow[i]?.[j] ?? 0), 0);
    if (j === 0 || served >= use.count) return [];
    const reason = nearestBlock(uses, j, care, ground);
    return reason === null ? [] : [reason];
  });
  return { count, copies: names, conversions, blocks: [...new Set(blocks)] };
}

/** The label that is written on the copies of a thing. */
export function labelCopies(name: string, book: BookElement | null): string {
  return book?.label ?? name.toUpperCase().replace(/\s+/g, '-');
}

function nearestBlock(uses: readonly Use[], j: number, care: Care, ground: ConversionGround): string | null {
  for (let i = j - 1; i >= 0; i--) {
    const reason = blockedBy(uses[i] as Use, uses[j] as Use, care, ground);
    if (reason !== null) return reason;
  }
  return null;
}

/** Why a copy of an earlier use cannot serve a later one, in words; null when it can. */
function blockedBy(earlier: Use, later: Use, care: Care, ground: ConversionGround): string | null {
  const time = reckonConversion(earlier.stateOut, later.stateIn, isForward(earlier, later), ground);
  const wants = `${nameSlot(later.slot)} wants it ${later.stateIn ?? 'as it first was'}`;
  const leaves = `${nameSlot(earlier.slot)}, shot before it, leaves it ${earlier.stateOut ?? 'as it was'}`;
  if (time === null) return `${wants}, ${leaves}: there is no way back`;
  const needed = care === 'at best' ? time.low : time.high;
  if (needed <= quickHours) return null;
  const there = hoursBetween(earlier.slot, later.slot);
  if (there === null) {
    if (care === 'at best') return null;
    return `${wants}, ${leaves}: no shooting days yet, so hours enough between them are not certain`;
  }
  if (needed <= there) return null;
  if (!Number.isFinite(needed)) return `${wants}, ${leaves}: it is not known whether that can be undone`;
  return `${wants}, ${leaves}: ${formatHours(there)} there, ${formatHours(needed)} needed`;
}

function listConversion(
  earlier: Use,
  later: Use,
  names: readonly string[][],
  i: number,
  j: number,
  ground: ConversionGround,
): Conversion[] {
  const time = reckonConversion(earlier.stateOut, later.stateIn, isForward(earlier, later), ground);
  if (time === null || (time.low === 0 && time.high === 0)) return [];
  const there = new Set(names[j]);
  const copies = (names[i] as string[]).filter((name) => there.has(name));
  return [
    {
      copies,
      from: earlier.stateOut ?? 'as it was',
      to: later.stateIn ?? 'as it first was',
      after: earlier.slot,
      before: later.slot,
      hoursNeeded: { low: time.low, high: Number.isFinite(time.high) ? time.high : time.low },
      hoursThere: hoursBetween(earlier.slot, later.slot),
      wayBack: time.wayBack,
    },
  ];
}

function isForward(earlier: Use, later: Use): boolean {
  return earlier.storyOrder <= later.storyOrder;
}

/** `6 h`, `0.5 h`, for a reason. */
export function formatHours(hours: number): string {
  return `${Math.round(hours * 10) / 10} h`;
}
