import { sayScript } from '../messages/script.js';
import type { Chunk, LineChunk } from './chunks.js';
import { cueAt, isKnownCue, type KnownCues } from './known-cues.js';
import { isTransition, itemSign, lacksColon, readOmitted, readSceneLine, type SceneLine } from './line-kinds.js';
import { type MarkContext, readMarks } from './marks.js';
import { checkActionLine, checkCrowdedCue, checkLoneCue } from './odd-lines.js';
import { offsetIn, type RawLine, withSign } from './raw-line.js';
import { type HeadingParts, readHeading } from './scene-heading.js';
import { rangeAt } from './source-text.js';
import { readSpeech } from './speech.js';
import { partTextBehindTime } from './text-behind-time.js';
import type { Block, Line } from './types.js';
import { readMarkedLines } from './wrapped-marks.js';

/** What a script is made of, in order: blocks, and the headings that start scenes. */
export type Piece = Block | { readonly kind: 'scene'; readonly parts: HeadingParts; readonly line: Line };

/** Everything that the lines are read with. */
export interface BlockContext extends MarkContext {
  readonly cues: KnownCues;
}

/** Reads chunks of lines as headings and blocks, in the order of rule L6. */
export function readBlocks(chunks: readonly Chunk[], context: BlockContext): Piece[] {
  const pieces: Piece[] = [];
  chunks.forEach((chunk, index) => {
    if (chunk.kind === 'page break') pieces.push({ kind: 'page break', at: chunk.line.at });
    else {
      checkLoneCue(chunk.lines, chunks[index + 1] ?? null, context);
      new ChunkReader(chunk, context, pieces).read();
    }
  });
  return pieces;
}

class ChunkReader {
  #lines: readonly RawLine[];
  #isTitle: boolean;
  #context: BlockContext;
  #pieces: Piece[];
  /** True where a paragraph begins: at the first line, and behind a heading or transition. */
  #fresh = true;

  constructor(chunk: LineChunk, context: BlockContext, pieces: Piece[]) {
    this.#lines = chunk.lines;
    this.#isTitle = chunk.isTitle;
    this.#context = context;
    this.#pieces = pieces;
  }

  read(): void {
    for (let at = 0; at < this.#lines.length; ) at = this.#readOne(at);
  }

  /** Reads what starts at a line; gives the line behind it. */
  #readOne(at: number): number {
    const line = this.#lines[at] as RawLine;
    const scene = readSceneLine(line);
    if (scene && this.#readSceneWithText(line, scene, at)) return at + 1;
    const single = this.#readSingle(line, scene, at);
    if (single) {
      this.#pieces.push(single);
      this.#fresh = true;
      return at + 1;
    }
    const cue = this.#cueAt(at);
    if (cue) {
      const { speech, next } = readSpeech(this.#lines, at, cue, this.#context);
      this.#pieces.push(speech);
      this.#fresh = false;
      return next;
    }
    return line.kind === 'item' ? this.#readItem(at) : this.#readAction(at);
  }

  /** A scene line with a sentence behind its time: the heading, and the sentence as its first action. */
  #readSceneWithText(line: RawLine, scene: SceneLine, at: number): boolean {
    const parted = partTextBehindTime(line, scene.start.restAt);
    if (!parted) return false;
    this.#context.messages.push(sayScript('scene-line-with-text', undefined, parted.text.at));
    this.#pieces.push(this.#readScene(parted.head, scene, at));
    this.#pushAction(readMarkedLines([parted.text], false, this.#context), false);
    return true;
  }

  /** A line that is a block by itself, or null. */
  #readSingle(line: RawLine, scene: SceneLine | null, at: number): Piece | null {
    if (scene) return this.#readScene(line, scene, at);
    const number = readOmitted(line);
    if (number !== null) return { kind: 'omitted', number, at: line.at };
    if (isTransition(line.text)) return this.#readTransition(line, at);
    return line.kind === 'heading' ? this.#readPart(line) : null;
  }

