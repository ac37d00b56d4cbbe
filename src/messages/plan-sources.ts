import { define, type MessageTable } from './define.js';

/** Messages of the plan about where things come from. */
export const planSourceMessages = {
  'plan-own-uncounted': define<{ name: string; wanted: number }>(
    'warning',
    'Things of one’s own that nobody counted',
    ({ name, wanted }) => ({
      reason: `Expected to know how many of "${name}" are here, for ${wanted} are wanted, found "get: own" and no "have:". All of them count as here.`,
      hint: `Write "have: ${wanted}" if that many are here, or the number that is; what is missing is then counted and dated.`,
    }),
  ),
  'plan-supplier-near': define<{ from: string; near: string; name: string }>(
    'warning',
    'A supplier that the book does not list, but one of nearly that name',
    ({ from, near, name }) => ({
      reason: `Expected a supplier of the book for "${name}", found "from: ${from}".`,
      hint: `Did you mean "${near}"? As it stands, its days of delivery and its shipping do not count.`,
      actual: from,
      expected: [near],
    }),
  ),
  'plan-suppliers-unlisted': define<{ names: readonly string[]; example: string }>(
    'info',
    'Suppliers that the book does not list',
    ({ names, example }) => ({
      reason: `Expected the days of delivery of every supplier, found none for ${names.join(', ')}: usual days are counted.`,
      hint: `Write under "suppliers" what you know, such as "${example}: { delivery: 3, shipping: 4.90 }", or "delivery:" or "collect:" with the thing itself.`,
    }),
  ),
  'plan-pool-prices': define<{ pool: string; lines: readonly string[]; what: string }>(
    'warning',
    'Lines that share packs, and yet differ',
    ({ pool, lines, what }) => ({
      reason: `Expected one ${what} for the packs shared under "pool: ${pool}", found ${lines.join(', ')}. Each ${what} has packs of its own.`,
      hint: `Write the same ${what} in all of them if they come out of one pack; otherwise give each its own word under "pool:", or none.`,
    }),
  ),
} as const satisfies MessageTable;
