import type { CalendarDate } from '../base/calendar-date.js';
import type { ClockMinutes } from '../base/clock-time.js';
import type { Eighths } from '../base/eighths.js';
import type { Choice } from '../book/types.js';
import type { DaySun } from './daylight-types.js';
import type { Conversion } from './need-types.js';
import type { Slot } from './slot-types.js';

/** One shooting day with its load. */
export interface PlanDay {
  readonly number: number;
  readonly of: number;
  readonly date: CalendarDate;
  readonly call: Choice<ClockMinutes>;
  readonly wrap: Choice<ClockMinutes>;
  readonly meal: ClockMinutes | null;
  readonly shot: boolean;
  readonly note: string | null;
  readonly locations: readonly string[];
  readonly scenes: readonly Slot[];
  readonly eighths: Eighths;
  readonly seconds: number;
  readonly setups: number;
  readonly shootingMinutes: number;
  /** Hours between the wrap before and this call; null on the first day. */
  readonly restHours: number | null;
  readonly moves: number;
  readonly changes: readonly CostumeRush[];
  readonly minors: readonly MinorDay[];
  /** Scenes whose place several real locations play, when the day names none of them. */
  readonly openPlaces: readonly {
    readonly scene: string;
    readonly place: string;
    readonly choices: readonly string[];
    /** The location that is taken. */
    readonly taken: string;
  }[];
  readonly warnings: readonly string[];
  readonly sun: readonly DaySun[];
}

/** A person changes clothes between two scenes of a day, or dresses between the call and the first one. */
export interface CostumeRush {
  readonly person: string;
  /** Null: from the call. */
  readonly from: Slot | null;
  readonly to: Slot;
  readonly minutesNeeded: number;
  readonly minutesThere: number;
}

/** Hours of a person under age on one day: a question, never an answer. */
export interface MinorDay {
  readonly person: string;
  readonly name: string;
  readonly hoursOnSet: number;
  readonly hoursEntered: number | null;
  readonly question: string;
}

/** Work on costumes between the wrap of one day and the next scene that needs them. */
export interface Overnight {
  readonly element: string;
  readonly name: string;
  readonly conversion: Conversion;
  readonly short: boolean;
  readonly words: string;
}
