import type { Diagnostic } from '../base/diagnostic.js';
import { readBook } from '../book/read-book.js';
import type { Breakdown } from '../breakdown/types.js';
import type { EarlierFiles } from '../compare/choose-baseline.js';
import { countBackground } from '../plan/background.js';
import { makePlan } from '../plan/make-plan.js';
import { settleQuestions } from '../plan/settle-questions.js';
import type { Production } from '../render/types.js';
import { carryOver } from './carry-over.js';

/** A production book as a file: its YAML text, and its path for messages. */
export interface BookText {
  readonly text: string;
  readonly file: string;
}

/**
 * Reads a production book, lets it follow headings that changed since the runs before, settles what it answers and plans by it;
 * null when the book is no YAML (the messages say where).
 */
export function makeProduction(
  book: BookText,
  breakdown: Breakdown,
  today: string,
  earlier: EarlierFiles,
): {
  readonly production: Production | null;
  readonly breakdown: Breakdown;
  readonly messages: readonly Diagnostic[];
} {
  const read = readBook(book.text, book.file);
  if (!read.book) return { production: null, breakdown, messages: read.messages };
  const carried = carryOver(read.book, book.text, breakdown, earlier);
  const counted = countBackground(breakdown, carried.book);
  const settled = settleQuestions(counted, carried.book);
  const planned = makePlan(settled.breakdown, carried.book, today);
  const found = [...settled.messages, ...planned.messages];
  return {
    production: { book: carried.book, plan: planned.plan, renames: carried.renames },
    breakdown: settled.breakdown,
    messages: [...read.messages, ...carried.messages, ...found.filter((message) => !isTold(message, carried.messages))],
  };
}

/** What may be another name for a scene or place needs no second message that it is lost. */
export function isTold({ code, actual }: Diagnostic, told: readonly Diagnostic[]): boolean {
  if (code !== 'book-reference-unknown' && code !== 'book-entry-without-script') return false;
  return told.some((one) => (one.code === 'name-doubtful' || one.code === 'name-slipped') && one.actual === actual);
}
