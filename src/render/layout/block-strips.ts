import type { Block, EntriesBlock, FrameBlock, HeadingBlock, ParagraphBlock, SectionBlock } from './blocks.js';
import { tick } from './inline.js';
import { sizes, weights, writingLine } from './measures.js';
import { type Item, lowerItem } from './page-tree.js';
import { heightOf, keepTogether, lineStrips, type Strip, strip, whiteStrip, withItems } from './strips.js';
import { marginBar, setTable } from './table-strips.js';
import type { Typesetter } from './typesetter.js';
import { lineHeight, wrapInline } from './wrap.js';

/** Where blocks stand: the left end and the width of their column, in points. */
export interface Column {
  readonly x: number;
  readonly width: number;
}

/** Sets blocks one under another as strips. */
export function setBlocks(blocks: readonly Block[], column: Column, type: Typesetter): Strip[] {
  return blocks.flatMap((block, i) => {
    const strips = setBlock(block, column, type);
    // A heading's first words stay with what they introduce, or heading and words would stand alone at a page's end.
    const introduces = block.kind === 'paragraph' && blocks[i - 1]?.kind === 'heading' && i < blocks.length - 1;
    return introduces && strips.length <= mostIntroduction ? keepTogether(strips, true) : strips;
  });
}

/** Lines and white of an introduction that is kept to what it introduces. */
const mostIntroduction = 5;

function setBlock(block: Block, column: Column, type: Typesetter): Strip[] {
  switch (block.kind) {
    case 'heading':
      return setHeading(block, column, type);
    case 'paragraph':
      return setParagraph(block, column, type);
    case 'entries':
      return setEntries(block, column, type);
    case 'table':
      return setTable(block, column.x, column.width, type);
    case 'section':
      return setSection(block, column, type);
    case 'frame':
      return setFrame(block, column, type);
    case 'lines':
      return Array.from({ length: block.count }, () =>
        strip({ height: writingLine, items: [level(column, writingLine, weights.hair)] }),
      );
    case 'rule':
      return [setRule(block.weight ?? 'hair', column)];
    case 'space':
      return [whiteStrip(block.height)];
    case 'keep':
      return keepTogether(setBlocks(block.blocks, column, type));
    case 'changed':
      return setBlocks(block.blocks, column, type).map((one) => withItems(one, [marginBar(column.x, one.height)]));
    case 'page break':
      return [strip({ breakBefore: true, white: true })];
  }
}

function setRule(weight: 'row' | 'hair' | 'rule', column: Column): Strip {
  const height = weight === 'row' ? 4 : 6;
  return strip({ height, items: [level(column, height / 2, weights[weight])], keep: weight === 'row' });
}

const headings = {
  1: { size: sizes.title, before: 0, after: 6 },
  2: { size: sizes.section, before: 12, after: 4 },
  3: { size: sizes.body, before: 8, after: 2 },
} as const;

function setHeading(block: HeadingBlock, column: Column, type: Typesetter): Strip[] {
  const { size, before, after } = headings[block.level];
  const lines = wrapInline(block.text, { size, ...column, style: 'bold' }, type);
  const strips = [...lineStrips(lines, lineHeight(size)), whiteStrip(after)];
  const marked = strips.map((one, i) => (i === 0 ? { ...one, bookmark: block.bookmark ?? null } : one));
  return keepTogether([whiteStrip(before), ...marked], true);
}

function setParagraph(block: ParagraphBlock, column: Column, type: Typesetter): Strip[] {
  const size = Math.max(block.size ?? sizes.body, sizes.small);
  const indent = block.indent ?? 0;
  const place = { x: column.x + indent, width: column.width - indent, hang: block.hang ?? 0 };
  const lines = lineStrips(wrapInline(block.text, { size, ...place }, type), lineHeight(size));
  const after = block.after ?? 3;
  const strips = after > 0 ? [...lines, whiteStrip(after)] : lines;
  return block.keepWithNext ? keepTogether(strips, true) : tieLast(strips, after > 0);
}

