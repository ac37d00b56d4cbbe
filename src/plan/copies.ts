import type { BookElement } from '../book/types.js';
import { countCopies, nameCopies } from './copy-flow.js';
import type { Conversion, Use } from './need-types.js';
import { hoursBetween, nameSlot } from './shooting-order.js';
import { type ConversionGround, type ConversionTime, reckonConversion } from './state-conversion.js';

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
  const reckon = rememberConversions(ground);
  const canPass = (i: number, j: number) => obstacleTo(uses[i] as Use, uses[j] as Use, care, reckon) === null;
  const { copies: count, flow } = countCopies(asked, canPass);
  const names = nameCopies(asked, flow, (index) => (count === 1 ? label : `${label}-${index + 1}`));
  const conversions = uses.flatMap((earlier, i) =>
    uses.flatMap((later, j) => ((flow[i]?.[j] ?? 0) > 0 ? listConversion(earlier, later, names, i, j, reckon) : [])),
  );
  const blocks = uses.flatMap((use, j) => {
    const served = uses.reduce((sum, _, i) => sum + (flow[i]?.[j] ?? 0), 0);
    if (j === 0 || served >= use.count) return [];
    const reason = nearestBlock(uses, j, care, reckon);
    return reason === null ? [] : [reason];
  });
  return { count, copies: names, conversions, blocks: [...new Set(blocks)] };
}

/** The label that is written on the copies of a thing. */
export function labelCopies(name: string, book: BookElement | null): string {
  return book?.label ?? name.toUpperCase().replace(/[(),]/g, '').trim().replace(/\s+/g, '-');
}

type Reckon = (earlier: Use, later: Use) => ConversionTime | null;

/** The same two states meet again and again: each pair is reckoned once. */
function rememberConversions(ground: ConversionGround): Reckon {
  const known = new Map<string, ConversionTime | null>();
  return (earlier, later) => {
    const forward = earlier.storyOrder <= later.storyOrder;
    const key = JSON.stringify([earlier.stateOut, later.stateIn, forward]);
    const found = known.get(key);
    if (found !== undefined) return found;
    const time = reckonConversion(earlier.stateOut, later.stateIn, forward, ground);
    known.set(key, time);
    return time;
  };
}

type Obstacle = 'no way back' | 'days not fixed' | 'hours' | 'not known';

/** What keeps a copy of an earlier use from serving a later one; null when nothing does. */
function obstacleTo(earlier: Use, later: Use, care: Care, reckon: Reckon): Obstacle | null {
  const time = reckon(earlier, later);
  if (time === null) return 'no way back';
  const needed = care === 'at best' ? time.low : time.high;
  if (needed <= quickHours) return null;
  const there = hoursBetween(earlier.slot, later.slot);
  if (there === null) return care === 'at best' ? null : 'days not fixed';
  if (needed <= there) return null;
  return Number.isFinite(needed) ? 'hours' : 'not known';
}

function nearestBlock(uses: readonly Use[], j: number, care: Care, reckon: Reckon): string | null {
  for (let i = j - 1; i >= 0; i--) {
    const [earlier, later] = [uses[i] as Use, uses[j] as Use];
    const obstacle = obstacleTo(earlier, later, care, reckon);
    if (obstacle !== null) return explainObstacle(obstacle, earlier, later, care, reckon);
  }
  return null;
}

function explainObstacle(obstacle: Obstacle, earlier: Use, later: Use, care: Care, reckon: Reckon): string {
  const wants = `${nameSlot(later.slot)} wants it ${later.stateIn ?? 'as it first was'}`;
  const leaves = `${nameSlot(earlier.slot)}, shot before it, leaves it ${earlier.stateOut ?? 'as it was'}`;
  const time = reckon(earlier, later);
  const needed = (care === 'at best' ? time?.low : time?.high) ?? 0;
  const why: Record<Obstacle, string> = {
    'no way back': 'there is no way back',
    'days not fixed': 'no shooting days yet, so hours enough between them are not certain',
    hours: `${formatHours(hoursBetween(earlier.slot, later.slot) ?? 0)} there, ${formatHours(needed)} needed`,
    'not known': 'it is not known whether that can be undone',
  };
  return `${wants}, ${leaves}: ${why[obstacle]}`;
}

function listConversion(
  earlier: Use,
  later: Use,
  names: readonly string[][],
  i: number,
  j: number,
  reckon: Reckon,
): Conversion[] {
  const time = reckon(earlier, later);
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

/** `6 h`, `0.5 h`, for a reason. */
export function formatHours(hours: number): string {
  return `${Math.round(hours * 10) / 10} h`;
}
