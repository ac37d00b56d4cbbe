import { movePoint } from '../base/text-range.js';
import { type RawLine, sliceStretch } from './raw-line.js';
import { hasTime } from './split-heading.js';
import { readTime } from './time-of-day.js';

/**
 * Parts `EXT. YARD - NIGHT: Nora runs to the gate.`, as the images of a montage are often written: the scene line and the sentence behind
 * its time. Null when nothing but a heading stands there. `restAt` is where the place begins in the text.
 */
export function partTextBehindTime(line: RawLine, restAt: number): { head: RawLine; text: RawLine } | null {
  const { text } = line;
  if (!/[:.]\s/.test(text) || !/\p{Ll}/u.test(text)) return null;
  for (const stop of text.slice(restAt).matchAll(/[:.]\s+(?=\S)/g)) {
    const end = restAt + stop.index;
    const next = end + stop[0].length;
    if (!isParted(text.slice(restAt, end), text.slice(next))) continue;
    return { head: part(line, 0, end), text: { ...part(line, next, text.length), kind: 'text', sign: '' } };
  }
  return null;
}

/** Behind a time some words in small letters will do; behind a place in capitals it must be a longer sentence. */
function isParted(head: string, words: string): boolean {
  const small = words.match(/(?<!\p{L})\p{Ll}[\p{L}'\u2019]*/gu)?.length ?? 0;
  if (small < 2 || hasTime(`A - ${words}`)) return false;
  return endsInTime(head) || (small > 2 && /\p{Lu}{3}/u.test(head) && !/\p{Ll}/u.test(head));
}

/** True when a time is the last thing that stands there: behind it the sentence begins. */
function endsInTime(words: string): boolean {
  const last = words.split(/\s+[-\u2010-\u2015]+\s+/).at(-1) ?? '';
  return hasTime(words) && readTime(last.replace(/\s*\([^)]*\)$/, '')) !== null;
}

function part(line: RawLine, from: number, to: number): RawLine {
  const first = line.spans.find((span) => span.end > from);
  const last = line.spans.findLast((span) => span.start < to);
  if (!first || !last) return line;
  const startsAt = movePoint(line.at.start, first.offset + Math.max(0, from - first.start) - line.at.start.offset);
  const endsAt = movePoint(line.at.start, last.offset + Math.min(to, last.end) - last.start - line.at.start.offset);
  const at = {
    start: from === 0 ? line.at.start : startsAt,
    end: to === line.text.length ? line.at.end : endsAt,
  };
  return { ...line, ...sliceStretch(line, from, to), at };
}