/** Keeps the last line to the white below it, so that white never begins a page. */
function tieLast(strips: readonly Strip[], tie: boolean): Strip[] {
  return strips.map((one, i) => (tie && i === strips.length - 2 ? { ...one, keep: true } : one));
}

const entryHang = 14;

function setEntries(block: EntriesBlock, column: Column, type: Typesetter): Strip[] {
  const size = sizes.body;
  const side = block.ticks ? entryHang : 0;
  return block.entries.flatMap((entry, i) => {
    const place = { x: column.x + side, width: column.width - side, hang: block.ticks ? 0 : entryHang };
    const lines = keepTogether(lineStrips(wrapInline(entry, { size, ...place }, type), lineHeight(size)));
    const boxes = block.ticks ? (wrapInline(tick, { size, ...column }, type)[0]?.items ?? []) : [];
    const first = lines[0] ? [withItems(lines[0], boxes), ...lines.slice(1)] : [];
    if (!block.ruled) return [...tieLast([...first, whiteStrip(1)], true)];
    const rule = i === 0 ? [] : [strip({ height: 2, items: [level(column, 0, weights.row)], keep: true })];
    return [...rule, ...tieLast([...first, whiteStrip(2)], true)];
  });
}

const labelColumn = 82;

function setSection(block: SectionBlock, column: Column, type: Typesetter): Strip[] {
  const side = block.labelWidth ?? labelColumn;
  const size = sizes.body;
  const label = wrapInline(block.label, { size, x: column.x, width: side - 8, style: 'bold' }, type);
  const content = setBlocks(block.blocks, { x: column.x + side, width: column.width - side }, type);
  const labelled = layBeside(
    content,
    label.map((line) => line.items),
    lineHeight(size),
  );
  const missing = (block.least ?? 0) - heightOf(labelled);
  const whole = missing > 0 ? [...keepTogether(labelled, true), strip({ height: missing })] : labelled;
  const rule = strip({ height: 4, items: [level(column, 0, weights.hair)], keep: true });
  return [...((block.ruled ?? true) ? [rule] : []), ...whole, whiteStrip(2)];
}

/** Puts lines beside strips, from the first strip's top; strips are added where the lines are longer. */
function layBeside(content: readonly Strip[], lines: readonly (readonly Item[])[], height: number): Strip[] {
  const missing = lines.length * height - heightOf(content);
  const strips = missing > 0 ? [...content, strip({ height: missing })] : [...content];
  const first = strips[0];
  if (!first) return [];
  // The label comes first, so that a reader of the file hears it before what it names.
  const labels = lines.flatMap((items, i) => items.map((item) => lowerItem(item, i * height)));
  const beside = { ...first, items: [...labels, ...first.items] };
  return strips
    .map((one, i) => (i === 0 ? beside : one))
    .map((one, i) => (i < lines.length - 1 ? { ...one, keep: true } : one));
}

const framePadding = 7;

function setFrame(block: FrameBlock, column: Column, type: Typesetter): Strip[] {
  const inner = { x: column.x + framePadding, width: column.width - framePadding * 2 };
  const content = keepTogether(setBlocks(block.blocks, inner, type));
  const top = strip({ height: framePadding, items: [level(column, 0, weights.frame)], keep: true });
  const bottom = strip({ height: framePadding - 2, items: [level(column, framePadding - 2, weights.frame)] });
  const framed = [top, ...keepTogether(content, true), bottom].map((one) => withItems(one, sides(column, one.height)));
  return [...framed, whiteStrip(6)];
}

function sides(column: Column, height: number): Item[] {
  const side = (x: number): Item => ({
    kind: 'line',
    x,
    y: 0,
    x2: x,
    y2: height,
    weight: weights.frame,
    dashed: false,
  });
  return [side(column.x), side(column.x + column.width)];
}

function level(column: Column, y: number, weight: number): Item {
  return { kind: 'line', x: column.x, y, x2: column.x + column.width, y2: y, weight, dashed: false };
}
