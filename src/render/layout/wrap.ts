import type { FontFace } from '../types.js';
import { breakLines } from './break-lines.js';
import { type Inline, type InlineRun, inlineRuns, type TextRun } from './inline.js';
import { capHeight, leading, weights } from './measures.js';
import type { Item } from './page-tree.js';
import { type Sign, type Stretch, toStretches } from './stretches.js';
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
  if (!hasLineEnd(stretches)) return sumWidths(stretches);
  const lines = breakLines(stretches, size, () => Number.POSITIVE_INFINITY, type);
  return lines.reduce((widest, line) => Math.max(widest, sumWidths(line)), 0);
}

/** Lines already set, by what they were made of: cautions and tasks come again on many sheets. */
const remembered = new WeakMap<Typesetter, Map<string, readonly SetLine[]>>();

/** Texts shorter than this are set anew: the look-up would cost as much. */
const worthRemembering = 60;

/** Breaks inline text into lines no wider than the column. A word wider than a whole line is cut where the line ends. */
export function wrapInline(inline: Inline, options: WrapOptions, type: Typesetter): readonly SetLine[] {
  const runs = inlineRuns(inline);
  let length = 0;
  for (const run of runs) length += run.kind === 'text' ? run.text.length : 0;
  if (length < worthRemembering) return setLines(runs, options, type);
  const lines = remembered.get(type) ?? new Map<string, readonly SetLine[]>();
  remembered.set(type, lines);
  const key = keyOf(runs, options);
  const known = lines.get(key) ?? setLines(runs, options, type);
  lines.set(key, known);
  return known;
}

function keyOf(runs: readonly InlineRun[], { size, x, width, hang, style, align }: WrapOptions): string {
  let key = `${size} ${x} ${width} ${hang} ${style} ${align}`;
  for (const run of runs) {
    if (run.kind === 'text') key += `\0${run.style}\0${run.text}`;
    else key += run.kind === 'blank' ? `\0\0${run.width}` : `\0\0${run.kind}`;
  }
  return key;
}

function setLines(runs: readonly InlineRun[], options: WrapOptions, type: Typesetter): readonly SetLine[] {
  const { size, width, hang = 0 } = options;
  const stretches = toStretches(runs, size, type, options.style ?? 'plain');
  // Most texts on a sheet fit one line: they need no look for places to end it.
  if (sumWidths(stretches) <= width && !hasLineEnd(stretches) && !stretches.at(-1)?.text.endsWith(' ')) {
    return [setLine(stretches, 0, options)];
  }
  const lines = breakLines(stretches, size, (line) => width - (line === 0 ? 0 : hang), type);
  return lines.length === 0
    ? [setLine([], 0, options)]
    : lines.map((line, i) => setLine(line, i === 0 ? 0 : hang, options));
}

function hasLineEnd(stretches: readonly Stretch[]): boolean {
  return stretches.some((one) => one.text.includes('\n'));
}

function sumWidths(stretches: readonly Stretch[]): number {
  let sum = 0;
  for (const one of stretches) sum += one.width;
  return sum;
}

function setLine(stretches: readonly Stretch[], indent: number, options: WrapOptions): SetLine {
  const { size } = options;
  const width = sumWidths(stretches);
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
  for (const one of stretches) {
    if (one.sign) {
      flush();
      items.push(signItem(one.sign, x, baseline, size));
    } else {
      if (text === '' || one.face !== face) {
        flush();
        left = x;
        face = one.face;
      }
      text += one.text;
    }
    x += one.width;
  }
  flush();
  return { items, width };
}

/** Distance from a line's top to its baseline, in points: capitals stand in the middle of the line. */
export function baselineOf(size: number): number {
  return (lineHeight(size) + capHeight * size) / 2;
}

function signItem(sign: Sign, x: number, baseline: number, size: number): Item {
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
