import type { Breakdown } from '../../breakdown/types.js';
import { isUsedUpByWords } from '../../plan/used-up-by-words.js';
import type { Production } from '../types.js';

/** Ids of the things that each take uses up: as the plan counts them, without a book as the words tell. */
export function listUsedUp({ elements }: Breakdown, production: Production | null): ReadonlySet<string> {
  const planned = new Map(production?.plan.needs.map((need) => [need.id, need.usedUp] as const));
  return new Set(elements.filter((one) => planned.get(one.id) ?? isUsedUpByWords(one)).map(({ id }) => id));
}
