import type { NoteItem } from '../script/types.js';
import type { CategoryName } from '../trade/categories.js';
import { spareClothes } from '../trade/outer-garments.js';

/** Who wears an item of a note's list: the person in its parenthesis, when it is a costume and no spare; else null. */
export function wearerOf(category: CategoryName, { name, by }: Pick<NoteItem, 'name' | 'by'>): string | null {
  return category === 'costumes' && !spareClothes.test(name) ? by : null;
}
