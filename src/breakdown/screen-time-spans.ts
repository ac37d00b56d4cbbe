import type { TimeSpan } from '../trade/screen-time-rates.js';

export const noTime: TimeSpan = { low: 0, likely: 0, high: 0 };

/** One thing after the other. */
export function addSpans(a: TimeSpan, b: TimeSpan): TimeSpan {
  return { low: a.low + b.low, likely: a.likely + b.likely, high: a.high + b.high };
}

/** Two things at once: the longer counts. */
export function longerSpan(a: TimeSpan, b: TimeSpan): TimeSpan {
  return { low: Math.max(a.low, b.low), likely: Math.max(a.likely, b.likely), high: Math.max(a.high, b.high) };
}

/** So many units, at so many in a second. */
export function divideByRate(units: number, rate: TimeSpan): TimeSpan {
  return { low: units / rate.low, likely: units / rate.likely, high: units / rate.high };
}
