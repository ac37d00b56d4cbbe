import type { StoryDay } from './types.js';

/** Scene indexes as the story runs: the days of the main line in order, then each flashback; within a day as written. */
export function inStoryOrder(days: readonly StoryDay[]): number[] {
  const rank = ({ series }: StoryDay) => (series === 'D' ? 0 : 1);
  return days
    .map((day, index) => ({ day, index }))
    .sort((a, b) => rank(a.day) - rank(b.day) || a.day.number - b.day.number || a.index - b.index)
    .map(({ index }) => index);
}

/** The line of the story that continuity runs along: the main line, or one flashback. */
export function lineOf({ series, label }: StoryDay): string {
  return series === 'D' ? 'D' : label;
}
