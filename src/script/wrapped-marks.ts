import type { Diagnostic } from '../base/diagnostic.js';
import { type MarkContext, readMarks } from './marks.js';
import { type RawLine, type Stretch, StretchBuilder, sliceStretch } from './raw-line.js';
import { lineEnd } from './source-text.js';
import type { Line, Mark } from './types.js';

/** A bracket that stays open over more lines than this was forgotten. */
const mostLines = 3;
/** Marks that wrap one after the other are read together up to so many lines. */
const longestChain = 12;

/**
 * Reads the marks of the lines of one paragraph. A line's end between brackets is a space there (CommonMark 0.31, soft line breaks in
 * link text), so that a mark may wrap; it stands on the line where it opens. Each line prints by itself.
 */
export function readMarkedLines(lines: readonly RawLine[], inSpeech: boolean, context: MarkContext): Line[] {
  const read: Line[] = [];
  for (let at = 0; at < lines.length; ) {
    const group = readGroup(lines.slice(at, at + wrappedLines(lines, at)), inSpeech, context);
    read.push(...group);
    at += group.length;
  }
  return read;
}

/** Reads as many of the lines together as print apart. */
function readGroup(lines: readonly RawLine[], inSpeech: boolean, context: MarkContext): Line[] {
  for (let count = lines.length; count > 1; count -= 1) {
    const joined = readJoined(lines.slice(0, count), inSpeech, context);
    if (joined) return joined;
  }
  return [readMarks(lines[0] as RawLine, inSpeech, context)];
}

/** How many lines from here on brackets hold together; 1 when none wraps. */
function wrappedLines(lines: readonly RawLine[], from: number): number {
  let count = 1;
  while (count < longestChain && opensAtEnd(lines[from + count - 1] as RawLine)) {
    const closer = lines
      .slice(from + count, from + count + mostLines - 1)
      .findIndex((line) => firstBracket(line) !== null);
    const next = lines[from + count + closer];
    if (closer === -1 || !next || firstBracket(next) !== ']') return count;
    count += closer + 1;
  }
  return count;
}

function opensAtEnd(line: RawLine): boolean {
  for (let at = line.text.length - 1; at >= 0; at -= 1) {
    if (isBracket(line, at)) return line.text[at] === '[';
  }
  return false;
}

function firstBracket(line: RawLine): string | null {
  for (let at = 0; at < line.text.length; at += 1) if (isBracket(line, at)) return line.text[at] as string;
  return null;
}

function isBracket(line: RawLine, at: number): boolean {
  return (line.text[at] === '[' || line.text[at] === ']') && !line.literal?.has(at);
}

/** Reads lines as one and parts them again; null when a line ends in what does not print, so that nothing parts them there. */
function readJoined(lines: readonly RawLine[], inSpeech: boolean, context: MarkContext): Line[] | null {
  const messages: Diagnostic[] = [];
  const [first] = lines as [RawLine, ...RawLine[]];
  const breaks = lines.slice(0, -1).map(({ line }) => lineEnd(context.source, line));
  const whole = readMarks({ ...first, ...join(lines, breaks) }, inSpeech, { ...context, messages });
  const cuts = breaks.map((offset) => whole.spans.find((span) => span.offset === offset)?.start);
  if (!cuts.every((cut) => cut !== undefined)) return null;
  context.messages.push(...messages);
  return lines.map(({ at }, index) => {
    const from = index === 0 ? 0 : (cuts[index - 1] as number) + 1;
    const to = cuts[index] ?? whole.text.length;
    const { text, spans } = sliceStretch({ text: whole.text, spans: whole.spans, literal: null }, from, to);
    const marks = whole.marks.filter(({ start }) => start >= from && start < to);
    return { text, spans, marks: marks.map((mark) => cutMark(mark, from, to)), at };
  });
}

/** The lines as one, with a space for each end of a line. */
function join(lines: readonly RawLine[], breaks: readonly number[]): Stretch {
  const builder = new StretchBuilder();
  lines.forEach((line, index) => {
    for (const { start, end, offset, style } of line.spans) {
      const text = line.text.slice(start, end);
      if (line.literal?.has(start)) builder.addLiteral(text, offset, style);
      else builder.addRun(text, offset, style);
    }
    const lineBreak = breaks[index];
    if (lineBreak !== undefined) builder.addBreak(lineBreak);
  });
  return builder.finish();
}

/** A mark on the line where it opens; its words and its place go on over the next. */
function cutMark(mark: Mark, from: number, to: number): Mark {
  return { ...mark, start: mark.start - from, end: Math.min(mark.end, to) - from };
}
