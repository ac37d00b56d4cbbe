import type { Money } from '../base/money.js';
import { labelCopies } from './copies.js';
import type { PlanLine } from './line-types.js';
import { counted } from './per-take.js';

/** Copies that are not good enough for a close-up, and need not be. */
export interface RoughCopies {
  /** Same shape and size, for rehearsals, lighting and throws: their labels. */
  readonly standIns: readonly string[];
  /** Seen from more than three metres: their labels. */
  readonly background: readonly string[];
  /** What all of them cost together; null when the book has no price for one. */
  readonly cost: Money | null;
  /** `1 stand-in and 6 background copies`. */
  readonly words: string;
}

/** The stand-ins and background copies that the book decides for a thing; null when it decides none. */
export function listRoughCopies({ element, name }: Pick<PlanLine, 'element' | 'name'>): RoughCopies | null {
  const [standIns, background] = [element?.standIns ?? 0, element?.backgroundCopies ?? 0];
  if (element === null || standIns + background === 0) return null;
  const label = labelCopies(name, element);
  const labels = (sign: string, count: number) => Array.from({ length: count }, (_, at) => `${label}-${sign}${at + 1}`);
  const price = element.roughPrice;
  const parts = [
    ...(standIns > 0 ? [counted(standIns, 'stand-in')] : []),
    ...(background > 0 ? [`${background} background ${background === 1 ? 'copy' : 'copies'}`] : []),
  ];
  return {
    standIns: labels('S', standIns),
    background: labels('B', background),
    cost: price === null ? null : { ...price, minor: price.minor * (standIns + background) },
    words: parts.join(' and '),
  };
}
