import type { FontFace } from '../types.js';
import { type Inline, type InlineRun, inlineRuns, type TextRun } from './inline.js';
import type { Typesetter } from './typesetter.js';

/** A sign that stands in a line of text. */
export type Sign = Exclude<InlineRun, TextRun>;

/** Text of one face, or a sign. */
export interface Stretch {
  readonly sign: Sign | null;
  readonly face: FontFace;
  /** Empty for a sign. */
  readonly text: string;
  /** In points. */
  readonly width: number;
}

const faces: Record<TextRun['style'], FontFace> = { plain: 'sans', bold: 'sans-bold', italic: 'sans-italic' };

/** Inline text as the longest stretches of one face; `base` is the style of its plain text. */
export function toStretches(inline: Inline, size: number, type: Typesetter, base: TextRun['style']): Stretch[] {
  const stretches: Stretch[] = [];
  for (const run of inlineRuns(inline)) {
    if (run.kind !== 'text') {
      const width = run.kind === 'blank' ? run.width : size * signWidth;
      stretches.push({ sign: run, face: 'sans', text: '', width });
      continue;
    }
    for (const { face, text } of type.runs(run.text, faces[run.style === 'plain' ? base : run.style])) {
      stretches.push({ sign: null, face, text, width: type.measure(text, face, size) });
    }
  }
  return stretches;
}

/** Width of a sign as a multiple of the type size. */
const signWidth = 1.05;
