import type { FontFace } from '../types.js';
import { type Inline, type InlineRun, inlineRuns, type TextRun } from './inline.js';
import type { Typesetter } from './typesetter.js';

/** A stretch of text in one face, or a sign, that stands on one line. */
export interface Atom {
  /** The sign, or null for text. */
  readonly sign: Exclude<InlineRun, TextRun> | null;
  readonly face: FontFace;
  readonly text: string;
  /** In points. */
  readonly width: number;
  readonly space: boolean;
  /** True when a line may end before it. */
  readonly breakBefore: boolean;
  readonly newline: boolean;
}

const faces: Record<TextRun['style'], FontFace> = { plain: 'sans', bold: 'sans-bold', italic: 'sans-italic' };

/** Inline text as the longest stretches of one face, not yet cut at spaces. */
export function toStretches(inline: Inline, size: number, type: Typesetter, base: TextRun['style']): Atom[] {
  const atoms: Atom[] = [];
  for (const run of inlineRuns(inline)) {
    if (run.kind !== 'text') {
      const width = run.kind === 'blank' ? run.width : signWidth(size);
      atoms.push({ sign: run, face: 'sans', text: '', width, space: false, breakBefore: false, newline: false });
      continue;
    }
    for (const { face, text } of type.runs(run.text, faces[run.style === 'plain' ? base : run.style])) {
      atoms.push(textAtom(text, face, type.measure(text, face, size), false));
    }
  }
  return atoms;
}

/** Width in points of a sign in type of so many points. */
function signWidth(size: number): number {
  return size * 1.05;
}

function textAtom(text: string, face: FontFace, width: number, breakBefore: boolean): Atom {
  const newline = text === '\n';
  return { sign: null, face, text, width, space: !newline && text.trim() === '', breakBefore, newline };
}

const words =
  /\n|[ \u2009\u2002\u2003]+|[^\n \u2009\u2002\u2003\-\u2010\u2013\u2014/\]]+[-\u2010\u2013\u2014/\]]*|[-\u2010\u2013\u2014/\]]+/g;
const hyphened = /[-\u2010\u2013\u2014/\]]$/;

/** Cuts stretches where a line may end: at spaces, line ends, hyphens, dashes, slashes and closing brackets. */
export function cutStretches(stretches: readonly Atom[], size: number, type: Typesetter): Atom[] {
  const atoms: Atom[] = [];
  let open = true;
  for (const stretch of stretches) {
    if (stretch.sign) {
      atoms.push({ ...stretch, breakBefore: open });
      open = false;
      continue;
    }
    for (const [text] of stretch.text.matchAll(words)) {
      const atom = textAtom(text, stretch.face, text === '\n' ? 0 : type.measure(text, stretch.face, size), open);
      atoms.push(atom);
      open = atom.newline || atom.space || hyphened.test(text);
    }
  }
  return atoms;
}

/** Cuts a word after as many characters as fit the room, at least one. */
export function cutAtom(atom: Atom, room: number, size: number, type: Typesetter): Atom[] {
  const characters = [...atom.text];
  if (characters.length < 2) return [atom];
  let width = 0;
  let count = 0;
  for (const character of characters) {
    width += type.measure(character, atom.face, size);
    if (count > 0 && width > room) break;
    count++;
  }
  const parts = [characters.slice(0, count).join(''), characters.slice(count).join('')].filter((part) => part !== '');
  return parts.map((text) => textAtom(text, atom.face, type.measure(text, atom.face, size), true));
}
