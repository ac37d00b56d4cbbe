import { formatMoney } from '../base/money.js';
import { type Ratio, ratio } from '../base/ratio.js';
import type { BookElement } from '../book/types.js';
import type { Need } from './need-types.js';
import { countPacks } from './per-take.js';

/** What is bought for one line: whole packs, rolls or pieces; or nothing, when it shares the packs of another line. */
export interface PackCount {
  readonly packs: number;
  readonly pooledWith: string | null;
  /** Whose price the packs have: the line's own, else the first of the pool that has one. */
  readonly priced: BookElement | null;
  /** Other prices in the pool, which do not count. */
  readonly otherPrices: readonly string[];
}

/** One line that is to be got. */
export interface PackedLine {
  readonly need: Need;
  readonly element: BookElement | null;
}

/**
 * Counts packs for all lines. Lines with one word under `pool` and packs of one size are added before anything is rounded
 * up; the first of them buys for all.
 */
export function countAllPacks(lines: readonly PackedLine[]): ReadonlyMap<string, PackCount> {
  const result = new Map<string, PackCount>();
  for (const group of groupByPool(lines)) {
    const [first, ...others] = group as [PackedLine, ...PackedLine[]];
    const prices = group.flatMap(({ element }) => (element?.price ? [{ element, price: element.price }] : []));
    const [counts, ...rest] = prices;
    const otherPrices = rest
      .filter(({ price }) => price.minor !== counts?.price.minor || price.currency !== counts.price.currency)
      .map(({ price }) => formatMoney(price));
    result.set(first.need.id, {
      packs: countGroup(group),
      pooledWith: null,
      priced: counts?.element ?? first.element,
      otherPrices: [...new Set(otherPrices)],
    });
    for (const other of others)
      result.set(other.need.id, { packs: 0, pooledWith: first.need.id, priced: other.element, otherPrices: [] });
  }
  return result;
}

function groupByPool(lines: readonly PackedLine[]): PackedLine[][] {
  const groups = new Map<string, PackedLine[]>();
  for (const line of lines) {
    const pack = line.element?.pack;
    const isPooled = line.element?.pool && pack && line.need.toGet > 0;
    const key = isPooled
      ? `${line.element.pool}/${pack.unit}/${pack.amount.over}/${pack.amount.under}`
      : `/${line.need.id}`;
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  return [...groups.values()];
}

function countGroup(group: readonly PackedLine[]): number {
  const pack = group[0]?.element?.pack ?? null;
  const pieces = group.reduce((sum, line) => sum + line.need.toGet, 0);
  if (pack === null) return pieces;
  if (pack.unit !== 'mm') return countPacks(pieces, pack.amount);
  const lengths = group.flatMap((line) => new Array<Ratio>(line.need.toGet).fill(pieceLength(line.element)));
  return cutLengths(lengths, pack.amount);
}

/** How long one piece is: as the book says, else what a take uses of it. */
function pieceLength(element: BookElement | null): Ratio {
  const perTake = element?.perTake?.unit === 'mm' ? element.perTake.amount : null;
  return element?.piece?.amount ?? perTake ?? ratio(1);
}

/**
 * Rolls needed to cut pieces of given lengths: each piece whole from one roll, the longest first, into the first roll with
 * room. For equal pieces this is pieces / floor(roll / piece), rounded up. A piece longer than a roll takes as many rolls as
 * it is long, for it must be joined.
 */
export function cutLengths(pieces: readonly Ratio[], roll: Ratio): number {
  const units = (value: Ratio) => value.over * roll.under;
  const sorted = [...pieces].sort((a, b) =>
    b.over * a.under > a.over * b.under ? 1 : b.over * a.under < a.over * b.under ? -1 : 0,
  );
  const scale = pieces.reduce((product, piece) => (product % piece.under === 0n ? product : product * piece.under), 1n);
  const room = roll.over * scale;
  const left: bigint[] = [];
  let joined = 0;
  for (const piece of sorted) {
    const length = (units(piece) * scale) / piece.under;
    if (length > room) joined += Number((length + room - 1n) / room);
    else {
      const at = left.findIndex((space) => space >= length);
      if (at < 0) left.push(room - length);
      else left[at] = (left[at] as bigint) - length;
    }
  }
  return left.length + joined;
}
