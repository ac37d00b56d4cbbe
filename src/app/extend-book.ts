import { type Diagnostic, sortDiagnostics } from '../base/diagnostic.js';
import { addToBook } from '../book/add-to-book.js';
import { readBook } from '../book/read-book.js';
import type { Breakdown } from '../breakdown/types.js';
import type { EarlierFiles } from '../compare/choose-baseline.js';
import { noRenames } from '../compare/read-renames.js';
import { orderShooting } from '../plan/shooting-order.js';
import { carryOver } from './carry-over.js';
import { type BookText, isTold } from './production.js';

/** A book with what is new in the script. */
export interface ExtendedBook {
  readonly text: string;
  /** What was added, and which entries have their new name: `scenes: int-attic-night`. */
  readonly added: readonly string[];
  readonly messages: readonly Diagnostic[];
}

/**
 * Begins a book (`book` is null), or adds what is new in the script to it. Entries of scenes and places whose headings changed get their
 * new names, as far as an earlier run tells for certain what they were; what is doubtful, and a day that lost a scene, is told.
 */
export function extendBook(
  book: BookText | null,
  file: string,
  breakdown: Breakdown,
  earlier: EarlierFiles,
): ExtendedBook {
  const read = book === null ? null : readBook(book.text, file).book;
  const renames = read === null ? noRenames : carryOver(read, book?.text ?? '', breakdown, earlier).renames;
  const extended = addToBook(book?.text ?? null, breakdown, file, renames);
  const after = readBook(extended.text, file).book;
  if (after === null) return extended;
  // What is still to be said is said of the lines as they stand now.
  const carried = carryOver(after, extended.text, breakdown, earlier);
  const rest = addToBook(extended.text, breakdown, file, carried.renames).messages;
  const told = carried.messages.filter(({ code }) => code !== 'names-carried');
  const found = [...rest, ...listLostScenes(carried.book, breakdown, file)];
  return {
    text: extended.text,
    added: extended.added,
    messages: sortDiagnostics([...found.filter((message) => !isTold(message, told)), ...told]),
  };
}

/** Scenes that a shooting day names and the script does not have. */
function listLostScenes(book: Parameters<typeof orderShooting>[1], breakdown: Breakdown, file: string): Diagnostic[] {
  const { messages } = orderShooting(breakdown, book);
  return messages.filter(({ code }) => code === 'book-reference-unknown').map((message) => ({ ...message, file }));
}
