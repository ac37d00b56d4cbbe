import type { Section } from '../sheet-context.js';

/** The writer's notes to everyone, and the questions answered; folded, in running text. */
export const writeNotes: Section = (scene, _context, fold) => {
  if (scene.notes.length === 0) return [];
  const texts = scene.notes.map((note) => (note.kind === 'answer' ? `Decided: ${note.text}` : note.text));
  const blocks =
    fold > 0
      ? [{ kind: 'paragraph', text: texts.join(' / ') } as const]
      : [{ kind: 'entries', entries: texts } as const];
  return [{ kind: 'section', label: 'Notes', blocks }];
};
