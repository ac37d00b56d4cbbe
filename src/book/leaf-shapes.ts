import { z } from 'zod';
import { parseCalendarDate } from '../base/calendar-date.js';
import { parseClockTime } from '../base/clock-time.js';
import { isCurrency } from '../base/money.js';
import { parseDecimal, parsePercent } from '../base/ratio.js';
import { toNumber } from './choices.js';
import {
  mostDays,
  mostHours,
  parseCoordinates,
  parseDays,
  parseDegrees,
  parseHours,
  parseQuantity,
  parseWeekdays,
} from './written-values.js';

/*
 * Each leaf says three things: what a person may write, what it means, and how it is called when something else was
 * met. The error text of a leaf completes the sentence "Expected …, found …".
 */

/** The range of a value that may be written as a bare number. */
interface NumberRange {
  readonly least?: number;
  readonly most?: number;
}

/** A value written as text or as a number, read by `parse`; `expected` names it in a message. */
function written<T>(
  about: string,
  expected: string,
  pattern: RegExp,
  parse: (text: string) => T | null,
  { least, most }: NumberRange = {},
) {
  const any = z.number({ error: expected });
  const above = least === undefined ? any : any.min(least, { error: expected });
  const number = most === undefined ? above : above.max(most, { error: expected });
  return z
    .union([z.string({ error: expected }).regex(pattern, { error: expected }), number], {
      error: expected,
    })
    .transform((value, context) => {
      const meant = parse(String(value));
      if (meant !== null) return meant;
      context.addIssue({ code: 'custom', message: expected });
      return z.NEVER;
    })
    .nullish()
    .describe(about);
}

export const line = (about: string) =>
  z
    .union([z.string({ error: 'a line of text' }), z.number({ error: 'a line of text' })], { error: 'a line of text' })
    .transform((value) => String(value))
    .nullish()
    .describe(about);

export const lines = (about: string) =>
  listOf(z.union([z.string(), z.number()], { error: 'a line of text' }), about, 'a list of lines');

/** One of a few words. */
export const word = <const W extends readonly [string, ...string[]]>(about: string, words: W) =>
  z
    .enum(words, { error: `one of ${words.join(', ')}` })
    .nullish()
    .describe(about);

export const yesNo = (about: string) =>
  z
    .union([z.boolean(), z.enum(['yes', 'no'])], { error: 'yes or no' })
    .transform((value) => value === true || value === 'yes')
    .nullish()
    .describe(about);

export const whole = (about: string, least = 0) =>
  z
    .number({ error: `a whole number, ${least} or more` })
    .int({ error: `a whole number, ${least} or more` })
    .min(least, { error: `a whole number, ${least} or more` })
    .max(100_000, { error: 'a whole number, 100000 at most' })
    .nullish()
    .describe(about);

export const hours = (about: string) =>
  written(about, 'hours, such as 2, 1.5 or 30 min', /^\s*\d+([.,]\d+)?\s*(h|hours?|min|minutes?)?\s*$/, parseHours, {
    least: 0,
    most: mostHours,
  });

export const days = (about: string) =>
  written(about, 'days, such as 4 or 2-4 days', /^\s*\d+(\s*[-–]\s*\d+)?\s*(working\s+)?(days?)?\s*$/, parseDays, {
    least: 0,
    most: mostDays,
  });

export const date = (about: string) =>
  written(about, 'a date such as 2027-03-12 (year-month-day)', /^\s*\d{4}-\d{2}-\d{2}\s*$/, parseCalendarDate);

export const clock = (about: string) =>
  written(about, 'a time of day such as 7:30', /^\s*\d{1,2}([:.]\d{2})?\s*(am|pm|AM|PM)?\s*$/, parseClockTime);

export const percent = (about: string) =>
  written(
    about,
    'a percentage up to 100%, such as 20%',
    /^\s*(0*100([.,]0+)?|0*\d{1,2}([.,]\d+)?)\s*%?\s*$/,
    // 0.2 without a sign is a fifth to one reader and a five-hundredth to another.
    (text) => (/^\s*0*[.,]0*[1-9]\d*\s*$/.test(text) ? null : parsePercent(text)),
    { least: 0, most: 100 },
  );

/** Hours out of one day: never more than 24, and where work is counted never so few that it would not end. */
export const hoursOfDay = (about: string, least = 0) =>
  written(
    about,
    `hours between ${least} and 24, such as 3 or 4.5`,
    /^\s*\d+([.,]\d+)?\s*$/,
    (text) => {
      const meant = parseDecimal(text);
      const value = meant === null ? null : toNumber(meant);
      return value !== null && value >= least && value <= 24 ? meant : null;
    },
    { least, most: 24 },
  );

/** An amount stays as written here: its decimals can be judged only with the currency of the book. What is spent and what comes back have lines of their own, so none is below zero. */
export const amount = (about: string) =>
  written(
    about,
    'an amount of 0 or more, such as 12.50 or 12.50 USD',
    /^\s*\d+([.,]\d+)?(\s*[A-Za-z]{3})?\s*$/,
    (text) => text.trim(),
    { least: 0 },
  );

export const currency = (about: string) =>
  written(about, 'a currency code such as EUR, USD or JPY', /^\s*[A-Za-z]{3}\s*$/, (text) => {
    const code = text.trim().toUpperCase();
    return isCurrency(code) ? code : null;
  });

export const quantity = (about: string) =>
  written(
    about,
    'a count or a measure such as 10, 1.2 m, 15 ml or 200 g',
    /^\s*\d+([.,]\d+)?\s*(pieces?|portions?|mm|cm|m|ml|cl|l|L|g|kg)?\s*$/,
    parseQuantity,
  );

export const coordinates = (about: string) =>
  written(
    about,
    'latitude, longitude in degrees, such as 55.61, 12.34 (south and west are negative)',
    /^\s*-?\d+(\.\d+)?\s*,\s*-?\d+(\.\d+)?\s*$/,
    parseCoordinates,
  );

export const degrees = (about: string) =>
  written(
    about,
    'two heights of the Sun in degrees, such as -4 to 6',
    /^\s*-?\d+(\.\d+)?\s+to\s+-?\d+(\.\d+)?\s*$/,
    parseDegrees,
  );

export const weekdays = (about: string) =>
  written(
    about,
    'days of the week, such as Mon-Fri or Mon, Wed, Sat',
    /^\s*[A-Za-z]+(\s*[-–,]\s*[A-Za-z]+)*\s*$/,
    parseWeekdays,
  );

/** A list; one value alone counts as a list of one. An empty item is skipped. */
export function listOf<S extends z.ZodType>(item: S, about: string, expected: string) {
  return z
    .union([z.array(item.nullish()), item], { error: expected })
    .transform((value) => (Array.isArray(value) ? value : [value]) as (z.output<S> | null | undefined)[])
    .nullish()
    .describe(about);
}
