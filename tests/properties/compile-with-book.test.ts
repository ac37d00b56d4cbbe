import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { main } from '../../src/cli/main.js';
import { fullBook } from '../book/full-book.js';
import { tidyScript } from '../support/any-script.js';
import { isOnlyAddedTo } from '../support/only-added.js';
import { createTestHost } from '../support/test-host.js';

const lines = fullBook.split('\n');
const values = fc.constantFrom(
  '',
  '0',
  '-3',
  '99999999999',
  '2027-02-30',
  'no',
  '[',
  '{ a: 1 }',
  '25:61',
  '1/8',
  '12.345',
  'é😀',
  '2 days',
  '&x',
  '"',
);

/** Ways in which a line of a book goes wrong: gone, typed twice, moved in or out, another value. */
const slip = fc.tuple(
  fc.nat(lines.length - 1),
  fc.oneof(
    fc.constant((_: string) => [] as string[]),
    fc.constant((line: string) => [line, line]),
    fc.constant((line: string) => [`  ${line}`]),
    fc.constant((line: string) => [line.trimStart()]),
    values.map((value) => (line: string) => [line.replace(/:.*/, `: ${value}`)]),
  ),
);

const book = fc
  .array(slip, { maxLength: 4 })
  .map((slips) => lines.flatMap((line, at) => slips.find(([where]) => where === at)?.[1](line) ?? [line]).join('\n'));

const scenes = `## 1. INT. HUT - NIGHT

Nora, in brown boots, tears the letter and burns it. The lamp falls.

> letter: torn

NORA
Done.

## 2A. EXT. QUAY - DAWN

> Nora: changes to wool coat
> food: bread

Nora jumps into the water.

> wool coat: soaked

`;

describe('any book', () => {
  it('is planned by, or refused with errors, beside any script', async () => {
    let planned = 0;
    await fc.assert(
      fc.asyncProperty(book, fc.option(tidyScript), async (text, more) => {
        const host = createTestHost({ 'a.md': more ?? scenes, 'a.book.yaml': text });
        const exit = await main(['compile', 'a.md', '--today', '2027-02-20'], host);
        expect([0, 1], host.printed.error).toContain(exit);
        expect(host.written.has('a-breakdown/plan.pdf')).toBe(exit === 0);
        if (exit === 0) planned += 1;
        else expect(host.printed.error).toMatch(/ error .*\[[a-z0-9-]+\]$/m);
      }),
      { numRuns: 12 },
    );
    expect(planned).toBeGreaterThan(0);
  });

  it('is only ever added to', async () => {
    await fc.assert(
      fc.asyncProperty(book, tidyScript, async (text, script) => {
        const host = createTestHost({ 'a.md': script, 'a.book.yaml': text });
        const exit = await main(['book', 'a.md'], host);
        expect([0, 1], host.printed.error).toContain(exit);
        const after = host.written.get('a.book.yaml');
        if (after !== undefined) expect(isOnlyAddedTo(text, String(after))).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});
