import type { Definition as DefinitionNode, Heading, Paragraph, Parent, RootContent } from 'mdast';
import type { Point, Range } from '../base/text-range.js';
import { findCategory } from '../trade/categories.js';
import type { MarkdownPiece } from './parse-markdown.js';
import { flatSegments, printSegment, type Segment } from './print-segment.js';
import { privateCharacter } from './private-text.js';
import { type RawKind, type RawLine, StretchBuilder } from './raw-line.js';
import { lineEnd, lineStart, rangeAt, rangeInLine, type SourceText } from './source-text.js';

/** The lines of a script and the definitions among them, both in source order. */
export interface PrintedLines {
  readonly lines: readonly RawLine[];
  readonly definitions: readonly MarkdownDefinition[];
}

/** A definition that Markdown reads: `[name]: category "text"`. */
export interface MarkdownDefinition {
  readonly name: string;
  readonly category: string;
  readonly text: string;
  readonly at: Range;
}

/** What stands around a block: how many quotes, and the column of the list item it opens or lies in. */
interface Surround {
  readonly quotes: number;
  /** 1-based column of the item's sign, 0 outside items. */
  readonly item: number;
  readonly opensItem: boolean;
}

/** A line of a block: whether it is the block's first, and the offset where its text begins. */
interface LinePlace {
  readonly line: number;
  readonly isFirst: boolean;
  readonly depth: number;
  readonly content: number;
}

interface Job {
  readonly node: RootContent;
  readonly around: Surround;
}

/** Takes Markdown apart into source lines: what each prints, and from which place of the source. */
export function printLines(pieces: readonly MarkdownPiece[], source: SourceText, forPrint: string): PrintedLines {
  const lines: RawLine[] = [];
  const definitions: MarkdownDefinition[] = [];
  for (const piece of pieces) {
    const printer = new LinePrinter(source, forPrint, piece, lines);
    // A stack of our own: containers may nest deeper than calls can.
    const jobs: Job[] = [];
    pushChildren(jobs, piece.root, { quotes: 0, item: 0, opensItem: false });
    for (let job = jobs.pop(); job; job = jobs.pop()) {
      const { node, around } = job;
      if (node.type === 'paragraph' || node.type === 'heading') printer.addBlock(node, around);
      else if (node.type === 'thematicBreak') printer.addBreak(node, around);
      else if (node.type === 'definition') {
        if (around.quotes > 0 && !findCategory(node.url)) printer.addQuotedKey(node);
        else definitions.push(printer.readDefinition(node));
      } else if (node.type === 'listItem' && node.children.length === 0) printer.addSigns(node, around, 'item');
      else if ('children' in node) pushChildren(jobs, node as Parent, surround(node, around));
    }
  }
  return { lines, definitions };
}

function pushChildren(jobs: Job[], parent: Parent, around: Surround): void {
  for (let index = parent.children.length - 1; index >= 0; index -= 1) {
    jobs.push({
      node: parent.children[index] as RootContent,
      around: index === 0 ? around : { ...around, opensItem: false },
    });
  }
}

function surround(node: RootContent, around: Surround): Surround {
  if (node.type === 'blockquote') return { ...around, quotes: around.quotes + 1 };
  if (node.type === 'listItem') return { ...around, item: node.position?.start.column ?? 1, opensItem: true };
  return around;
}

/** What a line without text, sign or heading has. */
const plainLine = { text: '', spans: [], literal: null, depth: 0, sign: '', itemLine: false, stray: null } as const;

class LinePrinter {
  #source: SourceText;
  #forPrint: string;
  #piece: MarkdownPiece;
  #lines: RawLine[];

  constructor(source: SourceText, forPrint: string, piece: MarkdownPiece, lines: RawLine[]) {
    this.#source = source;
    this.#forPrint = forPrint;
    this.#piece = piece;
    this.#lines = lines;
  }

