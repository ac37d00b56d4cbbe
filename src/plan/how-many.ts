import type { BookElement } from '../book/types.js';
import type { Breakdown, ElementEntry } from '../breakdown/types.js';
import { countsVaguely, looksPlural } from '../trade/plural-words.js';
import { burnsDown, namesLiquid } from '../trade/used-up-words.js';
import { largestCrowd } from './crowd-wear.js';
import type { Use } from './need-types.js';
import { nameSlot } from './shooting-order.js';

/** Clothes are counted by who wears them, if somebody does; what stands in a room is there. */
const notAsked: ReadonlySet<string> = new Set(['makeup', 'hair', 'dressing']);

/**
 * True when the script speaks of several of a thing without a number, and the book gives none either. The count of one that
 * stands for "not told" is then no answer, and must not be printed as one.
 */
export function isUncounted(entry: ElementEntry, element: BookElement | null, breakdown: Breakdown): boolean {
  if (entry.count !== null || notAsked.has(entry.category) || burnsDown(entry.name)) return false;
  const given = element?.copies ?? element?.together ?? element?.perTake ?? element?.need ?? null;
  if (given !== null || element?.source === 'cut') return false;
  if (isPoured(entry)) return true;
  if (entry.category === 'costumes') return isOnUncountedCrowd(entry, breakdown);
  if (looksPlural(entry.name)) return true;
  const words = breakdown.scenes.flatMap((scene) =>
    scene.elements.filter((one) => one.id === entry.id).map((one) => one.words),
  );
  return words.some(countsVaguely);
}

/** A drink without its cup or bottle: pieces of it are no count. */
function isPoured({ category, name }: ElementEntry): boolean {
  return category === 'food' && namesLiquid(name);
}

function isOnUncountedCrowd(entry: ElementEntry, { scenes }: Breakdown): boolean {
  const crowd = largestCrowd(entry, scenes);
  return crowd !== null && crowd.count === null;
}

/** What is asked where a crowd seems to wear a thing; nothing once the book says how many. */
export function askWhoWears(entry: ElementEntry, element: BookElement | null, { scenes }: Breakdown): string[] {
  const crowd = element?.copies || element?.together ? null : largestCrowd(entry, scenes);
  return crowd?.count ? [`does each of the ${crowd.count} ${crowd.name} wear one? It is counted so`] : [];
}

/** Several of a thing of which one is spoilt on camera: whether a take spoils all of them is asked, until the book says. */
export function askTogether({ category }: ElementEntry, uses: readonly Use[], element: BookElement | null): string[] {
  if (category === 'costumes' || (element?.together ?? element?.copies ?? null) !== null) return [];
  const spoilt = uses.find((use) => use.onCamera === 'copy each take' && use.count > 1);
  if (!spoilt) return [];
  return [
    `are all ${spoilt.count} ${spoilt.stateOut} in every take of ${nameSlot(spoilt.slot)}? It is counted so. Write "together: 1" if it is one of them`,
  ];
}

/** What is asked of whoever knows. */
export function askHowMany(entry: ElementEntry, have: number): string {
  if (isPoured(entry))
    return `how much "${entry.name}" does one take use? Write "per take: 100 ml" and what one pack holds`;
  const there = have > 0 ? ` ${have} are here: is that enough?` : '';
  return `how many "${entry.name}"? The script gives no number.${there}`;
}
