import { type Ratio, ratio } from '../base/ratio.js';
import type { BookElement } from '../book/types.js';
import { quantityDefaults } from '../trade/quantity-defaults.js';
import type { Need, Use } from './need-types.js';
import { counted, countMeasure, countPieces, describeSpare, type TakeCount } from './per-take.js';
import { nameSlot } from './shooting-order.js';

/** How many there must be, and why. */
export type Figures = Pick<
  Need,
  'unit' | 'minimum' | 'minimumReason' | 'recommended' | 'recommendedReason' | 'conversions' | 'copies'
>;

/** Counts what each take uses up: pieces, cut lengths among them, with a spare rounded up once; liquids with what is lost. */
export function countUsedUp(
  uses: readonly Use[],
  element: BookElement | null,
  takes: (scene: string) => TakeCount,
  spare: Ratio,
): Figures {
  const eaten = uses.some((use) => !use.carried) ? uses.filter((use) => !use.carried) : uses.slice(0, 1);
  const perTake = element?.perTake ?? null;
  // A length is cut: each time takes a piece of that length from a roll, and what is left over is too short.
  const isCut = perTake?.unit === 'mm';
  const unit = perTake === null || isCut ? 'piece' : perTake.unit;
  const units = perTake === null || isCut ? ratio(1) : perTake.amount;
  const times = eaten.reduce((sum, use) => sum + takes(use.scene).times * use.count, 0);
  const words = eaten
    .map((use) => `${nameSlot(use.slot)}: ${takes(use.scene).words}${use.count > 1 ? `, ${use.count} at a time` : ''}`)
    .join('; ');
  const each = perTake ? ` × ${perTake.text} a take` : '';
  const nothing = { over: 0n, under: 1n };
  if (unit === 'piece') {
    const [minimum, recommended] = [countPieces(times, units, nothing), countPieces(times, units, spare)];
    return {
      unit,
      minimum,
      minimumReason: `used up in each take. ${words} = ${counted(times, 'time')}${each}`,
      recommended,
      recommendedReason: `${describeSpare(times, units, spare)}, rounded up once`,
      conversions: [],
      copies: [],
    };
  }
  return {
    unit,
    minimum: countMeasure(times, units, nothing),
    minimumReason: `used up in each take. ${words} = ${counted(times, 'time')}${each}`,
    recommended: countMeasure(times, units),
    recommendedReason: quantityDefaults.liquidLoss.words,
    conversions: [],
    copies: [],
  };
}
