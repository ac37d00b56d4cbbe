import type { FontFace } from '../types.js';
import { type Inline, type InlineRun, inlineRuns, type TextRun } from './inline.js';
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

/** A stretch that no line end may cut. */
interface Atom {
  readonly run: Exclude<InlineRun, TextRun> | null;
  readonly face: FontFace;
  readonly text: string;
  readonly width: number;
  readonly space: boolean;
  /** True when a line may end before it. */
  readonly breakBefore: boolean;
  readonly newline: boolean;
}

const faces: Record<TextRun['style'], FontFace> = { plain: 'sans', bold: 'sans-bold', italic: 'sans-italic' };

/** Height of a line of type of so many points. */
export function lineHeight(size: number): number {
  return size * leading;
}

/** Width in points of inline text set on one line. */
export function naturalWidth(
  inline: Inline,
  size: number,
  type: Typesetter,
  style: TextRun['style'] = 'plain',
): number {
  let width = 0;
  let widest = 0;
  for (const atom of toAtoms(inline, size, type, style)) {
    if (atom.newline) width = 0;
    else width += atom.width;
    widest = Math.max(widest, width);
  }
  return widest;
}

/** Breaks inline text into lines no wider than the column. A word wider than a whole line is cut where the line ends. */
export function wrapInline(inline: Inline, options: WrapOptions, type: Typesetter): readonly SetLine[] {
  const atoms = toAtoms(inline, options.size, type, options.style ?? 'plain');
  const hang = options.hang ?? 0;
  const lines: SetLine[] = [];
  let start = 0;
  while (start < atoms.length) {
    const indent = lines.length === 0 ? 0 : hang;
    const end = findLineEnd(atoms, start, options.width - indent, options.size, type);
    lines.push(setLine(atoms.slice(start, end), indent, options));
    start = end;
    if (atoms[start]?.newline) start++;
    else while (atoms[start]?.space) start++;
  }
  return lines.length > 0 ? lines : [{ items: [], width: 0 }];
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

/** Cuts a word after as many characters as fit, at least one. */
function cutAtom(atom: Atom, room: number, size: number, type: Typesetter): Atom[] {
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
  return parts.map((text) => ({ ...atom, text, width: type.measure(text, atom.face, size), breakBefore: true }));
}

function toAtoms(inline: Inline, size: number, type: Typesetter, base: TextRun['style']): Atom[] {
  const atoms: Atom[] = [];
  let afterBreak = true;
  for (const run of inlineRuns(inline)) {
    if (run.kind === 'text') afterBreak = addTextAtoms(atoms, run, size, type, base, afterBreak);
    else {
      const width = run.kind === 'blank' ? run.width : signWidth(size);
      atoms.push({ run, face: 'sans', text: '', width, space: false, breakBefore: afterBreak, newline: false });
      afterBreak = false;
    }
  }
  return atoms;
}

const pieces =
  /\n|[ \u2009\u2002\u2003]+|[^\n \u2009\u2002\u2003\-\u2010\u2013\u2014/\]]+[-\u2010\u2013\u2014/\]]*|[-\u2010\u2013\u2014/\]]+/g;

/** Adds the atoms of a text run; gives whether a line may end after it. */
function addTextAtoms(
  atoms: Atom[],
  run: TextRun,
  size: number,
  type: Typesetter,
  base: TextRun['style'],
  afterBreak: boolean,
): boolean {
  let open = afterBreak;
  for (const part of type.runs(run.text, faces[run.style === 'plain' ? base : run.style])) {
    for (const [text] of part.text.matchAll(pieces)) {
      const newline = text === '\n';
      const space = !newline && text.trim() === '';
      const width = newline ? 0 : type.measure(text, part.face, size);
      atoms.push({ run: null, face: part.face, text, width, space, breakBefore: open, newline });
      open = newline || space || /[-\u2010\u2013\u2014/\]]$/.test(text);
    }
  }
  return open;
}

function setLine(atoms: readonly Atom[], indent: number, options: WrapOptions): SetLine {
  const shown = trimEnd(atoms);
  const width = shown.reduce((sum, atom) => sum + atom.width, 0);
  let x = options.x + (options.align === 'right' ? options.width - width : indent);
  const baseline = baselineOf(options.size);
  const items: Item[] = [];
  let open: { x: number; face: FontFace; text: string } | null = null;
  const flush = () => {
    if (open && open.text.trim() !== '') items.push({ kind: 'text', y: baseline, size: options.size, ...open });
    open = null;
  };
  for (const atom of shown) {
    if (atom.run) {
      flush();
      items.push(...signItems(atom.run, x, baseline, options.size));
    } else if (open && (open as { face: FontFace }).face === atom.face) {
      (open as { text: string }).text += atom.text;
    } else {
      flush();
      open = { x, face: atom.face, text: atom.text };
    }
    x += atom.width;
  }
  flush();
  return { items, width };
}

function trimEnd(atoms: readonly Atom[]): readonly Atom[] {
  let end = atoms.length;
  while (end > 0 && (atoms[end - 1] as Atom).space) end--;
  return atoms.slice(0, end);
}

/** Distance from a line's top to its baseline, in points: capitals stand in the middle of the line. */
export function baselineOf(size: number): number {
  return (lineHeight(size) + capHeight * size) / 2;
}

function signWidth(size: number): number {
  return size * 1.05;
}

function signItems(run: Exclude<InlineRun, TextRun>, x: number, baseline: number, size: number): Item[] {
  const side = size * 0.78;
  if (run.kind === 'tick') {
    const y = baseline - side + size * 0.07;
    return [{ kind: 'rect', x: x + size * 0.13, y, width: side, height: side, weight: weights.rule }];
  }
  if (run.kind === 'danger')
    return [{ kind: 'triangle', x: x + size * 0.08, y: baseline - size * 0.76, size: size * 0.8 }];
  const y = baseline + size * 0.18;
  return [{ kind: 'line', x, y, x2: x + run.width, y2: y, weight: weights.hair, dashed: false }];
}
