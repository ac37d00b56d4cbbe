import type { PlanLine } from './line-types.js';
import type { Need } from './need-types.js';

/** The copies that there will be when all that is decided has come; null while the book decides nothing. */
export function countThere({ decided, have }: Pick<Need, 'decided' | 'have'>): number | null {
  return decided === null ? null : Math.max(decided, have);
}

/** How many copies are missing of the fewest that the scenes need, though the book has decided; 0 for what is done without. */
export function countShort({ decided, have, minimum }: Pick<Need, 'decided' | 'have' | 'minimum'>): number {
  const there = countThere({ decided, have });
  return there === null || there === 0 ? 0 : Math.max(0, minimum - there);
}

/** How many are needed: what the book decides, unless the scenes need more; else what is advised. In the unit of the need. */
export function countNeeded(need: Pick<Need, 'decided' | 'have' | 'minimum' | 'recommended'>): number {
  return countShort(need) > 0 ? need.minimum : (need.decided ?? need.recommended);
}

/** `need 20, ordered 6, SHORT 14`, the same on every paper; null when there are enough. */
export function shortWords({ need, element }: Pick<PlanLine, 'need' | 'element'>): string | null {
  const short = countShort(need);
  const there = countThere(need);
  if (short === 0 || there === null) return null;
  const sign = need.have >= there ? 'have' : element?.ordered ? 'ordered' : 'decided';
  const unit = need.unit === 'piece' ? '' : ` ${need.unit}`;
  return `need ${need.minimum}${unit}, ${sign} ${there}${unit}, SHORT ${short}${unit}`;
}

/** Only the labels of copies that there will be: a paper never sends anybody for the seventh of six. */
export function keepThere(labels: readonly string[], there: number | null): readonly string[] {
  if (there === null) return labels;
  return labels.filter((label) => Number(/-(\d+)$/.exec(label)?.[1] ?? 1) <= there);
}
