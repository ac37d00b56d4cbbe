import type { CalendarDate } from '../base/calendar-date.js';
import type { Choice } from '../book/types.js';

/** Where a scene stands in the order of shooting. */
export interface Slot {
  readonly scene: string;
  /** The printed label of the scene. */
  readonly label: string;
  /** 0-based place among all scenes, those in no day last. */
  readonly index: number;
  /** 1-based shooting day, or null when the scene is in none. */
  readonly day: number | null;
  readonly date: CalendarDate | null;
  /** 1-based place in its day. */
  readonly position: number;
  /** Hours since 1 January 1970 on the clocks of the shoot; null without a day. */
  readonly start: number | null;
  readonly end: number | null;
  readonly setups: Choice<number>;
  readonly takes: number;
  /** Shooting minutes reckoned for the scene. */
  readonly minutes: number;
  /** The hour at which the people of the first scene of a day begin to dress, when that is before its start. */
  readonly dressedFrom?: number;
}
