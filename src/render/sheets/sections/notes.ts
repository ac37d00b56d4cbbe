import type { Block } from '../../layout/blocks.js';
import type { Section } from '../sheet-context.js';
import { foldedWords } from '../sheet-words.js';

/** The writer's notes to everyone, and the questions answered; folded, in running text, then a count. */
export const writeNotes: Section = (scene, _context, fold) => {
  if (scene.notes.length === 0) return [];
  const texts = scene.notes.map((note) => (note.kind === 'answer' ? decidedWords(note.text, scene.id) : note.text));
  const blocks: Block[] = [
    fold === 0
      ? { kind: 'entries', entries: texts }
      : { kind: 'paragraph', text: fold === 1 ? texts.join(' / ') : foldedWords(texts.length, 'note') },
  ];
  return [{ kind: 'section', label: 'Notes', blocks }];
};

/** A decision with the matter in words: the question's own id is for the script, not for paper. */
function decidedWords(text: string, scene: string): string {
  const [, id = '', line = text] = /^(\S+):\s*(.*)$/s.exec(text) ?? [];
  const matter = id.replace(`-${scene}`, '').replaceAll('-', ' ');
  return matter === '' ? `Decided: ${line}` : `Decided (${matter}): ${line}`;
}
