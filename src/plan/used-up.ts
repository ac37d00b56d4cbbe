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
  how = 'used up in each take',
): Figures {
  const eaten = listEating(uses, element);
  // What is merely there in other scenes must still be whole there: the most at one time.
  const seen = uses.filter((use) => !eaten.includes(use) && !use.carried);
  const kept = Math.max(0, ...seen.map((use) => use.count));
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
    const [minimum, recommended] = [countPieces(times, units, nothing) + kept, countPieces(times, units, spare) + kept];
    const there =
      kept > 0 ? `; and ${kept} that only lie there in ${seen.map((use) => nameSlot(use.slot)).join(', ')}` : '';
    return {
      unit,
      minimum,
      minimumReason: `${how}. ${words} = ${counted(times, 'time')}${each}${there}`,
      recommended,
      recommendedReason: `${describeSpare(times, units, spare)}, rounded up once${there}`,
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

/** True where the words of a scene say that it is eaten there. */
export function tellsEaten({ onCamera, stateOut }: Use): boolean {
  return onCamera === 'copy each take' && stateOut === 'eaten';
}

/** The scenes whose takes use a thing up: those that the book names, else those in which it is more than carried along. */
export function listEating(uses: readonly Use[], element: BookElement | null): readonly Use[] {
  const named = element?.usedUpIn ?? [];
  if (named.length > 0)
    return uses.filter((use) => named.includes(use.scene) || named.includes(use.slot.label.toUpperCase()));
  if (uses.some(tellsEaten)) return uses.filter((use) => use.onCamera === 'copy each take');
  return uses.some((use) => !use.carried) ? uses.filter((use) => !use.carried) : uses.slice(0, 1);
}

/** Food in several scenes is perhaps eaten in only one of them: asked, until the book says in which. */
export function askWhereEaten(uses: readonly Use[], element: BookElement | null, isFood: boolean): string[] {
  const scenes = uses.filter((use) => !use.carried).map((use) => use.slot.label);
  if (
    !isFood ||
    uses.some(tellsEaten) ||
    scenes.length < 2 ||
    element?.usedUpIn.length ||
    (element?.copies !== null && element !== null)
  )
    return [];
  return [
    `is it used up in each take of sc ${scenes.join(', ')}, or does it only lie there in some? Write "used up in: [${scenes[0]}]"`,
  ];
}

/** Food of which the words do not say that anybody eats it counts once, and is asked about until the book says. */
export function askWhetherEaten(uses: readonly Use[], element: BookElement | null): string[] {
  if ((element?.usedUp ?? element?.copies ?? null) !== null || uses.some((use) => use.onCamera === 'copy each take'))
    return [];
  return ['is it eaten in a take? The words do not say so, and it counts as kept. Write "used up: yes" if it is'];
}
