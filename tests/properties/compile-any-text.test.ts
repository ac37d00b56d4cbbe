import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { main } from '../../src/cli/main.js';
import { messageRegistry } from '../../src/messages/registry.js';
import { outputNames, renderers } from '../../src/render/renderers.js';
import { anyText, scriptLike, tidyScript } from '../support/any-script.js';
import { compileText, jsonOf } from '../support/compile-text.js';
import { createTestHost } from '../support/test-host.js';

/** What can be written without a production book. */
const withoutBook = outputNames.filter((name) => !renderers[name].needsBook);

/** Compiles as the command does and holds it to its promise: outputs, or errors that say why. */
async function compileOrRefuse(script: string | Uint8Array, only: string) {
  const host = createTestHost({ 'script.md': script });
  const exit = await main(['compile', 'script.md', '--only', only], host);
  expect([0, 1], host.printed.error).toContain(exit);
  expect(host.written.size > 0).toBe(exit === 0);
  const codes = [...host.printed.error.matchAll(/ (?:error|warning|note) .*\[([a-z0-9-]+)\]$/gm)].map(
    ([, code]) => code,
  );
  expect(Object.keys(messageRegistry)).toEqual(expect.arrayContaining(codes));
  if (exit === 1) expect(codes.some((code) => messageRegistry[code ?? '']?.severity === 'error')).toBe(true);
}

describe('any text at all', () => {
  it('compiles, or is refused with errors', async () => {
    await fc.assert(
      fc.asyncProperty(anyText, (text) => compileOrRefuse(text, 'json')),
      { numRuns: 100 },
    );
  });

  it('does so into every output that needs no book', async () => {
    await fc.assert(
      fc.asyncProperty(fc.oneof(scriptLike, tidyScript), (text) => compileOrRefuse(text, withoutBook.join(','))),
      { numRuns: 10 },
    );
  });

  it('does so from any bytes', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 120 }), (bytes) => compileOrRefuse(bytes, 'json')),
      { numRuns: 60 },
    );
  });

  it('gives the same bytes twice, in each of these outputs', async () => {
    await fc.assert(
      fc.asyncProperty(tidyScript, async (text) => {
        const [first, second] = [await compileText(text, withoutBook), await compileText(text, withoutBook)];
        expect(second.files.map(({ name }) => name)).toEqual(first.files.map(({ name }) => name));
        for (const [at, { name, content }] of first.files.entries()) {
          expect(Buffer.from(second.files[at]?.content ?? '').equals(Buffer.from(content)), name).toBe(true);
        }
        expect(second.messages).toEqual(first.messages);
      }),
      { numRuns: 6 },
    );
  });

  it('gives one breakdown.json, however its lines end and whether a byte-order mark leads', async () => {
    await fc.assert(
      fc.asyncProperty(anyText, async (text) => {
        const lines = text.replace(/^\ufeff+/, '').replace(/\r\n?/g, '\n');
        const first = await compileText(lines);
        for (const end of ['\n', '\r\n', '\r']) {
          for (const mark of ['', '\ufeff']) {
            const again = await compileText(mark + lines.replaceAll('\n', end));
            expect(jsonOf(again)).toBe(jsonOf(first));
            expect(again.messages).toEqual(first.messages);
          }
        }
      }),
      { numRuns: 25 },
    );
  });
});
