import type { Production } from '../types.js';

/** What the production book notes of each thing, by the thing's id: `must squeak`, `Ida must not touch them raw`. */
export type BookNotes = ReadonlyMap<string, string>;

/** Reads the notes of all things that the plan knows; an empty map without a book. */
export function readBookNotes(production: Production | null): BookNotes {
  const lines = production?.plan.lines ?? [];
  return new Map(lines.flatMap(({ id, note }) => (note === null || note === '' ? [] : [[id, note] as const])));
}