  /** Where a node stands in the whole source. */
  #placeOf(node: RootContent): { start: number; end: number; line: number; lastLine: number } {
    const { offset, linesBefore } = this.#piece;
    const { start, end } = node.position as { start: Point; end: Point };
    return {
      start: offset + start.offset,
      end: offset + end.offset,
      line: linesBefore + start.line,
      lastLine: linesBefore + end.line,
    };
  }

  readDefinition(node: DefinitionNode): MarkdownDefinition {
    const { start, end } = this.#placeOf(node);
    return {
      name: (node.label ?? node.identifier).replace(/\s+/g, ' ').trim(),
      category: node.url,
      text: node.title ?? '',
      at: rangeAt(this.#source, start, end),
    };
  }

  /** `> [lamp]: dented` is no definition but a note on the lamp: its words name no category. */
  addQuotedKey(node: DefinitionNode): void {
    const { start, line } = this.#placeOf(node);
    const builder = new StretchBuilder();
    printSegment(builder, this.#forPrint, { start, end: lineEnd(this.#source, line), style: 'plain' });
    const stretch = builder.finish();
    const { at } = this.#lineAt(line);
    this.#lines.push({ ...plainLine, ...stretch, kind: 'note', line, signAt: start, at });
  }

  /** Stars break the page; other rules print nothing (rule L11). */
  addBreak(node: RootContent, around: Surround): void {
    const isStars = this.#source.text[this.#placeOf(node).start] === '*';
    this.addSigns(node, around, isStars ? 'page break' : 'rule');
  }

  /** A block without text: a rule, a page break, an item with nothing after its sign. */
  addSigns(node: RootContent, around: Surround, kind: RawKind): void {
    const { start, end, line } = this.#placeOf(node);
    const sign = this.#source.text.slice(start, Math.min(end, lineEnd(this.#source, line))).trim();
    const at = rangeInLine(this.#source, line, start, start + sign.length);
    this.#lines.push({ ...plainLine, kind: around.quotes > 0 ? 'note' : kind, line, sign, signAt: start, at });
  }

  /** Each source line of a paragraph or heading. */
  addBlock(node: Paragraph | Heading, around: Surround): void {
    const depth = node.type === 'heading' ? node.depth : 0;
    const segments = flatSegments(node, this.#piece.offset);
    const { line: firstLine, lastLine } = this.#placeOf(node);
    let next = 0;
    for (let line = firstLine; line <= lastLine; line += 1) {
      const end = lineEnd(this.#source, line);
      const builder = new StretchBuilder();
      let content = -1;
      for (; next < segments.length; next += 1) {
        const segment = segments[next] as Segment;
        if (segment.start >= end) break;
        const from = Math.max(segment.start, this.#contentStart(line, segment, around));
        if (content === -1) content = from;
        printSegment(builder, this.#forPrint, { start: from, end: Math.min(segment.end, end), style: segment.style });
        if (segment.end > end) break;
      }
      const place = { line, isFirst: line === firstLine, depth, content: content === -1 ? end : content };
      this.#addLine(builder, place, around);
    }
  }

  /** Where the text of a line begins: behind its indent and quote signs when the segment came from the line before. */
  #contentStart(line: number, segment: Segment, around: Surround): number {
    let at = lineStart(this.#source, line);
    if (segment.start >= at) return segment.start;
    let quotes = around.quotes;
    for (;;) {
      const sign = this.#source.text[at];
      if (sign === '>' && quotes > 0) quotes -= 1;
      else if (sign !== ' ' && sign !== '\t') return at;
      at += 1;
    }
  }

  #addLine(builder: StretchBuilder, place: LinePlace, around: Surround): void {
    const { line, isFirst, depth, content } = place;
    const { text, at } = this.#lineAt(line);
    const behindQuotes = isFirst && content > at.start.offset ? this.#beforeText(at.start.offset, content) : '';
    const sign = behindQuotes.replace(/[*_\\]+$/, '').trim();
    const stretch = builder.finish();
    if (stretch.text === '' && sign === '') return;
    const stray = isFirst ? null : strayUnder(text, around);
    const isNote = around.quotes > 0 && stray !== 'note';
    const opens = isFirst && around.opensItem && depth === 0;
    this.#lines.push({
      ...stretch,
      kind: isNote ? 'note' : depth > 0 ? 'heading' : opens ? 'item' : 'text',
      line,
      depth,
      sign,
      signAt: content - behindQuotes.length,
      itemLine: !isFirst && around.opensItem && stray === null && around.quotes === 0,
      stray,
      at,
    });
  }

  /** A source line, and where it stands without the white space at its ends. */
  #lineAt(line: number): { text: string; at: Range } {
    const start = lineStart(this.#source, line);
    const text = this.#source.text.slice(start, lineEnd(this.#source, line));
    const first = start + text.length - text.trimStart().length;
    return { text, at: rangeInLine(this.#source, line, first, Math.max(first, start + text.trimEnd().length)) };
  }

  /** What stands on a line before its text, quote signs and private text aside: the sign of a list or heading. */
  #beforeText(from: number, content: number): string {
    const before = this.#forPrint.slice(from, content).replaceAll(privateCharacter, ' ');
    return before.replace(/^[\s>]+/, '');
  }
}

/** Tells whether a further line of a note or item lacks its own sign or indent (rule L10). */
function strayUnder(line: string, around: Surround): 'note' | 'item' | null {
  if (around.quotes > 0) return /^[ \t]*>/.test(line) ? null : 'note';
  const indent = line.length - line.trimStart().length;
  return around.item > 0 && indent < around.item ? 'item' : null;
}