  #readScene(line: RawLine, scene: SceneLine, at: number): Piece {
    const { messages, source } = this.#context;
    if (scene.glued) messages.push(sayScript('heading-no-space', undefined, line.at));
    if (this.#isCrowded(line, at)) messages.push(sayScript('scene-line-crowded', undefined, line.at));
    const marked = readMarks(line, false, this.#context);
    const start =
      marked.text === line.text ? scene.start : (readSceneLine({ ...line, text: marked.text })?.start ?? scene.start);
    const placeOf = (from: number, to: number) => rangeAt(source, offsetIn(marked, from), offsetIn(marked, to));
    return { kind: 'scene', parts: readHeading(marked, start, placeOf, messages), line: marked };
  }

  /** A heading sign keeps a scene line apart; items of one list stand under each other. */
  #isCrowded(line: RawLine, at: number): boolean {
    if (line.kind === 'heading') return false;
    const before = this.#lines[at - 1];
    const after = this.#lines[at + 1];
    const beside = (other: RawLine | undefined) =>
      other !== undefined && !(line.kind === 'item' && other.kind === 'item' && readSceneLine(other));
    return beside(before) || beside(after);
  }

  #readTransition(line: RawLine, at: number): Piece {
    const beside = [this.#lines[at - 1], this.#lines[at + 1]].filter((other) => other !== undefined);
    if (line.kind === 'text' && beside.some((other) => readSceneLine(other) === null)) {
      this.#context.messages.push(sayScript('transition-inside', { text: line.text }, line.at));
    }
    if (lacksColon(line.text))
      this.#context.messages.push(sayScript('transition-no-colon', { text: line.text }, line.at));
    return { kind: 'transition', line: readMarks(line, false, this.#context), at: line.at };
  }

  #readPart(line: RawLine): Piece {
    return { kind: 'part', line: readMarks(line, false, this.#context), depth: line.depth, at: line.at };
  }

  #cueAt(at: number) {
    const { cues, messages } = this.#context;
    if (this.#isTitle) return null;
    const cue = cueAt(this.#lines, at, cues.isCastName);
    if (cue === null || this.#fresh) return cue;
    if (!isKnownCue(cue, cues)) return null;
    messages.push(sayScript('cue-inside', { name: cue.name }, (this.#lines[at] as RawLine).at));
    return cue;
  }

  #readItem(at: number): number {
    const line = this.#lines[at] as RawLine;
    const sign = itemSign(line);
    checkActionLine(line, null, this.#context);
    const lines = [sign === null ? line : withSign(line, sign)];
    let next = at + 1;
    for (; this.#lines[next]?.itemLine; next += 1) lines.push(this.#lines[next] as RawLine);
    this.#pushAction(readMarkedLines(lines, false, this.#context), true);
    return next;
  }

  #readAction(at: number): number {
    const lines: RawLine[] = [];
    let next = at;
    do {
      const line = this.#lines[next] as RawLine;
      checkActionLine(line, this.#lines[next - 1] ?? null, this.#context);
      if (next > at) checkCrowdedCue(this.#lines, next, this.#context);
      lines.push(line);
      next += 1;
      this.#fresh = false;
    } while (next < this.#lines.length && !this.#startsAnother(next));
    this.#pushAction(readMarkedLines(lines, false, this.#context), false);
    return next;
  }

  /** True when a line within an action paragraph begins something else. */
  #startsAnother(at: number): boolean {
    const line = this.#lines[at] as RawLine;
    if (line.kind !== 'text' || readSceneLine(line) || isTransition(line.text) || readOmitted(line) !== null)
      return true;
    const cue = cueAt(this.#lines, at, this.#context.cues.isCastName);
    return cue !== null && isKnownCue(cue, this.#context.cues);
  }

  #pushAction(lines: readonly Line[], item: boolean): void {
    const printed = lines.filter((line) => line.text !== '');
    const first = printed[0];
    const last = printed[printed.length - 1];
    this.#fresh = false;
    if (!first || !last) return;
    this.#pieces.push({ kind: 'action', lines: printed, item, at: { start: first.at.start, end: last.at.end } });
  }
}
