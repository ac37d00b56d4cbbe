import type { CalendarDate } from '../base/calendar-date.js';
import type { ClockMinutes } from '../base/clock-time.js';
import type { Slot } from './slot-types.js';

/** Clock times of the Sun on one date at one place; minutes since that date's midnight in its zone, null when it does not happen. */
export interface SunTimes {
  readonly date: CalendarDate;
  readonly zone: string;
  readonly firstLight: ClockMinutes | null;
  readonly sunrise: ClockMinutes | null;
  readonly sunset: ClockMinutes | null;
  readonly lastLight: ClockMinutes | null;
  /** When the Sun stands lowest in the night before the day and in the night after it. */
  readonly lowest: { readonly before: ClockMinutes; readonly after: ClockMinutes };
  /** From when to when the Sun stands between the heights of the setting, before noon and after it. Where it never sinks below them, the evening runs on into the next morning. */
  readonly goldenMorning: { readonly from: ClockMinutes; readonly to: ClockMinutes } | null;
  readonly goldenEvening: { readonly from: ClockMinutes; readonly to: ClockMinutes } | null;
  /** Said when the Sun does not rise or does not set that day, or sets and leaves no dark. */
  readonly remark:
    | 'the Sun stays up all day'
    | 'the Sun stays down all day'
    | 'no dark: civil twilight all night'
    | null;
}

/** When an exterior scene has the light that its heading asks for. */
export interface LightWindow {
  readonly slot: Slot;
  readonly light: 'day' | 'night' | 'dawn' | 'dusk';
  /** The stretches of the day that fit, in clock minutes; empty when there is none. */
  readonly windows: readonly { readonly from: ClockMinutes; readonly to: ClockMinutes }[];
  readonly words: string;
}

export interface DaySun {
  readonly location: string;
  readonly name: string;
  /** Null without coordinates or zone: `words` says what to add. */
  readonly times: SunTimes | null;
  readonly words: string;
  readonly windows: readonly LightWindow[];
  readonly clashes: readonly string[];
}
