import { isMap, isScalar, type Node, type Pair, type YAMLMap } from 'yaml';
import { parsePlaced } from './book-places.js';
import type { Wanted } from './script-names.js';

/**
 * Writes new, empty entries at the end of one section of a YAML text, in its own indentation and line ends, and changes no
 * other character. Null when the text does not allow it; the result is read back and compared before it is trusted.
 */
export function insertEntries(text: string, section: string, entries: readonly Wanted[]): string | null {
  const top = parsePlaced(text).document.contents;
  if (top !== null && !isMap(top)) return null;
  const pair = top ? findPair(top, section) : null;
  const result = pair ? extendSection(text, pair, entries) : appendSection(text, section, entries);
  return result !== null && isSameBut(text, result, section, entries) ? result : null;
}

function appendSection(text: string, section: string, entries: readonly Wanted[]): string {
  const end = lineEnd(text);
  const gap = text === '' || text.endsWith('\n') ? '' : end;
  return `${text}${gap}${end}${section}:${end}${entries.map((one) => entryLine(one, '  ', end)).join('')}`;
}

function extendSection(text: string, pair: Pair<Node, Node | null>, entries: readonly Wanted[]): string | null {
  const value = pair.value;
  if (isMap(value) && value.flow) return extendFlow(text, value, entries);
  if (isMap(value)) {
    const first = value.items[0] as Pair<Node, Node | null> | undefined;
    const last = value.items.at(-1) as Pair<Node, Node | null> | undefined;
    if (!first || !last) return null;
    const indent = columnOf(text, first.key.range?.[0] ?? 0);
    return insertAfter(text, endOf(last), ' '.repeat(indent), entries);
  }
  const empty = value === null || (isScalar(value) && value.range?.[0] === value.range?.[1]);
  if (!empty) return null;
  const indent = columnOf(text, pair.key.range?.[0] ?? 0) + 2;
  return insertAfter(text, pair.key.range?.[1] ?? 0, ' '.repeat(indent), entries);
}

function extendFlow(text: string, map: YAMLMap, entries: readonly Wanted[]): string | null {
  const close = (map.range?.[1] ?? 0) - 1;
  if (text[close] !== '}') return null;
  const before = text.slice(0, close);
  const comma = map.items.length > 0 && !/,\s*$/.test(before) ? ', ' : ' ';
  return `${before.trimEnd()}${comma}${entries.map((one) => `${quoteName(one.id)}: ${writtenValue(one) ?? 'null'}`).join(', ')} ${text.slice(close)}`;
}

function insertAfter(text: string, offset: number, indent: string, entries: readonly Wanted[]): string {
  const end = lineEnd(text);
  const at = skipRemarks(text, offset, indent.length);
  const before = text.slice(0, at);
  const gap = before === '' || before.endsWith('\n') ? '' : end;
  return `${before}${gap}${entries.map((one) => entryLine(one, indent, end)).join('')}${text.slice(at)}`;
}

/** The start of the line after an offset, and after the comments that belong to what stands there by their indentation. */
function skipRemarks(text: string, offset: number, indent: number): number {
  let at = offset > 0 && text[offset - 1] === '\n' ? offset : nextLine(text, offset);
  for (let look = at; look < text.length; ) {
    const next = nextLine(text, look);
    const line = text.slice(look, next);
    const isRemark = /^\s*#/.test(line) && line.length - line.trimStart().length >= indent;
    if (isRemark) at = next;
    else if (line.trim() !== '') break;
    look = next;
  }
  return at;
}

/** The book must say after the edit what it said before, and the new entries besides. */
function isSameBut(before: string, after: string, section: string, entries: readonly Wanted[]): boolean {
  const [was, is] = [parsePlaced(before).document, parsePlaced(after).document];
  if (is.errors.length > 0) return false;
  const expected = (was.toJS() ?? {}) as Record<string, unknown>;
  const held = (expected[section] ?? {}) as Record<string, unknown>;
  const added = Object.fromEntries(entries.map((one) => [one.id, one.was === undefined ? null : { was: one.was }]));
  const wanted = { ...expected, [section]: { ...held, ...added } };
  return JSON.stringify(wanted) === JSON.stringify(is.toJS());
}

function entryLine(entry: Wanted, indent: string, end: string): string {
  const short = shortenRemark(entry.remark);
  const value = writtenValue(entry);
  return `${indent}${quoteName(entry.id)}:${value === null ? '' : ` ${value}`}${short === '' ? '' : ` # ${short}`}${end}`;
}

/** A remark as it stands beside a new entry. */
export function shortenRemark(text: string): string {
  const remark = text.replace(/\s+/g, ' ').trim();
  return remark.length > 60 ? `${remark.slice(0, 59).trimEnd()}…` : remark;
}

function writtenValue({ was }: Wanted): string | null {
  return was === undefined ? null : `{ was: ${quoteName(was)} }`;
}

/** A key as YAML reads it back as the same text: quoted when it might be a number, a truth or a sign. */
export function quoteName(id: string): string {
  return /^\p{L}[\p{L}\p{N}-]*$/u.test(id) && !/^(null|true|false|yes|no|on|off|y|n)$/i.test(id)
    ? id
    : JSON.stringify(id);
}

function findPair(map: YAMLMap, section: string): Pair<Node, Node | null> | null {
  const found = map.items.find((item) => isScalar(item.key) && item.key.value === section);
  return (found as Pair<Node, Node | null> | undefined) ?? null;
}

function endOf(pair: Pair<Node, Node | null>): number {
  return Math.max(pair.value?.range?.[1] ?? 0, pair.key.range?.[1] ?? 0);
}

function columnOf(text: string, offset: number): number {
  return offset - (text.lastIndexOf('\n', offset - 1) + 1);
}

function nextLine(text: string, offset: number): number {
  const end = text.indexOf('\n', offset);
  return end < 0 ? text.length : end + 1;
}

function lineEnd(text: string): string {
  return text.includes('\r\n') ? '\r\n' : '\n';
}
