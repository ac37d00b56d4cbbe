import { answeredId } from './answers.js';
import { notesOf, type SceneGround } from './ground.js';
import type { SceneNote } from './types.js';

/** The notes that speak to everyone, and the answers that were given, in their order. */
export function listNotes({ scene }: SceneGround): SceneNote[] {
  const free = notesOf(scene.notes, 'free').map(({ line, at }) => ({ kind: 'free' as const, text: line, at }));
  const answers = notesOf(scene.notes, 'answer').map(({ question, line, at }) => ({
    kind: 'answer' as const,
    text: `${answeredId(question)}: ${line}`,
    at,
  }));
  return [...free, ...answers]
    .sort((a, b) => a.at.start.offset - b.at.start.offset)
    .map(({ kind, text, at }) => ({ kind, text, line: at.start.line }));
}
