import type { Range } from '../base/text-range.js';
import type { Line, Span, TextStyle } from './types.js';

/** A stretch of printed text with its places in the source, brackets of marks still in it. */
export interface Stretch {
  readonly text: string;
  readonly spans: readonly Span[];
  /** Places in `text` that an escape or a reference made: never a bracket of ours. Null when there are none. */
  readonly literal: ReadonlySet<number> | null;
}

export type RawKind = 'text' | 'heading' | 'item' | 'note' | 'page break' | 'rule';

/** One source line of the script before anybody knows what it is. */
export interface RawLine extends Stretch {
  readonly kind: RawKind;
  /** 1-based line in the source. */
  readonly line: number;
  /** Depth of a heading, else 0. */
  readonly depth: number;
  /** The list or heading sign before the text, as typed: `1.`, `-`, `##`. */
  readonly sign: string;
  /** Offset of the sign in the source. */
  readonly signAt: number;
  /** True for a further line of a list item, indented under it. */
  readonly itemLine: boolean;
  /** True when it hangs under a note or an item without its own sign or indent. */
  readonly stray: 'note' | 'item' | null;
  readonly at: Range;
}

/** Collects printed characters with their places. */
export class StretchBuilder {
  #text = '';
  #spans: { start: number; end: number; offset: number; style: TextStyle }[] = [];
  #literal: Set<number> | null = null;

  get spans(): readonly Span[] {
    return this.#spans;
  }

  get text(): string {
    return this.#text;
  }

  /** Adds text that stands in the source as it is. */
  addRun(text: string, offset: number, style: TextStyle): void {
    if (text === '') return;
    const last = this.#spans[this.#spans.length - 1];
    const start = this.#text.length;
    this.#text += text;
    const joins =
      last &&
      last.style === style &&
      last.offset + (last.end - last.start) === offset &&
      !this.#literal?.has(last.start);
    if (joins) last.end = this.#text.length;
    else this.#spans.push({ start, end: this.#text.length, offset, style });
  }

  /** Adds a space for a line's end, in a span of its own. */
  addBreak(offset: number): void {
    this.#spans.push({ start: this.#text.length, end: this.#text.length + 1, offset, style: 'plain' });
    this.#text += ' ';
  }

  /** Adds what an escape or a reference prints, in a span of its own. */
  addLiteral(text: string, offset: number, style: TextStyle): void {
    const start = this.#text.length;
    this.#text += text;
    this.#spans.push({ start, end: this.#text.length, offset, style });
    this.#literal ??= new Set();
    for (let at = start; at < this.#text.length; at += 1) this.#literal.add(at);
  }

  /** What was collected, without white space at either end. */
  finish(): Stretch {
    const whole: Stretch = { text: this.#text, spans: this.#spans, literal: this.#literal };
    const start = this.#text.length - this.#text.trimStart().length;
    const end = this.#text.trimEnd().length;
    return start === 0 && end === this.#text.length ? whole : sliceStretch(whole, start, Math.max(start, end));
  }
}

/** The part of a stretch between two places of its text. */
export function sliceStretch(stretch: Stretch, from: number, to: number): Stretch {
  return cutStretch(stretch, [
    [0, from],
    [to, stretch.text.length],
  ]);
}

/** A stretch without the given places, which are in order and do not overlap. */
export function cutStretch(stretch: Stretch, cuts: readonly (readonly [number, number])[]): Stretch {
  const keeps = keptRanges(cuts, stretch.text.length);
  let text = '';
  const spans: Span[] = [];
  const literal = new Set<number>();
  let first = 0;
  for (const [from, to] of keeps) {
    const shift = text.length - from;
    while (first < stretch.spans.length && (stretch.spans[first] as Span).end <= from) first += 1;
    for (let index = first; index < stretch.spans.length; index += 1) {
      const span = stretch.spans[index] as Span;
      if (span.start >= to) break;
      const start = Math.max(span.start, from);
      const end = Math.min(span.end, to);
      spans.push({
        start: start + shift,
        end: end + shift,
        offset: span.offset + start - span.start,
        style: span.style,
      });
      if (stretch.literal?.has(start)) for (let at = start; at < end; at += 1) literal.add(at + shift);
    }
    text += stretch.text.slice(from, to);
  }
  return { text, spans, literal: literal.size > 0 ? literal : null };
}

function keptRanges(cuts: readonly (readonly [number, number])[], length: number): [number, number][] {
  const keeps: [number, number][] = [];
  let from = 0;
  for (const [start, end] of cuts) {
    if (start > from) keeps.push([from, start]);
    from = Math.max(from, end);
  }
  if (from < length) keeps.push([from, length]);
  return keeps;
}

/** The source offset of a place in a stretch's text; of its end for a place past the last character. */
export function offsetIn(stretch: Stretch | Line, place: number): number {
  let low = 0;
  let high = stretch.spans.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((stretch.spans[middle] as Span).start <= place) low = middle;
    else high = middle - 1;
  }
  const span = stretch.spans[low];
  return span ? span.offset + place - span.start : 0;
}

/** A line that prints its list or heading sign as typed before its text. */
export function withSign(line: RawLine, sign: string): RawLine {
  const builder = new StretchBuilder();
  const signAt = line.signAt + line.sign.length - sign.length;
  builder.addRun(sign, signAt, 'plain');
  if (line.text === '') return { ...line, ...builder.finish() };
  builder.addRun(' ', signAt + sign.length, 'plain');
  const shift = sign.length + 1;
  const literal = line.literal === null ? null : new Set([...line.literal].map((at) => at + shift));
  return {
    ...line,
    text: builder.text + line.text,
    spans: [
      ...builder.spans,
      ...line.spans.map((span) => ({ ...span, start: span.start + shift, end: span.end + shift })),
    ],
    literal,
  };
}
