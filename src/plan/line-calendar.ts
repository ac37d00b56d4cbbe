import type { Book, BookSupplier } from '../book/types.js';
import type { WorkCalendar } from './working-days.js';

/** The calendar of a supplier: its own days of the week, else the book's, and the book's holidays. */
export function calendarOf(book: Book, supplier: BookSupplier | null): WorkCalendar {
  return { weekdays: supplier?.deliversOn ?? book.workingDays.value, holidays: new Set(book.holidays) };
}
