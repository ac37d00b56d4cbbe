import type { FontFace } from '../types.js';
import { type Atom, cutAtom, cutStretches, toStretches } from './atoms.js';
import type { Inline, TextRun } from './inline.js';
import { capHeight, leading, weights } from './measures.js';
import type { Item } from './page-tree.js';
import type { Typesetter } from './typesetter.js';

/** One line of set text: its items stand at their place, `y` counting from the line's top. */
export interface SetLine {
  readonly items: readonly Item[];
  readonly width: number;
}

export interface WrapOptions {
  readonly size: number;
  /** Left end and width of the column, in points. */
  readonly x: number;
  readonly width: number;
  /** How much further right every line but the first begins. */
  readonly hang?: number;
  /** Sets all plain text bold or italic. */
  readonly style?: TextRun['style'];
  readonly align?: 'left' | 'right';
}

/** Height of a line of type of so many points. */
export function lineHeight(size: number): number {
  return size * leading;
}

/** Width in points of inline text; the widest of its lines when it holds line ends. */
export function naturalWidth(
  inline: Inline,
  size: number,
  type: Typesetter,
  style: TextRun['style'] = 'plain',
): number {
  const stretches = toStretches(inline, size, type, style);
  if (!stretches.some((one) => one.text.includes('\n'))) return sumWidths(stretches);
  let width = 0;
  let widest = 0;
  for (const atom of cutStretches(stretches, size, type)) {
    width = atom.newline ? 0 : width + atom.width;
    widest = Math.max(widest, width);
  }
  return widest;
}

/** Breaks inline text into lines no wider than the column. A word wider than a whole line is cut where the line ends. */
export function wrapInline(inline: Inline, options: WrapOptions, type: Typesetter): readonly SetLine[] {
  const stretches = toStretches(inline, options.size, type, options.style ?? 'plain');
  if (stretches.length === 0) return [{ items: [], width: 0 }];
  // Most texts on a sheet fit one line: they need no look for places to end it.
  if (fitsOneLine(stretches, options.width)) return [setLine(stretches, 0, options)];
  const atoms = cutStretches(stretches, options.size, type);
  const lines: SetLine[] = [];
  let start = 0;
  while (start < atoms.length) {
    const indent = lines.length === 0 ? 0 : (options.hang ?? 0);
    const end = findLineEnd(atoms, start, options.width - indent, options.size, type);
    lines.push(setLine(trimEnd(atoms.slice(start, end)), indent, options));
    start = end;
    if (atoms[start]?.newline) start++;
    else while (atoms[start]?.space) start++;
  }
  return lines;
}

function fitsOneLine(stretches: readonly Atom[], width: number): boolean {
  if (stretches.some((one) => one.text.includes('\n'))) return false;
  return sumWidths(stretches) <= width && !stretches.at(-1)?.text.endsWith(' ');
}

function sumWidths(atoms: readonly Atom[]): number {
  let sum = 0;
  for (const atom of atoms) sum += atom.width;
  return sum;
}

/** Index of the first atom that stands on the next line; an atom too wide for any line is cut in two in place. */
function findLineEnd(atoms: Atom[], start: number, room: number, size: number, type: Typesetter): number {
  let width = 0;
  let lastBreak = -1;
  for (let i = start; i < atoms.length; i++) {
    const atom = atoms[i] as Atom;
    if (atom.newline) return i;
    if (i > start && atom.breakBefore) lastBreak = i;
    width += atom.width;
    if (atom.space || width <= room + 0.01) continue;
    if (lastBreak > start) return lastBreak;
    if (i > start) return i;
    atoms.splice(i, 1, ...cutAtom(atom, room, size, type));
    return i + 1;
  }
  return atoms.length;
}

function trimEnd(atoms: readonly Atom[]): readonly Atom[] {
  let end = atoms.length;
  while (end > 0 && (atoms[end - 1] as Atom).space) end--;
  return atoms.slice(0, end);
}

function setLine(atoms: readonly Atom[], indent: number, options: WrapOptions): SetLine {
  const { size } = options;
  const width = sumWidths(atoms);
  const baseline = baselineOf(size);
  const items: Item[] = [];
  let x = options.x + (options.align === 'right' ? options.width - width : indent);
  let face: FontFace = 'sans';
  let text = '';
  let left = x;
  const flush = () => {
    if (text.trim() !== '') items.push({ kind: 'text', x: left, y: baseline, text, face, size });
    text = '';
  };
  for (const atom of atoms) {
    if (atom.sign) {
      flush();
      items.push(signItem(atom.sign, x, baseline, size));
    } else {
      if (text === '' || atom.face !== face) {
        flush();
        left = x;
        face = atom.face;
      }
      text += atom.text;
    }
    x += atom.width;
  }
  flush();
  return { items, width };
}

/** Distance from a line's top to its baseline, in points: capitals stand in the middle of the line. */
export function baselineOf(size: number): number {
  return (lineHeight(size) + capHeight * size) / 2;
}

function signItem(sign: NonNullable<Atom['sign']>, x: number, baseline: number, size: number): Item {
  const side = size * 0.78;
  if (sign.kind === 'tick') {
    const y = baseline - side + size * 0.07;
    return { kind: 'rect', x: x + size * 0.13, y, width: side, height: side, weight: weights.rule };
  }
  if (sign.kind === 'danger')
    return { kind: 'triangle', x: x + size * 0.08, y: baseline - size * 0.76, size: size * 0.8 };
  const y = baseline + size * 0.18;
  return { kind: 'line', x, y, x2: x + sign.width, y2: y, weight: weights.hair, dashed: false };
}
