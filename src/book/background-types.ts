import type { Ratio } from '../base/ratio.js';
import type { Range } from '../base/text-range.js';

/** What the book says of a group of people in the background. */
export interface BookBackground {
  readonly id: string;
  readonly was: readonly string[];
  /** How many come; null: as the script says. */
  readonly count: number | null;
  readonly looks: readonly { readonly look: string; readonly count: number | null }[];
  /** What they are told to wear and bring. */
  readonly bring: string | null;
  readonly minor: boolean | null;
  readonly hoursADay: Ratio | null;
  /** The grown-up who stays with a child. */
  readonly with: string | null;
  readonly note: string | null;
  readonly at: Range;
}
