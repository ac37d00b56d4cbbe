import type { Range } from '../base/text-range.js';
import type { Block, Heading, Line, Scene, Script, Span, Speech } from '../script/types.js';
import { type MeasureName, pageMeasures } from '../trade/page-measures.js';
import type { PageLineKind } from './types.js';
import { type Tokens, tokenize, type WrappedLine, wrapTokens } from './wrap.js';

/** One source line, ready to be filled into lines of the page. */
export interface Paragraph {
  readonly kind: PageLineKind;
  readonly measure: MeasureName;
  readonly text: string;
  readonly spans: readonly Span[];
  readonly tokens: Tokens;
  /** The lines it takes when nothing parts it. */
  readonly wrapped: readonly WrappedLine[];
}

/** A block of the script, measured. */
export interface TypesetBlock {
  readonly kind: 'heading' | 'part' | 'action' | 'speech' | 'transition' | 'omitted' | 'page break';
  readonly paragraphs: readonly Paragraph[];
  /** Lines of text, without blank ones. */
  readonly lines: number;
  readonly number: string | null;
  /** 0-based scene that it belongs to. */
  readonly scene: number | null;
  /** A speech's cue, for the page on which it goes on. */
  readonly cue: string | null;
  readonly at: Range;
}

/** The whole script as measured blocks, in printing order. Blocks that print nothing are left out. */
export function typesetScript(script: Script): TypesetBlock[] {
  const blocks = [
    ...script.opening.map((block) => typesetBlock(block, null)),
    ...script.scenes.flatMap(typesetScene),
    ...script.closing.map((block) => typesetBlock(block, null)),
  ];
  return blocks.filter((block) => block.lines > 0 || block.kind === 'page break');
}

function typesetScene(scene: Scene): TypesetBlock[] {
  return [
    ...scene.lead.map((block) => typesetBlock(block, null)),
    typesetHeading(scene.heading, scene.index),
    ...scene.blocks.map((block) => typesetBlock(block, scene.index)),
  ];
}

function typesetHeading(heading: Heading, scene: number): TypesetBlock {
  const text = heading.text.trim() === '' ? heading.setting : heading.text;
  const paragraph = setText(text, 'heading', 'heading');
  return finish('heading', [paragraph], heading.at, scene, heading.number);
}

function typesetBlock(block: Block, scene: number | null): TypesetBlock {
  switch (block.kind) {
    case 'action':
      return finish(
        'action',
        block.lines.map((line) => setLine(line, 'action', 'action')),
        block.at,
        scene,
      );
    case 'speech':
      return typesetSpeech(block, scene);
    case 'transition':
      return finish('transition', [setTransition(block.line)], block.at, scene);
    case 'part':
      return finish('part', [setLine(block.line, 'part', 'part')], block.at, null);
    case 'omitted':
      return finish('omitted', [setText('OMITTED', 'omitted', 'omitted')], block.at, null, block.number);
    case 'page break':
      return finish('page break', [], block.at, null);
  }
}

function typesetSpeech(speech: Speech, scene: number | null): TypesetBlock {
  const paragraphs = [
    setText(speech.cue.text, 'cue', 'cue'),
    ...speech.lines.map(({ kind, line }) => setLine(line, kind, kind)),
  ];
  return { ...finish('speech', paragraphs, speech.at, scene), cue: speech.cue.text };
}

function setTransition(line: Line): Paragraph {
  return setLine(line, 'transition', /^\s*FADE IN\b/i.test(line.text) ? 'opening fade' : 'transition');
}

function setLine(line: Line, kind: PageLineKind, measure: MeasureName): Paragraph {
  return setText(line.text, kind, measure, line.spans);
}

/** Measures a piece of text that is one line in the source. */
export function setText(
  text: string,
  kind: PageLineKind,
  measure: MeasureName,
  spans: readonly Span[] = [],
): Paragraph {
  const { width } = pageMeasures[measure];
  const tokens = tokenize(text, width);
  return { kind, measure, text, spans, tokens, wrapped: wrapTokens(tokens, 0, width) };
}

function finish(
  kind: TypesetBlock['kind'],
  paragraphs: readonly Paragraph[],
  at: Range,
  scene: number | null,
  number: string | null = null,
): TypesetBlock {
  const lines = paragraphs.reduce((sum, paragraph) => sum + paragraph.wrapped.length, 0);
  return { kind, paragraphs, lines, number, scene, cue: null, at };
}
