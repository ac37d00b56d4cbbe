import type { Change, ChangeKind } from '../../compare/types.js';

/**
 * Kinds of change from the most costly to the least (common practice: what can hurt, then money already going out, then
 * being in the wrong place, then work done wrong, then words).
 */
const order: readonly ChangeKind[] = [
  'day',
  'day date',
  'day call',
  'day places',
  'shooting day',
  'scene',
  'place',
  'setting',
  'light',
  'count',
  'state',
  'state in',
  'state out',
  'garment',
  'extra',
  'person',
  'thing',
  'holder',
  'costume number',
  'shooting order',
  'story day',
  'name',
  'label',
  'position',
  'length',
];

/** How costly it is to miss a change: the smaller the number, the more. */
export function rankOf(change: Change): number {
  if (change.kind === 'danger' && change.after !== null) return -3;
  if (change.whole && change.after === null) return -2;
  if (change.whole) return -1;
  return change.kind === 'danger' ? order.length : order.indexOf(change.kind);
}

/** Changes with the most costly first; those of one kind stay in their order. */
export function sortByCost<T>(list: readonly T[], changeOf: (one: T) => Change): T[] {
  return [...list].sort((a, b) => rankOf(changeOf(a)) - rankOf(changeOf(b)));
}
