import { type Document, isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml';
import type { Range } from '../base/text-range.js';

/** The way to a value: names and 0-based list places, from the top. */
export type Path = readonly PropertyKey[];

/** A parsed YAML text that can tell where each value stands. */
export interface PlacedDocument {
  readonly document: Document.Parsed;
  readonly text: string;
  /** The stretch of the value at a path, or of the nearest value above it. */
  readonly at: (path: Path) => Range;
  /** The stretch of the name itself at the end of a path. */
  readonly keyAt: (path: Path) => Range;
  /** True when there is a value at the path, readable or not. */
  readonly isWritten: (path: Path) => boolean;
  readonly rangeOf: (from: number, to: number) => Range;
}

/** Parses YAML 1.2 with places. Never throws on any text: mistakes are in `document.errors`. */
export function parsePlaced(text: string): PlacedDocument {
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter, prettyErrors: false, logLevel: 'silent' });
  const point = (offset: number) => {
    const { line, col } = counter.linePos(Math.min(offset, text.length));
    return { line: Math.max(line, 1), column: Math.max(col, 1), offset: Math.min(offset, text.length) };
  };
  const rangeOf = (from: number, to: number): Range => ({ start: point(from), end: point(Math.max(from, to)) });
  const nodeRange = (node: Node | null): Range => rangeOf(node?.range?.[0] ?? 0, node?.range?.[1] ?? 0);
  return {
    document,
    text,
    rangeOf,
    at: (path) => nodeRange(findNode(document.contents, path).node),
    keyAt: (path) => nodeRange(findNode(document.contents, path).key),
    isWritten: (path) => {
      const { node, key } = findNode(document.contents, path);
      return node !== key;
    },
  };
}

function findNode(top: Node | null, path: Path): { node: Node | null; key: Node | null } {
  let node = top;
  let key = top;
  for (const step of path) {
    const next = child(node, step);
    if (next === null) break;
    key = next.key;
    node = next.node ?? next.key;
  }
  return { node, key };
}

function child(node: Node | null, step: PropertyKey): { node: Node | null; key: Node } | null {
  if (isMap(node)) {
    const pair = node.items.find((one) => isScalar(one.key) && String(one.key.value) === String(step));
    return pair ? { node: visible(pair.value as Node | null), key: pair.key as Node } : null;
  }
  if (isSeq(node)) {
    const item = node.items[Number(step)] as Node | undefined;
    return item ? { node: item, key: item } : null;
  }
  return null;
}

/** An empty value has a place of no width after its colon: the name is the better place to show. */
function visible(node: Node | null): Node | null {
  return node?.range && node.range[0] === node.range[1] ? null : node;
}
