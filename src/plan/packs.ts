import { type Ratio, ratio } from '../base/ratio.js';
import { slug } from '../base/slug.js';
import type { BookElement } from '../book/types.js';
import type { Need } from './need-types.js';
import { countPacks } from './per-take.js';

/** What is bought for one line: whole packs, rolls or pieces; or nothing, when it shares the packs of another line. */
export interface PackCount {
  readonly packs: number;
  readonly pooledWith: string | null;
  /** Whose price the packs have: the line's own, else the first of the pool that has one. */
  readonly priced: BookElement | null;
}

/** One line that is to be got. */
export interface PackedLine {
  readonly need: Need;
  readonly element: BookElement | null;
}

/**
 * Counts packs for all lines. Lines with one word under `pool` and packs of one size, supplier and price are added before anything
 * is rounded up; the first of them buys for all. Who says nothing of supplier or price joins the first that fits.
 */
export function countAllPacks(lines: readonly PackedLine[]): ReadonlyMap<string, PackCount> {
  const result = new Map<string, PackCount>();
  for (const group of groupByPool(lines)) {
    const [first, ...others] = group as [PackedLine, ...PackedLine[]];
    const priced = group.find(({ element }) => element?.price)?.element ?? first.element;
    result.set(first.need.id, { packs: countGroup(group), pooledWith: null, priced });
    for (const other of others)
      result.set(other.need.id, { packs: 0, pooledWith: first.need.id, priced: other.element });
  }
  return result;
}

function groupByPool(lines: readonly PackedLine[]): PackedLine[][] {
  const groups: PackedLine[][] = [];
  for (const line of lines) {
    const mates = groups.find((group) => group.every((one) => mayShare(one, line)));
    if (mates) mates.push(line);
    else groups.push([line]);
  }
  return groups;
}

/** True for two lines that may come out of one pack. */
function mayShare({ element: one, need }: PackedLine, { element: other, need: wanted }: PackedLine): boolean {
  if (!one?.pool || one.pool !== other?.pool || need.toGet === 0 || wanted.toGet === 0) return false;
  return packKey(one) !== null && ['pack', 'supplier', 'price'].every((what) => isAlike(one, other, what as Shared));
}

/** What lines that share packs must agree in. */
export type Shared = 'pack' | 'supplier' | 'price';

/** True when two entries of the book say the same of it, or one of them nothing. */
export function isAlike(one: BookElement, other: BookElement, what: Shared): boolean {
  const key = { pack: packKey, supplier: supplierKey, price: priceKey }[what];
  const [mine, theirs] = [key(one), key(other)];
  return mine === theirs || (what !== 'pack' && (mine === null || theirs === null));
}

function packKey({ pack }: BookElement): string | null {
  return pack && `${pack.unit}/${pack.amount.over}/${pack.amount.under}`;
}

function supplierKey({ from }: BookElement): string | null {
  return from === null ? null : slug(from);
}

function priceKey({ price, per }: BookElement): string | null {
  return price === null ? null : `${price.minor} ${price.currency} ${per}`;
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
