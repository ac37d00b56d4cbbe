import type { Root } from 'mdast';
import remarkParse from 'remark-parse';
import { unified } from 'unified';

/**
 * Markdown that misreads scripts. Setext underlines, code and autolinks are plain text in a screenplay; tags and comments are
 * taken out or printed as typed before and after the parser; brackets are marks, which are read from the source text.
 */
const switchedOff = [
  'setextUnderline',
  'codeIndented',
  'codeFenced',
  'codeText',
  'autolink',
  'htmlFlow',
  'htmlText',
  'labelStartLink',
  'labelStartImage',
  'labelEnd',
];

/** References are decoded where lines are printed; in the parser each of them costs time that grows with the paragraph. */
const decodedLater = 'characterReference';

const processor = makeProcessor([...switchedOff, decodedLater]);
const decoder = makeProcessor(switchedOff);

function makeProcessor(disabled: readonly string[]) {
  return unified()
    .use(remarkParse)
    .data({ micromarkExtensions: [{ disable: { null: [...disabled] } }] })
    .freeze();
}

/** A stretch of the source that parses by itself, and where it begins. */
export interface MarkdownPiece {
  readonly root: Root;
  readonly offset: number;
  /** How many lines stand before it. */
  readonly linesBefore: number;
}

/** Pieces are at least this long; shorter ones cost more calls, longer ones more time for each line. */
const usualLength = 4000;

/**
 * Parses the masked source as CommonMark without what misreads scripts, piece by piece: the parser's time grows faster than the
 * text. A piece ends at a blank line over a line without indent, where no list item, quote or paragraph can go on.
 */
export function parseMarkdown(text: string, pieceLength = usualLength): MarkdownPiece[] {
  const pieces: MarkdownPiece[] = [];
  let linesBefore = 0;
  for (let offset = 0; offset < text.length; ) {
    const end = pieceEnd(text, offset + pieceLength);
    const piece = text.slice(offset, end);
    pieces.push({ root: processor.parse(piece), offset, linesBefore });
    linesBefore += countLines(piece);
    offset = end;
  }
  return pieces;
}

function pieceEnd(text: string, from: number): number {
  const boundary = /\n\n(?=[^\s])/g;
  boundary.lastIndex = from;
  return boundary.test(text) ? boundary.lastIndex : text.length;
}

function countLines(text: string): number {
  let count = 0;
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) count += 1;
  return count;
}

const references = new Map<string, string>();

/** Decodes a character reference (`&amp;`) as CommonMark does; text that is none comes back as it is. */
export function decodeReference(text: string): string {
  const known = references.get(text);
  if (known !== undefined) return known;
  const block = decoder.parse(text).children[0];
  const inline = block?.type === 'paragraph' ? block.children[0] : undefined;
  const decoded = inline?.type === 'text' ? inline.value : text;
  if (references.size < 4096) references.set(text, decoded);
  return decoded;
}
