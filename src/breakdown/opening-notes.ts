import type { Diagnostic } from '../base/diagnostic.js';
import { sayBreakdown } from '../messages/breakdown.js';
import type { Script } from '../script/types.js';

/** Tells of notes before the first scene that can hold for no whole script. */
export function checkOpeningNotes(script: Script): Diagnostic[] {
  return script.notes
    .filter((note) => !['no', 'answer', 'free'].includes(note.kind) && !isDefaultCostume(note))
    .map((note) => sayBreakdown('note-for-whole-script', { text: note.text }, note.at));
}

function isDefaultCostume(note: Script['notes'][number]): boolean {
  return note.kind === 'costume' && note.verb === 'wears';
}
