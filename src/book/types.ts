import type { CalendarDate } from '../base/calendar-date.js';
import type { ClockMinutes } from '../base/clock-time.js';
import type { Money } from '../base/money.js';
import type { Ratio } from '../base/ratio.js';
import type { Range } from '../base/text-range.js';
import type { BookBackground } from './background-types.js';
import type { BookElement } from './element-types.js';

/** A figure that the book gives, or a default that stands until it does. */
export interface Choice<T> {
  readonly value: T;
  /** False when it is the default: it then prints as one. */
  readonly given: boolean;
}

/** A rate of exchange with its date: one unit of the foreign currency in the currency of the budget. */
export interface ExchangeRate {
  readonly currency: string;
  readonly rate: Ratio;
  readonly on: CalendarDate | null;
}

export interface BookMoney {
  readonly currency: Choice<string>;
  readonly budget: Money | null;
  /** A fraction of one; null when the book gives none (the plan then chooses by what the film holds). */
  readonly contingency: Ratio | null;
  readonly tax: Ratio | null;
  readonly pricesIncludeTax: Choice<boolean>;
  readonly rates: readonly ExchangeRate[];
  readonly otherCosts: readonly OtherCost[];
  /** Where the book speaks of money, and of the budget. */
  readonly at: Range;
  readonly budgetAt: Range;
}

/** Money that no line of the script causes: food, fuel, parking, time off work. */
export interface OtherCost {
  readonly what: string;
  readonly cost: Money;
  readonly per: 'once' | 'day' | 'head and day';
  readonly paid: Money | null;
  readonly on: CalendarDate | null;
  readonly at: Range;
}

export interface BookDay {
  readonly date: CalendarDate;
  readonly call: Choice<ClockMinutes>;
  readonly wrap: Choice<ClockMinutes>;
  /** Ids of real locations, in the order of the day. */
  readonly locations: readonly string[];
  /** Scenes in shooting order, by id or by printed number. */
  readonly scenes: readonly SceneReference[];
  readonly meal: ClockMinutes | null;
  readonly note: string | null;
  readonly shot: boolean;
  readonly at: Range;
}

export interface SceneReference {
  readonly text: string;
  readonly at: Range;
}

/** A real address. */
export interface BookLocation {
  readonly id: string;
  readonly name: string | null;
  readonly address: string | null;
  readonly coordinates: { readonly latitude: number; readonly longitude: number } | null;
  readonly zone: string | null;
  /** Contact, permission, parking, power …: label and line, in the order of the book. */
  readonly facts: readonly { readonly label: string; readonly text: string }[];
  readonly at: Range;
}

/** A place of the story and the real locations that play it. */
export interface BookPlace {
  readonly id: string;
  readonly was: readonly string[];
  readonly locations: readonly string[];
  readonly note: string | null;
  readonly at: Range;
}

/** A member of the cast. `privately` is printed only for whoever needs it. */
export interface BookPerson {
  readonly id: string;
  readonly was: readonly string[];
  readonly playedBy: string | null;
  readonly minor: boolean | null;
  /** Hours a day that the book says this person may work. */
  readonly hoursADay: Ratio | null;
  readonly transport: string | null;
  readonly food: string | null;
  readonly owns: readonly string[];
  readonly agreement: string | null;
  readonly privately: {
    readonly phone: string | null;
    readonly email: string | null;
    readonly sizes: readonly { readonly label: string; readonly text: string }[];
    readonly allergies: readonly string[];
  };
  readonly at: Range;
}

/** What a helper looks after. */
export type HelperJob =
  | 'props'
  | 'costume'
  | 'make-up'
  | 'camera'
  | 'sound'
  | 'light'
  | 'production'
  | 'transport'
  | 'food';

export interface BookHelper {
  readonly id: string;
  readonly name: string;
  readonly does: readonly HelperJob[];
  readonly phone: string | null;
  readonly cash: Money | null;
  readonly allergies: readonly string[];
  readonly at: Range;
}

export interface BookSupplier {
  readonly id: string;
  readonly name: string;
  readonly contact: string | null;
  readonly deliveryDays: number | null;
  readonly deliversOn: readonly number[] | null;
  readonly shipping: Money | null;
  readonly freeFrom: Money | null;
  readonly at: Range;
}

export interface BookScene {
  readonly id: string;
  readonly was: readonly string[];
  /** When it begins on its day; null: right after the scene before it. */
  readonly begin: ClockMinutes | null;
  readonly setups: number | null;
  readonly takes: number | null;
  readonly inCharge: string | null;
  readonly shots: readonly string[];
  readonly reset: readonly string[];
  readonly resetMinutes: number | null;
  readonly cold: boolean;
  readonly note: string | null;
  readonly at: Range;
}

/** The production book: how the film is made. Everything in it is the filmmaker's own decision. */
export interface Book {
  readonly file: string;
  readonly money: BookMoney;
  readonly prepStarts: CalendarDate | null;
  readonly prepHoursADay: Choice<number>;
  /** Days of the week, 0 = Sunday, on which suppliers work. */
  readonly workingDays: Choice<readonly number[]>;
  readonly holidays: readonly CalendarDate[];
  readonly drier: Choice<boolean>;
  readonly takes: Choice<number>;
  readonly setups: Choice<number>;
  readonly rehearsals: Choice<number>;
  readonly spare: Choice<Ratio>;
  readonly restHours: Choice<number>;
  readonly goldenHour: Choice<{ readonly from: number; readonly to: number }>;
  readonly zone: string | null;
  readonly days: readonly BookDay[];
  readonly locations: readonly BookLocation[];
  readonly places: readonly BookPlace[];
  readonly people: readonly BookPerson[];
  readonly background: readonly BookBackground[];
  readonly helpers: readonly BookHelper[];
  readonly suppliers: readonly BookSupplier[];
  readonly scenes: readonly BookScene[];
  readonly elements: readonly BookElement[];
  readonly kit: readonly BookElement[];
  /** Ids of things refused. */
  readonly refused: readonly { readonly id: string; readonly at: Range }[];
  readonly answers: readonly { readonly question: string; readonly text: string; readonly at: Range }[];
}

export type * from './background-types.js';
export type * from './element-types.js';
