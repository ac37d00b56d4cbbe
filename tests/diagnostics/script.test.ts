import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../src/base/diagnostic.js';
import { scriptMessages } from '../../src/messages/script.js';
import { readScript } from '../../src/script/read-script.js';

/** One folder for each message of the reader: a script that raises it, the report, and one that does not. */
const folderOf = (code: string) => new URL(`./${code}/`, import.meta.url);

function read(code: string, name: string): readonly Diagnostic[] {
  return readScript(readFileSync(new URL(name, folderOf(code))), name).messages;
}

function report(messages: readonly Diagnostic[]): string {
  const lines = messages.map(({ place, severity, code, reason, hint, related }) => {
    const { line, column } = place?.start ?? { line: 0, column: 0 };
    const others = (related ?? []).map((other) => `\n  ${other.place.start.line}: ${other.reason}`).join('');
    return `${line}:${column} ${severity} ${code} ${reason}\n  hint: ${hint ?? 'none'}${others}\n`;
  });
  return lines.join('');
}

describe('every message of the reader', () => {
  for (const code of Object.keys(scriptMessages)) {
    describe(code, () => {
      it('is raised by bad.md, as report.txt says', () => {
        const messages = read(code, 'bad.md');
        const file = new URL('report.txt', folderOf(code));
        if (process.env.UPDATE_CASES === '1') writeFileSync(file, report(messages));
        expect(messages.map((message) => message.code)).toContain(code);
        expect(report(messages)).toBe(readFileSync(file, 'utf8'));
      });

      it('is not raised by good.md, and nothing else is', () => {
        expect(existsSync(new URL('good.md', folderOf(code)))).toBe(true);
        expect(report(read(code, 'good.md'))).toBe('');
      });

      it('tells what to do in words, and where', () => {
        const message = read(code, 'bad.md').find((one) => one.code === code);
        expect(message?.hint).toMatch(/\w+ .*\.$/s);
        expect(message?.reason).toMatch(/[.?`]$/);
        expect(message?.place?.start.line).toBeGreaterThan(0);
      });
    });
  }
});
