import type { Diagnostic } from '../base/diagnostic.js';
import { readBook } from '../book/read-book.js';
import type { Breakdown } from '../breakdown/types.js';
import { countBackground } from '../plan/background.js';
import { makePlan } from '../plan/make-plan.js';
import { settleQuestions } from '../plan/settle-questions.js';
import type { Production } from '../render/types.js';

/** A production book as a file: its YAML text, and its path for messages. */
export interface BookText {
  readonly text: string;
  readonly file: string;
}

/** Reads a production book, settles what it answers and plans by it; null when the book is no YAML (the messages say where). */
export function makeProduction(
  book: BookText,
  breakdown: Breakdown,
  today: string,
): {
  readonly production: Production | null;
  readonly breakdown: Breakdown;
  readonly messages: readonly Diagnostic[];
} {
  const read = readBook(book.text, book.file);
  if (!read.book) return { production: null, breakdown, messages: read.messages };
  const counted = countBackground(breakdown, read.book);
  const settled = settleQuestions(counted, read.book);
  const planned = makePlan(settled.breakdown, read.book, today);
  return {
    production: { book: read.book, plan: planned.plan },
    breakdown: settled.breakdown,
    messages: [...read.messages, ...settled.messages, ...planned.messages],
  };
}
