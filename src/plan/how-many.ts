import type { BookElement } from '../book/types.js';
import type { Breakdown, ElementEntry } from '../breakdown/types.js';
import { countsVaguely, looksPlural } from '../trade/plural-words.js';

/** Clothes are counted by who wears them; what stands in a room is there. */
const notAsked: ReadonlySet<string> = new Set(['costumes', 'makeup', 'hair', 'dressing']);

/**
 * True when the script speaks of several of a thing without a number, and the book gives none either. The count of one that
 * stands for "not told" is then no answer, and must not be printed as one.
 */
export function isUncounted(entry: ElementEntry, element: BookElement | null, breakdown: Breakdown): boolean {
  if (entry.count !== null || notAsked.has(entry.category)) return false;
  const given = element?.copies ?? element?.together ?? element?.perTake ?? element?.need ?? null;
  if (given !== null || element?.source === 'cut') return false;
  if (looksPlural(entry.name)) return true;
  const words = breakdown.scenes.flatMap((scene) =>
    scene.elements.filter((one) => one.id === entry.id).map((one) => one.words),
  );
  return words.some(countsVaguely);
}

/** What is asked of whoever knows. */
export function askHowMany(entry: ElementEntry, have: number): string {
  const there = have > 0 ? ` ${have} are here: is that enough?` : '';
  return `how many "${entry.name}"? The script gives no number.${there}`;
}
