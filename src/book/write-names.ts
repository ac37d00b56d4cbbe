import { isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap } from 'yaml';
import { compareText } from '../base/diagnostic.js';
import { parsePlaced } from './book-places.js';
import { quoteName } from './insert-entries.js';

/** A stretch of text and what takes its place. */
interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

type MapPair = Pair<Node, Node | null>;

/**
 * Gives one entry of a section its new id and notes the earlier one under `was`; no other character changes. Where the entry has
 * the new id already, only the earlier one is noted. Null when there is no entry, or one under each id, or when it stands in a
 * form in which that cannot be done; the result is read back and compared before it is trusted.
 */
export function renameEntry(text: string, section: string, from: string, to: string): string | null {
  const top = parsePlaced(text).document.contents;
  const entries = isMap(top) ? findPair(top, section)?.value : null;
  const both = isMap(entries) ? [from, to].flatMap((id) => findPair(entries, id) ?? []) : [];
  const [pair] = both;
  if (!pair?.key.range || both.length > 1) return null;
  const noted = noteEarlier(text, pair, from);
  if (noted === null) return null;
  const [start, end] = pair.key.range;
  const edits = [noted, { from: start, to: end, text: quoteName(to) }].sort((a, b) => b.from - a.from);
  const result = edits.reduce((all, edit) => all.slice(0, edit.from) + edit.text + all.slice(edit.to), text);
  return isRenamed(text, result, section, from, to) ? result : null;
}

/** Where and how `was` is written: in the list that is there, as the first line of the entry, or as its only one. */
function noteEarlier(text: string, { key, value }: MapPair, from: string): Edit | null {
  const name = quoteName(from);
  const end = text.includes('\r\n') ? '\r\n' : '\n';
  const keyEnd = key.range?.[1] ?? 0;
  if (!isMap(value)) {
    if (value !== null && !(isScalar(value) && value.range?.[0] === value.range?.[1])) return null;
    const lineEnd = endOfLine(text, keyEnd);
    const indent = ' '.repeat(columnOf(text, key.range?.[0] ?? 0) + 2);
    return insert(lineEnd, `${end}${indent}was: ${name}`);
  }
  const was = findPair(value, 'was')?.value ?? null;
  if (was !== null) return extendList(text, was, name);
  const start = value.range?.[0] ?? 0;
  if (value.flow) return insert(start + 1, value.items.length > 0 ? ` was: ${name},` : ` was: ${name} `);
  const first = (value.items[0] as MapPair | undefined)?.key.range?.[0];
  if (first === undefined) return null;
  return insert(first, `was: ${name}${end}${' '.repeat(columnOf(text, first))}`);
}

function extendList(text: string, was: Node, name: string): Edit | null {
  const [start, end] = was.range ?? [0, 0];
  if (isScalar(was)) return end > start ? { from: start, to: end, text: `[${text.slice(start, end)}, ${name}]` } : null;
  if (!isSeq(was) || !was.flow) return null;
  return insert(start + 1, was.items.length > 0 ? `${name}, ` : name);
}

function insert(at: number, text: string): Edit {
  return { from: at, to: at, text };
}

/** The book must say after the edit what it said before, but for the name. */
function isRenamed(before: string, after: string, section: string, from: string, to: string): boolean {
  const [was, is] = [parsePlaced(before).document, parsePlaced(after).document];
  if (is.errors.length > 0) return false;
  const said = (value: unknown, isEntry: (id: string) => boolean, earlier: string | null) => {
    const book = (value ?? {}) as Record<string, Record<string, unknown>>;
    const entries = Object.entries(book[section] ?? {}).map(([id, entry]) =>
      isEntry(id) ? ([to, withEarlier(entry, earlier)] as const) : ([id, entry] as const),
    );
    // The order of entries is that of the text, which only the name changes in.
    return JSON.stringify({ ...book, [section]: entries.sort(([a], [b]) => compareText(a, b)) });
  };
  return said(was.toJS(), (id) => id === from || id === to, from) === said(is.toJS(), (id) => id === to, null);
}

/** An entry with its earlier names first and in order, so that two can be compared. */
function withEarlier(entry: unknown, from: string | null): Record<string, unknown> {
  const { was, ...rest } = (entry ?? {}) as Record<string, unknown>;
  const names = Array.isArray(was) ? was : was === undefined || was === null ? [] : [was];
  return { was: [...names, ...(from === null ? [] : [from])].map(String).sort(), ...rest };
}

function findPair(map: YAMLMap, name: string): MapPair | null {
  const found = map.items.find((item) => isScalar(item.key) && String(item.key.value) === name);
  return (found as MapPair | undefined) ?? null;
}

function columnOf(text: string, offset: number): number {
  return offset - (text.lastIndexOf('\n', offset - 1) + 1);
}

function endOfLine(text: string, offset: number): number {
  const end = text.indexOf('\n', offset);
  if (end < 0) return text.length;
  return text[end - 1] === '\r' ? end - 1 : end;
}
