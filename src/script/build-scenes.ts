import type { Diagnostic } from '../base/diagnostic.js';
import type { Point, Range } from '../base/text-range.js';
import { sayScript } from '../messages/script.js';
import { montageWord } from '../trade/story-day-words.js';
import { weekdays } from '../trade/time-words.js';
import type { Piece } from './read-blocks.js';
import type { HeadingParts } from './scene-heading.js';
import { takeSceneNumber } from './scene-number.js';
import { namesScene, suggestHeading } from './suggest-heading.js';
import { readTime, trailingTime } from './time-of-day.js';
import type { Block, Heading, Line, Note, Scene } from './types.js';

/** The scenes of a script and what prints around them. */
export interface BuiltScenes {
  readonly opening: readonly Block[];
  readonly scenes: readonly Omit<Scene, 'notes'>[];
  readonly closing: readonly Block[];
}

interface OpenScene {
  readonly heading: Heading;
  readonly lead: readonly Block[];
  readonly part: string | null;
  readonly blocks: Block[];
}

/** Gathers pieces into scenes: light carried, parts and omitted numbers put before the heading they precede. */
export function buildScenes(pieces: readonly Piece[], messages: Diagnostic[]): BuiltScenes {
  const builder = new SceneBuilder(messages);
  for (const piece of pieces) {
    if (piece.kind === 'scene') builder.open(piece.parts, piece.line);
    else builder.add(piece);
  }
  return builder.finish();
}

class SceneBuilder {
  #messages: Diagnostic[];
  #opening: Block[] = [];
  #scenes: OpenScene[] = [];
  /** Parts, omitted numbers and page breaks that nothing of the scene has followed yet. */
  #pending: Block[] = [];
  #part: string | null = null;

  constructor(messages: Diagnostic[]) {
    this.#messages = messages;
  }

  open(parts: HeadingParts, line: Line): void {
    const isFirst = this.#scenes.length === 0;
    if (isFirst) this.#opening.push(...this.#pending);
    const lead = isFirst ? [] : this.#pending;
    this.#pending = [];
    const { inheritsLight: lightInherited, ...rest } = parts;
    this.#scenes.push({ heading: { ...rest, lightInherited, line, at: line.at }, lead, part: this.#part, blocks: [] });
  }

  add(block: Block): void {
    if (block.kind === 'part') {
      this.#part = block.line.text || this.#part;
      if (endsInTime(block.line.text)) this.#askPart(block.line, null);
    }
    if (block.kind === 'part' || block.kind === 'omitted' || block.kind === 'page break') {
      this.#pending.push(block);
      return;
    }
    const target = this.#scenes[this.#scenes.length - 1]?.blocks ?? this.#opening;
    if (block.kind === 'action' || block.kind === 'speech') this.#checkTextUnderPart();
    if (target === this.#opening && block.kind !== 'transition') this.#sayEarlyText(block);
    target.push(...this.#pending, block);
    this.#pending = [];
  }

  finish(): BuiltScenes {
    if (this.#scenes.length === 0) {
      return { opening: [...this.#opening, ...this.#pending], scenes: [], closing: [] };
    }
    const scenes = this.#scenes.map((scene, index) => ({ index, ...scene, at: rangeOf(scene) }));
    return { opening: this.#opening, scenes, closing: this.#pending };
  }

  #sayEarlyText(block: Block): void {
    const isFirst = this.#opening.every((other) => other.kind !== 'action' && other.kind !== 'speech');
    if (isFirst) this.#messages.push(sayScript('text-before-scene', { title: titleOf(block) }, block.at));
  }

  /** Text right under a heading that is no scene goes to the scene above, which may not be meant. */
  #checkTextUnderPart(): void {
    const part = this.#pending.findLast((block) => block.kind === 'part')?.line;
    if (!part || part.text === '' || endsInTime(part.text)) return;
    const above = this.#nameLastScene();
    if (isLikeScene(part.text)) this.#askPart(part, above);
    else if (above !== null) this.#messages.push(sayScript('text-under-part', { text: part.text, above }, part.at));
  }

  #nameLastScene(): string | null {
    const heading = this.#scenes[this.#scenes.length - 1]?.heading;
    if (!heading) return null;
    return heading.number === null ? `\`${heading.text}\`` : `scene ${heading.number}`;
  }

  #askPart({ text, at }: Line, above: string | null): void {
    this.#messages.push(sayScript('part-or-scene', { text, meant: suggestHeading(text), above }, at));
  }
}

function endsInTime(text: string): boolean {
  const last = text.split(/\s[-\u2010-\u2015]+\s/).pop() as string;
  return (readTime(last) !== null && !isWeekday(last)) || trailingTime(text) > 0;
}

/** `MONDAY` is as good a title of a part as any. */
function isWeekday(text: string): boolean {
  return weekdays.includes(text.trim().toUpperCase());
}

/** A number before a heading, or the word montage in it, speaks for a scene. */
function isLikeScene(text: string): boolean {
  return takeSceneNumber(`${text} `) !== null || montageWord.test(text);
}

function rangeOf(scene: OpenScene): Range {
  const start: Point = scene.heading.at.start;
  const end: Point = scene.blocks[scene.blocks.length - 1]?.at.end ?? scene.heading.at.end;
  return { start, end };
}

/** Gives each scene the notes that stand between its heading and the next; those before the first are the script's. */
export function placeNotes(
  scenes: readonly Omit<Scene, 'notes'>[],
  notes: readonly Note[],
): { scenes: Scene[]; script: Note[] } {
  const script: Note[] = [];
  const perScene: Note[][] = scenes.map(() => []);
  let scene = -1;
  for (const note of notes) {
    while (scene + 1 < scenes.length && (scenes[scene + 1] as Scene).heading.at.start.offset < note.at.start.offset)
      scene += 1;
    (perScene[scene] ?? script).push(note);
  }
  return { scenes: scenes.map((one, index) => ({ ...one, notes: perScene[index] ?? [] })), script };
}

/** A title typed as plain text: a short first line without a stop, with at most two lines under it; null for anything else. */
function titleOf(block: Block): string | null {
  if (block.kind !== 'action' || block.lines.length > 3) return null;
  const text = (block.lines[0]?.text ?? '').replace(/^(?:title|name)\s*:\s*/i, '');
  return text.length <= 60 && !/[.!?:]$/.test(text) && !namesScene(text) ? text : null;
}
