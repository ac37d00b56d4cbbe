import { blank, bold, type Inline } from '../layout/kit.js';
import type { Production } from '../types.js';

/** Whom a helper phones when something is wrong: whoever produces, else the first with a number; a blank when nobody has one. */
export function callWords(production: Production | null): Inline {
  const reachable = production?.book.helpers.filter((one) => one.phone !== null) ?? [];
  const first = reachable.find((one) => one.does.includes('production')) ?? reachable[0];
  return first
    ? ['If something is wrong, phone ', bold(`${first.name}, ${first.phone}`)]
    : ['If something is wrong, phone ', blank(120)];
}
