/** The hours in which daylight looks like a part of the day named in a heading, as minutes since midnight. */
export interface HoursOfDay {
  readonly words: readonly string[];
  readonly from: number;
  readonly to: number;
  readonly source: string;
}

const source = 'common practice: the Sun stands on the other side before noon and after it';

export const hoursOfDay: readonly HoursOfDay[] = [
  { words: ['MORNING'], from: 0, to: 12 * 60 + 30, source },
  { words: ['NOON', 'MIDDAY', 'MID-DAY'], from: 10 * 60 + 30, to: 14 * 60 + 30, source },
  { words: ['AFTERNOON'], from: 11 * 60 + 30, to: 24 * 60, source },
];

/** The hours of the part of the day that a heading names, or null. */
export function findHoursOfDay(time: string): HoursOfDay | null {
  const words = time.toUpperCase().split(/[^\p{L}-]+/u);
  return hoursOfDay.find((row) => row.words.some((word) => words.includes(word))) ?? null;
}
