import { sayScript } from '../messages/script.js';
import type { CueShape } from './cue.js';
import { cueAt, endsSpeech, isKnownCue, type KnownCues } from './known-cues.js';
import type { MarkContext } from './marks.js';
import { type RawLine, withSign } from './raw-line.js';
import type { Speech, SpeechLine } from './types.js';
import { readMarkedLines } from './wrapped-marks.js';

interface SpeechContext extends MarkContext {
  readonly cues: KnownCues;
}

/** Reads the speech whose cue stands at `at`; gives it and the line behind it (rules L7 and L8). */
export function readSpeech(
  lines: readonly RawLine[],
  at: number,
  cue: CueShape,
  context: SpeechContext,
): { speech: Speech; next: number } {
  const cueLine = lines[at] as RawLine;
  sayCueOddities(cue, cueLine, context);
  const spoken: RawLine[] = [];
  let next = at + 1;
  for (; next < lines.length && !endsHere(lines, next, context); next += 1) spoken.push(lines[next] as RawLine);
  saySigns(spoken, context);
  const signed = spoken.map((line) => (needsSign(line) ? withSign(line, line.sign) : line));
  const read = readMarkedLines(signed, true, context);
  const printed = read.filter((line) => line.text !== '');
  const end = printed[printed.length - 1]?.at.end ?? cueLine.at.end;
  const { text, name, extensions, voice } = cue;
  const told = tellParentheticals(printed);
  if (told.length > 0 && told.every((one) => one.kind === 'parenthetical')) {
    context.messages.push(sayScript('speech-without-words', { name }, cueLine.at));
  }
  return {
    speech: {
      kind: 'speech',
      cue: { text, name, extensions, voice, at: cueLine.at },
      lines: told,
      at: { start: cueLine.at.start, end },
    },
    next,
  };
}

function endsHere(lines: readonly RawLine[], at: number, context: SpeechContext): boolean {
  if (endsSpeech(lines[at] as RawLine)) return true;
  const cue = cueAt(lines, at, context.cues.isCastName);
  return cue !== null && isKnownCue(cue, context.cues);
}

function needsSign(line: RawLine): boolean {
  return (line.kind === 'item' || line.kind === 'heading') && line.sign !== '';
}

function sayCueOddities(cue: CueShape, line: RawLine, context: SpeechContext): void {
  if (cue.beside) context.messages.push(sayScript('cue-beside', { name: cue.name }, line.at));
  if (cue.colon) context.messages.push(sayScript('cue-colon', { name: cue.name }, line.at));
  if (cue.age !== null) {
    context.messages.push(sayScript('cue-age', { name: cue.name, age: cue.age }, line.at));
  }
  if (cue.unclosed) context.messages.push(sayScript('cue-parenthesis-open', { text: cue.text }, line.at));
  if (cue.bare) {
    context.messages.push(sayScript('cue-bare-extension', { extension: cue.extensions[0] ?? '' }, line.at));
  }
}

/** One message for the first sign in a speech; a list of ten would only repeat it. */
function saySigns(spoken: readonly RawLine[], context: SpeechContext): void {
  const first = spoken.find(needsSign);
  if (first) context.messages.push(sayScript('speech-sign', { sign: first.sign }, first.at));
}

/** Tells parentheticals from dialogue: a line wholly in parentheses, or several lines that one pair spans. */
function tellParentheticals(lines: readonly SpeechLine['line'][]): SpeechLine[] {
  let inside = false;
  return lines.map((line, index) => {
    if (!inside && opensParenthetical(line.text)) {
      inside = isClosedBelow(lines, index);
      if (inside) return { kind: 'parenthetical', line };
    }
    if (inside) {
      inside = !line.text.endsWith(')');
      return { kind: 'parenthetical', line };
    }
    return { kind: isWhollyParenthesised(line.text) ? 'parenthetical' : 'dialogue', line };
  });
}

function isWhollyParenthesised(text: string): boolean {
  if (!text.startsWith('(') || !text.endsWith(')')) return false;
  let depth = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === '(') depth += 1;
    else if (text[at] === ')') depth -= 1;
    if (depth === 0 && at < text.length - 1) return false;
  }
  return depth === 0;
}

function opensParenthetical(text: string): boolean {
  return text.startsWith('(') && !text.includes(')');
}

/** A parenthetical that wraps closes within three lines, at a line's end, before another opens. */
function isClosedBelow(lines: readonly SpeechLine['line'][], from: number): boolean {
  for (const line of lines.slice(from + 1, from + 4)) {
    if (line.text.includes('(')) return false;
    if (line.text.includes(')')) return line.text.endsWith(')');
  }
  return false;
}
