import type { Stretch } from './stretches.js';
import type { Typesetter } from './typesetter.js';

/** A place in a list of stretches: which one, and which UTF-16 unit of it (0 or 1 in a sign). */
interface Place {
  readonly stretch: number;
  readonly unit: number;
}

const space = 0x20;
const lineEnd = 0x0a;

function isSpace(code: number): boolean {
  return code === space || (code >= 0x2002 && code <= 0x200a && code !== 0x2007);
}

/** Signs after which a line may end: hyphens, dashes, a slash, a closing bracket. */
const breaksAfter = new Set([...'-/]\u2010\u2012\u2013\u2014'].map((sign) => sign.charCodeAt(0)));

/**
 * Breaks stretches into lines: greedily, at spaces, after hyphens and the like, and where a line end stands; a word
 * wider than a line is cut where the line ends. `room` gives the width of a line in points by its number from 0.
 */
export function breakLines(
  stretches: readonly Stretch[],
  size: number,
  room: (line: number) => number,
  type: Typesetter,
): Stretch[][] {
  const lines: Stretch[][] = [];
  let start: Place = { stretch: 0, unit: 0 };
  while (start.stretch < stretches.length) {
    const { end, next } = findLineEnd(stretches, start, room(lines.length) + 0.01, size, type);
    lines.push(cutOut(stretches, start, end, size, type));
    start = next;
  }
  return lines;
}

/** Where the line that begins at `start` ends, and where the next one begins. */
function findLineEnd(
  stretches: readonly Stretch[],
  start: Place,
  room: number,
  size: number,
  type: Typesetter,
): { readonly end: Place; readonly next: Place } {
  let width = 0;
  let ink = start;
  let last: { end: Place; next: Place } | null = null;
  let afterSpace = false;
  for (let s = start.stretch; s < stretches.length; s++) {
    const { sign, text, face, width: whole } = stretches[s] as Stretch;
    const units = sign ? 1 : text.length;
    for (let u = s === start.stretch ? start.unit : 0; u < units; ) {
      const code = sign ? 0 : (text.codePointAt(u) as number);
      const after: Place = { stretch: s, unit: u + (code > 0xffff ? 2 : 1) };
      if (code === lineEnd) return { end: ink, next: after };
      const step = sign ? whole : (type.advance(face, code) * size) / 1000;
      if (isSpace(code)) {
        afterSpace = true;
      } else {
        if (afterSpace && width > 0) last = { end: ink, next: { stretch: s, unit: u } };
        afterSpace = false;
        if (width + step > room && (last || ink !== start)) return last ?? { end: ink, next: { stretch: s, unit: u } };
        ink = after;
        if (breaksAfter.has(code) && !breaksAfter.has(text.charCodeAt(after.unit))) last = { end: after, next: after };
      }
      width += step;
      u = after.unit;
    }
  }
  return { end: ink, next: { stretch: stretches.length, unit: 0 } };
}

/** The stretches between two places. */
function cutOut(stretches: readonly Stretch[], start: Place, end: Place, size: number, type: Typesetter): Stretch[] {
  const line: Stretch[] = [];
  for (let s = start.stretch; s <= end.stretch && s < stretches.length; s++) {
    const stretch = stretches[s] as Stretch;
    const from = s === start.stretch ? start.unit : 0;
    const to = s === end.stretch ? end.unit : Number.POSITIVE_INFINITY;
    if (stretch.sign) {
      if (from === 0 && to > 0) line.push(stretch);
      continue;
    }
    const text = stretch.text.slice(from, to);
    if (text !== '') line.push({ ...stretch, text, width: type.measure(text, stretch.face, size) });
  }
  return line;
}
