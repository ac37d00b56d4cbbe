import {
  add,
  ceiling,
  formatPercent,
  formatRatio,
  larger,
  multiply,
  one,
  parsePercent,
  type Ratio,
  ratio,
} from '../base/ratio.js';
import { foldName } from '../base/slug.js';
import type { Book, BookElement, BookScene } from '../book/types.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';

/** How often a thing is used up in one scene: T takes of S setups that see it, and R rehearsals. */
export interface TakeCount {
  readonly takes: number;
  readonly setups: number;
  readonly rehearsals: number;
  /** T × S + R. */
  readonly times: number;
  /** `4 takes × 2 setups + 1 rehearsal`. */
  readonly words: string;
  /** The figures that nobody gave, in words. */
  readonly defaults: readonly string[];
}

/** Counts the times a scene uses a thing up, by what the book says of the thing, of the scene and its shots, and of all. */
export function countTakes(
  book: Book,
  element: BookElement | null,
  scene: BookScene | null,
  names: readonly string[] = [],
): TakeCount {
  const takes = element?.takes ?? scene?.takes ?? book.takes.value;
  const listed = countShots(scene, names);
  const setups = element?.setups ?? listed ?? book.setups.value;
  const rehearsals = element?.rehearsals ?? book.rehearsals.value;
  const defaults = [
    ...(element?.takes || scene?.takes || book.takes.given ? [] : [quantityDefaults.takes.words]),
    ...(element?.setups || listed || book.setups.given ? [] : [quantityDefaults.setups.words]),
    ...((element?.rehearsals ?? null) !== null || book.rehearsals.given ? [] : [quantityDefaults.rehearsals.words]),
  ];
  const words = `${counted(takes, 'take')} × ${counted(setups, 'setup')}${rehearsals > 0 ? ` + ${counted(rehearsals, 'rehearsal')}` : ''}`;
  return { takes, setups, rehearsals, times: takes * setups + rehearsals, words, defaults };
}

/** Setups of a scene's list of shots whose line names the thing, by its words whole; null when no line does. */
function countShots(scene: BookScene | null, names: readonly string[]): number | null {
  const forms = names.map((name) => ` ${foldName(name)} `);
  const lines = (scene?.shots ?? []).map((shot) => ` ${foldName(shot).replace(/[^\p{L}\p{N}'-]+/gu, ' ')} `);
  const seen = lines.filter((line) => forms.some((form) => line.includes(form))).length;
  return seen > 0 ? seen : null;
}

/** The share kept in reserve, and what is lost of a liquid: of the thing, else of the book. */
export function spareOf(book: Book, element: BookElement | null): Ratio {
  return element?.spare ?? book.spare.value;
}

/**
 * Pieces to have of what is used up: times × units, and the spare on it, which is never less than one whole piece unless it
 * is set to nothing. Rounded up once, at the end.
 */
export function countPieces(times: number, units: Ratio, spare: Ratio): number {
  const used = multiply(ratio(times), units);
  const reserve = spare.over === 0n ? ratio(0) : larger(multiply(used, spare), one);
  return ceiling(add(used, reserve));
}

/** Millilitres or grams to have: what the takes use, and what stays on walls, clothes and in the bottle. Rounded up. */
export function countMeasure(
  times: number,
  perTake: Ratio,
  loss: Ratio = parsePercent(quantityDefaults.liquidLoss.value) as Ratio,
): number {
  const used = multiply(ratio(times), perTake);
  return ceiling(add(used, multiply(used, loss)));
}

/** Packs to buy: never a part of one. */
export function countPacks(pieces: number, pack: Ratio): number {
  return ceiling({ over: BigInt(pieces) * pack.under, under: pack.over });
}

/** Batteries to have: for each practical on each day it is lit, twice as many in the cold. */
export function countBatteries(perPractical: number, practicals: number, days: number, coldDays: number): number {
  return perPractical * practicals * (days + coldDays);
}

/** `9 × 20 % spare`, for a reason. */
export function describeSpare(times: number, units: Ratio, spare: Ratio): string {
  const used = multiply(ratio(times), units);
  if (spare.over === 0n) return `${formatRatio(used)}, no spare`;
  const share = multiply(used, spare);
  const least = share.over < share.under;
  return least
    ? `${formatRatio(used)} + 1 whole piece to spare`
    : `${formatRatio(used)} + ${formatPercent(spare)} spare = ${formatRatio(add(used, share))}`;
}

/** `1 take`, `3 takes`. */
export function counted(count: number, word: string): string {
  return `${count} ${count === 1 ? word : `${word}s`}`;
}
