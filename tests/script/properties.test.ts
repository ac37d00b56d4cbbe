import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseMarkdown } from '../../src/script/parse-markdown.js';
import { printLines } from '../../src/script/printed-lines.js';
import { readScript, readScriptText } from '../../src/script/read-script.js';
import { makeSourceText } from '../../src/script/source-text.js';
import type { Line, Script } from '../../src/script/types.js';
import { anyText, nastyText } from './any-text.js';
import { allLines } from './project.js';

const runs = { numRuns: 500 };

/** White space prints as spaces, a NUL as the replacement character. */
const asPrinted = (text: string) => text.replace(/[\s\u0085]/g, ' ').replaceAll('\0', '\ufffd');

function checkLine(line: Line, script: Script): void {
  let end = 0;
  for (const span of line.spans) {
    expect(span.start).toBe(end);
    end = span.end;
    const text = line.text.slice(span.start, span.end);
    const source = script.source.slice(span.offset, span.offset + text.length);
    if (!source.startsWith('&')) expect(asPrinted(text)).toBe(asPrinted(source));
    expect(span.offset).toBeGreaterThanOrEqual(line.at.start.offset);
    expect(span.offset).toBeLessThan(line.at.end.offset);
  }
  expect(end).toBe(line.text.length);
  expect(line.text).toBe(line.text.trim());
  for (const mark of line.marks) expect(line.text.slice(mark.start, mark.end)).toBe(mark.words);
}

/** Every place in a script or a message, wherever it hides. */
function placesIn(value: unknown): { line: number; column: number; offset: number }[] {
  if (Array.isArray(value)) return value.flatMap(placesIn);
  if (typeof value !== 'object' || value === null) return [];
  if ('column' in value && 'offset' in value) return [value as { line: number; column: number; offset: number }];
  return Object.values(value).flatMap(placesIn);
}

describe('the reader, whatever the text', () => {
  it('reads any bytes without throwing', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        const { script, messages } = readScript(bytes, 'any.md');
        expect(script !== null || messages.some((message) => message.severity === 'error')).toBe(true);
      }),
      runs,
    );
  });

  it('maps every printed line to the source text it prints', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const { script } = readScriptText(text, 'any.md');
        expect(script).not.toBeNull();
        for (const line of script ? allLines(script) : []) checkLine(line, script as Script);
      }),
      runs,
    );
  });

  it('gives places whose line and column agree with their offset', () => {
    fc.assert(
      fc.property(nastyText, (text) => {
        const read = readScriptText(text, 'any.md');
        const source = read.script?.source ?? '';
        for (const { line, column, offset } of placesIn([read.script, read.messages])) {
          const before = source.slice(0, offset).split('\n');
          expect([line, column]).toEqual([before.length, (before.at(-1) ?? '').length + 1]);
        }
      }),
      runs,
    );
  });

  it('reads the same whatever the line ends and with a byte-order mark', () => {
    fc.assert(
      fc.property(nastyText, (text) => {
        const lines = text.replace(/\r\n?/g, '\n');
        const read = readScriptText(lines, 'any.md');
        for (const other of [lines.replaceAll('\n', '\r\n'), lines.replaceAll('\n', '\r'), `\ufeff${lines}`]) {
          expect(readScriptText(other, 'any.md')).toEqual(read);
        }
      }),
      runs,
    );
  });

  it('reads the same text as bytes and as text', () => {
    fc.assert(
      fc.property(nastyText, (text) => {
        const bytes = new TextEncoder().encode(text);
        expect(readScript(bytes, 'any.md')).toEqual(
          readScriptText(new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes), 'any.md'),
        );
      }),
      runs,
    );
  });

  it('prints nothing of what is private', () => {
    fc.assert(
      fc.property(nastyText, fc.nat(), (text, seed) => {
        const plain = text.replace(/[-<>\\]/g, '').replace(/^\s+/, '');
        const at = seed % (plain.length + 1);
        const { script } = readScriptText(`${plain.slice(0, at)}<!-- qqq [qqq] -->${plain.slice(at)}`, 'any.md');
        const { source: _, ...rest } = script as Script;
        expect(JSON.stringify(rest)).not.toContain('qqq');
      }),
      runs,
    );
  });

  it('reads the same piece by piece as in one piece', () => {
    fc.assert(
      fc.property(nastyText, (text) => {
        const source = makeSourceText(text);
        const whole = printLines(parseMarkdown(source.text, Number.MAX_SAFE_INTEGER), source, source.text);
        expect(printLines(parseMarkdown(source.text, 0), source, source.text)).toEqual(whole);
      }),
      runs,
    );
  });
});
