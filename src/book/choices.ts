import type { Diagnostic } from '../base/diagnostic.js';
import type { Ratio } from '../base/ratio.js';
import { isTimeZone } from '../base/time-zone.js';
import { sayBook } from '../messages/book.js';
import type { Path, PlacedDocument } from './book-places.js';
import type { Choice } from './types.js';

/** A zone name that this machine's IANA data knows; otherwise a message and null. */
export function checkZone(
  zone: string | null | undefined,
  path: Path,
  placed: PlacedDocument,
  messages: Diagnostic[],
): string | null {
  if (zone === null || zone === undefined) return null;
  if (isTimeZone(zone)) return zone;
  messages.push(
    sayBook('book-value', { expected: 'a time zone such as Europe/Copenhagen', found: `"${zone}"` }, placed.at(path)),
  );
  return null;
}

/** What the book gives, else the default, known as such. */
export function choose<T>(given: T | null | undefined, fallback: T): Choice<T> {
  return given === null || given === undefined ? { value: fallback, given: false } : { value: given, given: true };
}

/** The items of a list as text, without empty ones. */
export function texts(list: readonly (string | number | null | undefined)[] | null | undefined): string[] {
  return (list ?? []).filter((one) => one !== null && one !== undefined).map(String);
}

/** The names of a list as text: `1, 2` in one item is two names, for no name holds a comma. */
export function names(list: readonly (string | number | null | undefined)[] | null | undefined): string[] {
  return texts(list).flatMap((one) =>
    one
      .split(',')
      .map((name) => name.trim())
      .filter((name) => name !== ''),
  );
}

/** A fraction as a number, for measures of time. */
export function toNumber(value: Ratio | null | undefined): number | null {
  return value ? Number(value.over) / Number(value.under) : null;
}
