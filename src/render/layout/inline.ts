/** A piece of text in one style. */
export interface TextRun {
  readonly kind: 'text';
  readonly text: string;
  readonly style: 'plain' | 'bold' | 'italic';
}

/** An empty square to tick. */
export interface TickRun {
  readonly kind: 'tick';
}

/** A blank to write in, `width` points long. */
export interface BlankRun {
  readonly kind: 'blank';
  readonly width: number;
}

/** The danger sign. */
export interface DangerRun {
  readonly kind: 'danger';
}

export type InlineRun = TextRun | TickRun | BlankRun | DangerRun;

/** Text with styles and signs; a line end in it breaks the line. */
export type Inline = string | InlineRun | readonly (string | InlineRun)[];

export function bold(text: string): TextRun {
  return { kind: 'text', text, style: 'bold' };
}

export function italic(text: string): TextRun {
  return { kind: 'text', text, style: 'italic' };
}

export const tick: TickRun = { kind: 'tick' };
export const danger: DangerRun = { kind: 'danger' };

/** A ruled blank of so many points. */
export function blank(width: number): BlankRun {
  return { kind: 'blank', width };
}

/** Inline text as a list of runs. */
export function inlineRuns(inline: Inline): readonly InlineRun[] {
  if (typeof inline === 'string') return [plainRun(inline)];
  if ('kind' in inline) return [inline];
  return inline.map((one) => (typeof one === 'string' ? plainRun(one) : one));
}

function plainRun(text: string): TextRun {
  return { kind: 'text', text, style: 'plain' };
}

/** Joins inline pieces with a separator; empty pieces fall away. */
export function joinInline(pieces: readonly Inline[], separator = ', '): Inline {
  const lists = pieces.map(inlineRuns).filter((runs) => runs.some((run) => run.kind !== 'text' || run.text !== ''));
  return lists.flatMap((runs, i) => (i === 0 ? [...runs] : [plainRun(separator), ...runs]));
}
