import { multiply, parseDecimal, type Ratio } from '../base/ratio.js';
import type { Quantity } from './element-types.js';

/** The most days and hours that one figure may say: beyond it, it is a slip of the keys. */
export const mostDays = 1000;
export const mostHours = 1000;

const week = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'];

/** Reads `2`, `1.5 h`, `30 min` as hours; null when it is none, or too many. */
export function parseHours(text: string): number | null {
  const parts = /^\s*(\d+(?:[.,]\d+)?)\s*(h|hours?|min|minutes?)?\s*$/i.exec(text);
  if (!parts) return null;
  const value = Number((parts[1] as string).replace(',', '.'));
  const hours = parts[2]?.toLowerCase().startsWith('m') ? value / 60 : value;
  return hours <= mostHours ? hours : null;
}

/** Reads `4`, `4 days`, `2-4 days` as days: of a range the longest counts, for that is the one to plan with. */
export function parseDays(text: string): number | null {
  const parts = /^\s*(\d+)(?:\s*[-–]\s*(\d+))?\s*(?:working\s+)?(?:days?)?\s*$/i.exec(text);
  if (!parts) return null;
  const longest = Math.max(Number(parts[1]), Number(parts[2] ?? 0));
  return longest <= mostDays ? longest : null;
}

const units: Readonly<Record<string, { unit: Quantity['unit']; factor: string }>> = {
  piece: { unit: 'piece', factor: '1' },
  portion: { unit: 'piece', factor: '1' },
  mm: { unit: 'mm', factor: '1' },
  cm: { unit: 'mm', factor: '10' },
  m: { unit: 'mm', factor: '1000' },
  ml: { unit: 'ml', factor: '1' },
  cl: { unit: 'ml', factor: '10' },
  l: { unit: 'ml', factor: '1000' },
  g: { unit: 'g', factor: '1' },
  kg: { unit: 'g', factor: '1000' },
};

/** Reads `10`, `1.2 m`, `15 ml`, `200 g` in pieces, millimetres, millilitres or grams; null when it is none, or zero. */
export function parseQuantity(text: string): Quantity | null {
  const parts = /^\s*(\d+(?:[.,]\d+)?)\s*([a-z]+)?\s*$/i.exec(text);
  if (!parts) return null;
  const name = (parts[2] ?? 'piece').toLowerCase().replace(/^(piece|portion)s$/, '$1');
  const unit = units[name];
  const value = parseDecimal(parts[1] as string);
  if (!unit || !value || value.over === 0n) return null;
  return { amount: multiply(value, parseDecimal(unit.factor) as Ratio), unit: unit.unit, text: text.trim() };
}

/** Reads `55.61, 12.34` as latitude and longitude in degrees; null when out of range. */
export function parseCoordinates(text: string): { latitude: number; longitude: number } | null {
  const parts = /^\s*(-?\d+(?:\.\d+)?)\s*,\s*(-?\d+(?:\.\d+)?)\s*$/.exec(text);
  if (!parts) return null;
  const [latitude, longitude] = [Number(parts[1]), Number(parts[2])];
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 ? { latitude, longitude } : null;
}

/** Reads `-4 to 6` as two heights of the Sun in degrees, the lower first; null when they are not that. */
export function parseDegrees(text: string): { from: number; to: number } | null {
  const parts = /^\s*(-?\d+(?:\.\d+)?)\s+to\s+(-?\d+(?:\.\d+)?)\s*$/.exec(text);
  if (!parts) return null;
  const [from, to] = [Number(parts[1]), Number(parts[2])];
  return from < to && from >= -18 && to <= 30 ? { from, to } : null;
}

/** Reads `Mon-Fri`, `Mon, Wed, Sat` as days of the week, 0 = Sunday, in that order; null when a name is none. */
export function parseWeekdays(text: string): number[] | null {
  const found = new Set<number>();
  for (const part of text.split(',')) {
    const ends = part.split(/[-–]/).map((name) => week.indexOf(name.trim().slice(0, 3).toLowerCase()));
    const [first = -1, last = first] = ends;
    if (first < 0 || last < 0 || ends.length > 2) return null;
    for (let day = first; ; day = (day + 1) % 7) {
      found.add(day);
      if (day === last) break;
    }
  }
  return found.size === 0 ? null : [...found].sort((a, b) => a - b);
}

/** Reads `0.92` or `0.92 on 2027-02-01` into its two texts; null when it is neither. */
export function splitRate(text: string): { rate: string; on: string | null } | null {
  const parts = /^\s*(\d+(?:[.,]\d+)?)(?:\s+on\s+(\d{4}-\d{2}-\d{2}))?\s*$/i.exec(text);
  return parts ? { rate: parts[1] as string, on: parts[2] ?? null } : null;
}

/** Reads `4 AA` as a count of batteries and their kind; null when it is not that. */
export function parseBatteries(text: string): { count: number; kind: string } | null {
  const parts = /^\s*(\d{1,3})\s*(?:x\s*)?([A-Za-z0-9][\w -]*)\s*$/.exec(text);
  return parts && Number(parts[1]) > 0 ? { count: Number(parts[1]), kind: (parts[2] as string).trim() } : null;
}
