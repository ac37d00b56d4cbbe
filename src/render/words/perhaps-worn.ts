import type { SceneLabels } from '../../breakdown/scene-label.js';
import type { PerhapsWorn } from '../../breakdown/types.js';

/** `? still jeans, cap (as in sc 5)`: what was on the day before, as long as the question is open. */
export function perhapsWords({ garments, from }: PerhapsWorn, labels: SceneLabels): string {
  return `? still ${garments.join(', ')} (as in sc ${labels.get(from) ?? from})`;
}
