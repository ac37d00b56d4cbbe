import { foldName, foldThing } from '../base/slug.js';
import type { Piece } from './read-blocks.js';
import type { Line } from './types.js';

/** Folded names of all marks. */
export function markNames(pieces: readonly Piece[]): Set<string> {
  const names = new Set<string>();
  for (const piece of pieces) {
    for (const line of linesOf(piece)) for (const mark of line.marks) names.add(foldName(mark.name));
  }
  return names;
}

function linesOf(piece: Piece): readonly Line[] {
  switch (piece.kind) {
    case 'action':
      return piece.lines;
    case 'speech':
      return piece.lines.map((one) => one.line);
    case 'scene':
    case 'transition':
    case 'part':
      return [piece.line];
    case 'page break':
    case 'omitted':
      return [];
  }
}

/** Tells whether the action of a script holds the words of a name, whatever stands between them. */
export function makeSpokenOf(pieces: readonly Piece[]): (name: string) => boolean {
  let text: string | null = null;
  const asked = new Map<string, boolean>();
  return (name) => {
    text ??= wordsOf(pieces.flatMap(actionOf).join(' '));
    const words = wordsOf(foldThing(name));
    const known = asked.get(words) ?? (words.trim() !== '' && text.includes(words));
    asked.set(words, known);
    return known;
  };
}

function actionOf(piece: Piece): string[] {
  return piece.kind === 'action' ? piece.lines.map((line) => line.text) : [];
}

/** The words of a text with one space around each. */
function wordsOf(text: string): string {
  return ` ${foldName(text)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `;
}
