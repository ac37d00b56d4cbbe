import type { Known } from '../breakdown/types.js';
import type { CategoryName } from '../trade/categories.js';

/** One thing to get. Prices, quantities and dates are not the breakdown's: they come from the production book. */
export interface PurchaseLine {
  /** Id of the element. */
  readonly id: string;
  readonly department: string;
  readonly category: CategoryName;
  readonly name: string;
  readonly description: string | null;
  /** Printed scene labels, in script order. */
  readonly scenes: readonly string[];
  readonly firstScene: string;
  readonly states: readonly string[];
  /** The largest count in any one scene, or null. */
  readonly inScript: number | null;
  readonly usedBy: readonly string[];
  readonly known: Known;
  /** True when the words say that each take uses one up; else it is the filmmaker's answer. */
  readonly usedUp: boolean;
}
