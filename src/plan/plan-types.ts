import type { CalendarDate } from '../base/calendar-date.js';
import type { AllergyWatch } from './allergy-watch.js';
import type { BackgroundGroup } from './background.js';
import type { ContinuityTrack } from './continuity-types.js';
import type { Overnight, PlanDay } from './day-types.js';
import type { PlanLine } from './line-types.js';
import type { MessFirst } from './mess-types.js';
import type { MoneyPlan } from './money-types.js';
import type { Need } from './need-types.js';
import type { Slot } from './slot-types.js';

/** Something that someone does on a day. */
export interface Task {
  /** Stable between runs. */
  readonly id: string;
  readonly date: CalendarDate | null;
  /** The last day of work that takes several; equal to `date` otherwise. */
  readonly until: CalendarDate | null;
  readonly what: string;
  /** The things that `what` ends with, each to be ticked by itself; empty when it is one task. */
  readonly things: readonly string[];
  readonly kind:
    | 'order'
    | 'fetch'
    | 'fit'
    | 'work'
    | 'test'
    | 'rehearse'
    | 'pack'
    | 'shoot'
    | 'convert'
    | 'return'
    | 'ask';
  /** Id of the helper, or null: nobody is named. */
  readonly who: string | null;
  /** Ids of the things it is about; empty for a shooting day. */
  readonly elements: readonly string[];
  readonly late: boolean;
  readonly done: boolean;
}

/** How the film is got, made, paid and shot. */
export interface Plan {
  readonly title: string;
  readonly draft: string | null;
  readonly today: CalendarDate;
  readonly slots: readonly Slot[];
  readonly days: readonly PlanDay[];
  /** Scenes in no shooting day. */
  readonly unscheduled: readonly Slot[];
  readonly needs: readonly Need[];
  readonly lines: readonly PlanLine[];
  readonly money: MoneyPlan;
  readonly tracks: readonly ContinuityTrack[];
  readonly overnight: readonly Overnight[];
  /** Clothes and things spoilt before a scene that wants them clean. */
  readonly messes: readonly MessFirst[];
  readonly allergies: readonly AllergyWatch[];
  readonly background: readonly BackgroundGroup[];
  readonly tasks: readonly Task[];
  /** Every default that was used, in words. */
  readonly defaults: readonly string[];
}
