import type { Diagnostic } from '../base/diagnostic.js';
import { sayScript } from '../messages/script.js';
import type { Note, Scene } from './types.js';

/** What a scene has one of, by the kind of its note. */
const onlyOne = new Map<Note['kind'], string>([
  ['synopsis', 'synopsis'],
  ['time', 'time'],
  ['day', 'day'],
]);

/** Says when a scene has two notes of which only one can count. */
export function checkRepeatedNotes(scenes: readonly Pick<Scene, 'notes'>[]): Diagnostic[] {
  return scenes.flatMap(({ notes }) =>
    notes.flatMap((note, index) => {
      const key = onlyOne.get(note.kind);
      const next = notes.slice(index + 1).find(({ kind }) => kind === note.kind);
      if (key === undefined || !next) return [];
      return [sayScript('note-twice', { key }, note.at, [{ place: next.at, reason: 'this one counts' }])];
    }),
  );
}

/** Says when `wears`, which tells how somebody comes into a scene, stands behind a change of the same scene. */
export function checkLateLists(scenes: readonly Pick<Scene, 'notes'>[]): Diagnostic[] {
  return scenes.flatMap(({ notes }) => {
    const changed = new Set<string>();
    return notes.flatMap((note) => {
      if (note.kind !== 'costume') return [];
      if (note.verb !== 'wears') changed.add(note.person);
      const isLate = note.verb === 'wears' && changed.has(note.person);
      return isLate ? [sayScript('note-wears-late', { person: note.person }, note.at)] : [];
    });
  });
}
