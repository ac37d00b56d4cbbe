import type { Parent, RootContent } from 'mdast';
import { decodeReference } from './parse-markdown.js';
import { privateCharacter } from './private-text.js';
import type { StretchBuilder } from './raw-line.js';
import type { TextStyle } from './types.js';

/** A stretch of source text inside a block that prints in one style. */
export interface Segment {
  readonly start: number;
  readonly end: number;
  readonly style: TextStyle;
}

/** The text nodes of a block in order, each with its style; `base` is the offset of the piece that the block was parsed in. */
export function flatSegments(block: Parent, base: number): Segment[] {
  const segments: Segment[] = [];
  const stack: { node: RootContent; style: TextStyle }[] = [];
  const push = (parent: Parent, style: TextStyle) => {
    for (let index = parent.children.length - 1; index >= 0; index -= 1) {
      stack.push({ node: parent.children[index] as RootContent, style });
    }
  };
  push(block, 'plain');
  for (let top = stack.pop(); top; top = stack.pop()) {
    const { node, style } = top;
    if (node.type === 'text' && node.position) {
      const { start, end } = node.position;
      segments.push({ start: base + (start.offset ?? 0), end: base + (end.offset ?? 0), style });
    } else if (node.type === 'emphasis')
      push(node, style === 'bold' || style === 'bold italic' ? 'bold italic' : 'italic');
    else if (node.type === 'strong') push(node, style === 'italic' || style === 'bold italic' ? 'bold italic' : 'bold');
  }
  return segments;
}

/** Prints a segment of one source line: escapes and references decoded, private text left out, white space made spaces. */
export function printSegment(builder: StretchBuilder, text: string, { start, end, style }: Segment): void {
  let at = start;
  while (at < end) {
    const plain = plainRun(text, at, end);
    builder.addRun(plain.replace(/[\t\v\f\u0085\u2028\u2029]/g, ' '), at, style);
    at += plain.length;
    if (at < end) at = printSpecial(builder, text, { start: at, end, style });
  }
}

/** Prints the special sign at a segment's start; gives the place behind it. */
function printSpecial(builder: StretchBuilder, text: string, { start, end, style }: Segment): number {
  const sign = text[start] as string;
  if (sign === privateCharacter) return skipPrivate(builder, text, start, end);
  if (sign === '\\' && start + 1 < end && /[!-/:-@[-`{-~]/.test(text[start + 1] as string)) {
    builder.addLiteral(text[start + 1] as string, start + 1, style);
    return start + 2;
  }
  const reference = sign === '&' ? matchReference(text, start) : null;
  const decoded = reference === null ? null : decodeReference(reference);
  if (reference !== null && decoded !== null && decoded !== reference) {
    builder.addLiteral(decoded.replace(/\s/g, ' '), start, style);
    return start + reference.length;
  }
  builder.addRun(sign === '\0' ? '\uFFFD' : sign, start, style);
  return start + 1;
}

/** Private text prints nothing; of the spaces on both its sides one side goes. */
function skipPrivate(builder: StretchBuilder, text: string, start: number, end: number): number {
  let at = start;
  while (at < end && text[at] === privateCharacter) at += 1;
  const spaced = builder.text === '' || /\s$/.test(builder.text);
  while (spaced && at < end && (text[at] === ' ' || text[at] === '\t')) at += 1;
  return at;
}

/** The text up to the next sign that needs a look. */
function plainRun(text: string, from: number, to: number): string {
  const piece = text.slice(from, to);
  const special = piece.search(/[\\&\uFFFF\0]/);
  return special === -1 ? piece : piece.slice(0, special);
}

const reference = /&(?:#x[0-9a-f]{1,6}|#\d{1,7}|[a-z][a-z\d]{0,31});/iy;

function matchReference(text: string, at: number): string | null {
  reference.lastIndex = at;
  return reference.exec(text)?.[0] ?? null;
}
