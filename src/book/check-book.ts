import type { z } from 'zod';
import type { Diagnostic } from '../base/diagnostic.js';
import { findNearest } from '../base/nearest.js';
import { sayBook } from '../messages/book.js';
import type { Path, PlacedDocument } from './book-places.js';
import { bookShape, type WrittenBook } from './book-shape.js';
import { hintForKey } from './key-hints.js';

type Issue = z.core.$ZodIssue;

/**
 * Checks a book as parsed against its shape. Every mistake is a message with its place; what is wrong is then left out,
 * so that the rest of the book still counts. `value` is changed: it must belong to the caller alone.
 */
export function checkBook(value: unknown, placed: PlacedDocument): { written: WrittenBook; messages: Diagnostic[] } {
  const messages: Diagnostic[] = [];
  let holder = { book: value };
  // Each round takes out a value, or all of them: the number of values in the text bounds the rounds.
  for (;;) {
    const result = bookShape.safeParse(holder.book);
    if (result.success) return { written: result.data, messages };
    const issues = result.error.issues.flatMap((issue) => unfold(issue, []));
    messages.push(...issues.flatMap((issue) => explain(issue, placed)));
    const isWhole = issues.some((issue) => issue.path.length === 0 && issue.code !== 'unrecognized_keys');
    const taken = issues.filter((issue) => !isWhole && takeOut(holder.book, issue)).length;
    if (taken === 0) holder = { book: {} };
  }
}

/** Of a choice between shapes, the one that was meant speaks: the one that went wrong furthest inside. */
function unfold(issue: Issue, above: Path): Issue[] {
  const path = [...above, ...issue.path];
  if (issue.code === 'invalid_union') {
    const inner = issue.errors.find((issues) =>
      issues.some((one) => one.path.length > 0 || one.code === 'unrecognized_keys'),
    );
    if (inner) return inner.flatMap((one) => unfold(one, path));
  }
  return [{ ...issue, path } as Issue];
}

function explain(issue: Issue, placed: PlacedDocument): Diagnostic[] {
  if (issue.code === 'unrecognized_keys') {
    const known = knownKeys(issue.path);
    const where = issue.path.length === 0 ? 'at the left margin' : `under "${issue.path.map(String).join(', ')}"`;
    return issue.keys.map((key) => {
      const meant = hintForKey(String(issue.path[0] ?? ''), key);
      const near = meant === null ? findNearest(key, known) : meant.known;
      const write = meant?.write ?? null;
      return sayBook('book-key-unknown', { key, where, known, near, write }, placed.keyAt([...issue.path, key]));
    });
  }
  const at = placed.at(issue.path);
  const source = placed.text.slice(at.start.offset, at.end.offset).split('\n')[0] ?? '';
  const found = source.trim() === '' ? 'nothing' : `"${source.trim().slice(0, 60)}"`;
  if (issue.path.length === 0) return [sayBook('book-not-a-list-of-names', { found }, at)];
  return [sayBook('book-value', { expected: issue.message, found }, at)];
}

/** Takes a wrong value out; false when there was none to take. */
function takeOut(book: unknown, issue: Issue): boolean {
  if (issue.code === 'unrecognized_keys') {
    const owner = reach(book, issue.path);
    if (owner === null) return false;
    const known = issue.keys.filter((key) => Object.hasOwn(owner, key));
    for (const key of known) delete owner[key];
    return known.length > 0;
  }
  const last = issue.path.at(-1);
  const owner = reach(book, issue.path.slice(0, -1));
  if (owner === null || last === undefined) return false;
  if (owner[last] !== undefined && owner[last] !== null) {
    owner[last] = null;
    return true;
  }
  // What is asked for and missing makes the whole entry useless.
  return takeOut(book, { ...issue, path: issue.path.slice(0, -1) } as Issue);
}

function reach(book: unknown, path: Path): Record<PropertyKey, unknown> | null {
  let value: unknown = book;
  for (const step of path) value = isHolder(value) ? value[step] : undefined;
  return isHolder(value) ? value : null;
}

function isHolder(value: unknown): value is Record<PropertyKey, unknown> {
  return typeof value === 'object' && value !== null;
}

/** The names that the shape knows at a path. */
function knownKeys(path: Path): string[] {
  let shape: unknown = bookShape;
  for (const step of path) shape = stepInto(unwrap(shape), step);
  const top = unwrap(shape) as { shape?: Record<string, unknown>; options?: unknown[] } | null;
  const object = top?.shape ?? objectAmong(top?.options);
  return object ? Object.keys(object) : [];
}

function stepInto(shape: unknown, step: PropertyKey): unknown {
  const one = shape as {
    shape?: Record<PropertyKey, unknown>;
    valueType?: unknown;
    element?: unknown;
    options?: unknown[];
  } | null;
  if (one?.shape) return one.shape[step];
  if (one?.valueType) return one.valueType;
  if (one?.element) return one.element;
  const array = one?.options?.map(unwrap).find((option) => (option as { element?: unknown } | null)?.element);
  if (typeof step === 'number' && array) return (array as { element: unknown }).element;
  const object = objectAmong(one?.options);
  return object?.[step];
}

function objectAmong(options: unknown[] | undefined): Record<PropertyKey, unknown> | undefined {
  const found = options?.map(unwrap).find((option) => (option as { shape?: unknown } | null)?.shape);
  return (found as { shape: Record<PropertyKey, unknown> } | undefined)?.shape;
}

/** Takes "may be left out" and "is then turned into" off a shape. */
function unwrap(shape: unknown): unknown {
  let one = shape as { def?: { innerType?: unknown; in?: unknown } } | null | undefined;
  while (one?.def && (one.def.innerType || one.def.in)) one = (one.def.innerType ?? one.def.in) as typeof one;
  return one ?? null;
}
