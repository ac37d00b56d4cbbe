import type { Block } from '../../layout/blocks.js';
import type { Section } from '../sheet-context.js';
import { foldedWords } from '../sheet-words.js';

/** The writer's notes to everyone, and the questions answered; folded, in running text, then a count. */
export const writeNotes: Section = (scene, _context, fold) => {
  if (scene.notes.length === 0) return [];
  const texts = scene.notes.map((note) => (note.kind === 'answer' ? `Decided: ${note.text}` : note.text));
  const blocks: Block[] = [
    fold === 0
      ? { kind: 'entries', entries: texts }
      : { kind: 'paragraph', text: fold === 1 ? texts.join(' / ') : foldedWords(texts.length, 'note') },
  ];
  return [{ kind: 'section', label: 'Notes', blocks }];
};
