import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Diagnostic } from '../../src/base/diagnostic.js';
import { addToBook } from '../../src/book/add-to-book.js';
import { bookMessages } from '../../src/messages/book.js';
import { breakdownMessages } from '../../src/messages/breakdown.js';
import { findMessages } from '../../src/messages/find.js';
import { pageMessages } from '../../src/messages/page.js';
import { planMessages } from '../../src/messages/plan.js';
import { renderMessages } from '../../src/messages/render.js';
import { compileText } from '../support/compile-text.js';

/** One folder for each message behind the reader: a script, with its book where one is needed, that raises it, the report, and one that raises none. */
const folderOf = (code: string) => new URL(`./${code}/`, import.meta.url);

/** Raised when a book is begun or extended, not when a script is compiled with it. */
const whenExtended = new Set(['book-section-not-extended', 'book-same-thing-twice', 'book-entry-without-script']);

async function read(code: string, name: 'bad' | 'good'): Promise<readonly Diagnostic[]> {
  const script = readFileSync(new URL(`${name}.md`, folderOf(code)), 'utf8');
  const bookFile = new URL(`${name}.book.yaml`, folderOf(code));
  const book = existsSync(bookFile) ? { file: 'book.yaml', text: readFileSync(bookFile, 'utf8') } : null;
  const { messages, breakdown } = await compileText(script, code in renderMessages ? ['sheets'] : ['json'], book);
  if (!whenExtended.has(code) || !book || !breakdown) return messages;
  return [...messages, ...addToBook(book.text, breakdown, book.file).messages];
}

function report(messages: readonly Diagnostic[]): string {
  const lines = messages.map(({ file, place, severity, code, reason, hint }) => {
    const where = place ? `${place.start.line}:${place.start.column} ` : '';
    // How many lines are too many is for the layout to say.
    const words = code === 'sheet-overfull' ? reason.replace(/\d+ lines/, 'N lines') : reason;
    return `${file ? `${file}:` : ''}${where}${severity} ${code} ${words}\n  hint: ${hint ?? 'none'}\n`;
  });
  return lines.join('');
}

const tables = {
  page: pageMessages,
  find: findMessages,
  breakdown: breakdownMessages,
  book: bookMessages,
  plan: planMessages,
  render: renderMessages,
};

/** Speak of the whole script, or of a section of the book. */
const placeless = new Set(['book-section-not-extended']);

describe.each(Object.entries(tables))('every message of the layer %s', (_, table) => {
  describe.each(Object.keys(table))('%s', (code) => {
    it('is raised by bad.md, as report.txt says', async () => {
      const messages = await read(code, 'bad');
      const file = new URL('report.txt', folderOf(code));
      if (process.env.UPDATE_CASES === '1') writeFileSync(file, report(messages));
      expect(messages.map((message) => message.code)).toContain(code);
      expect(report(messages)).toBe(readFileSync(file, 'utf8'));
    });

    it('is not raised by good.md, and nothing else is', async () => {
      expect(report(await read(code, 'good'))).toBe('');
    });

    it('tells what to do in words, and where', async () => {
      const message = (await read(code, 'bad')).find((one) => one.code === code);
      expect(message?.hint).toMatch(/\w+ .*[.?]$/s);
      expect(message?.reason).toMatch(/[.?]$/);
      if (!placeless.has(code)) expect(message?.place?.start.line).toBeGreaterThan(0);
    });
  });
});
