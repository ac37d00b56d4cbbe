import type { Diagnostic } from '../base/diagnostic.js';
import { sortDiagnostics } from '../base/diagnostic.js';
import { sayBook } from '../messages/book.js';
import { type PlacedDocument, parsePlaced } from './book-places.js';
import { checkBook } from './check-book.js';
import { toBook } from './to-book.js';
import type { Book } from './types.js';

/**
 * Reads a production book from its YAML text. An empty text is a book of defaults. A text that is no YAML gives no book;
 * any other mistake is a message with its place, and the rest of the book counts. Never throws.
 */
export function readBook(text: string, file: string): { book: Book | null; messages: Diagnostic[] } {
  const placed = parsePlaced(text);
  const parsed = toPlainValue(placed);
  if ('problem' in parsed) return { book: null, messages: inFile(parsed.problem, file) };
  const { written, messages } = checkBook(parsed.value, placed);
  const made = toBook(written, file, placed);
  return { book: made.book, messages: inFile([...messages, ...made.messages], file) };
}

/** A book with nothing in it: defaults alone. */
export function emptyBook(file = 'book.yaml'): Book {
  return readBook('', file).book as Book;
}

function toPlainValue(placed: PlacedDocument): { value: unknown } | { problem: Diagnostic[] } {
  const { document, rangeOf } = placed;
  if (document.errors.length > 0) {
    return {
      problem: document.errors.map((error) => {
        const at = rangeOf(error.pos[0], error.pos[1]);
        if (error.code !== 'DUPLICATE_KEY') return sayBook('book-not-readable', { problem: plain(error.message) }, at);
        const key = placed.text.slice(error.pos[0]).split(/[:\n]/, 1)[0] ?? '';
        return sayBook('book-key-twice', { key: key.trim() }, at);
      }),
    };
  }
  try {
    return { value: document.toJS() ?? {} };
  } catch (error) {
    // An alias without its anchor, or one that repeats itself without end.
    const problem = error instanceof Error ? plain(error.message) : String(error);
    return { problem: [sayBook('book-not-readable', { problem }, rangeOf(0, 0))] };
  }
}

function plain(message: string): string {
  return (message.split('\n')[0] ?? '').replace(/[.:]\s*$/, '');
}

function inFile(messages: readonly Diagnostic[], file: string): Diagnostic[] {
  return sortDiagnostics(messages.map((message) => ({ ...message, file })));
}
