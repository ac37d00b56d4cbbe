import type { Range } from '../base/text-range.js';
import { readQuantity, saysNothing } from '../trade/quantities.js';
import { findPerson } from './people.js';
import type { NoteItem, Person } from './types.js';

/** A piece of a note's text: `start` and `end` count in the text it was cut from. */
export interface Piece {
  readonly text: string;
  readonly start: number;
  readonly end: number;
}

/** Reads things named between two places of a note's text: `2 crates of apples (Nora), torch, "a, b"`. */
export function readItems(
  text: string,
  [from, to]: readonly [number, number],
  people: readonly Person[],
  placeOf: (start: number, end: number) => Range,
): NoteItem[] {
  const items: NoteItem[] = [];
  for (const piece of splitList(text.slice(from, to))) {
    const item = readItem(piece, people);
    if (!saysNothing(item.name) && /[^\p{P}\s]/u.test(item.name))
      items.push({ ...item, at: placeOf(from + piece.start, from + piece.end) });
  }
  return items;
}

/** Splits at commas and semicolons, save inside quotes and parentheses and within a number (1,000). */
export function splitList(text: string): Piece[] {
  const pieces: Piece[] = [];
  let start = 0;
  let depth = 0;
  let quote: string | null = null;
  const push = (end: number) => {
    const raw = text.slice(start, end);
    const trimmed = raw.trim();
    const at = start + raw.length - raw.trimStart().length;
    if (trimmed !== '') pieces.push({ text: trimmed, start: at, end: at + trimmed.length });
    start = end + 1;
  };
  const lastClose = { '"': text.lastIndexOf('"'), '”': text.lastIndexOf('”'), ')': text.lastIndexOf(')') };
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at] as string;
    if (quote !== null) quote = sign === quote ? null : quote;
    else if (sign === '(' && lastClose[')'] > at) depth += 1;
    else if (sign === ')') depth = Math.max(0, depth - 1);
    else if (depth > 0) continue;
    else if (sign === '"' && lastClose['"'] > at && opensQuote(text, start, at)) quote = '"';
    else if (sign === '“' && lastClose['”'] > at) quote = '”';
    else if ((sign === ',' && !isDigitComma(text, at)) || /[;，、；]/.test(sign)) push(at);
  }
  push(text.length);
  return pieces;
}

/** A straight quote opens a name between a space and a word; elsewhere it closes one, or is an inch sign. */
function opensQuote(text: string, start: number, at: number): boolean {
  return (at === start || /\s/.test(text[at - 1] as string)) && /\S/.test(text[at + 1] ?? '');
}

function isDigitComma(text: string, at: number): boolean {
  return /\d/.test(text[at - 1] ?? '') && /^\d{3}(?!\d)/.test(text.slice(at + 1, at + 5));
}

function readItem(piece: Piece, people: readonly Person[]): Omit<NoteItem, 'at'> {
  const { head, insides } = takeParentheses(piece.text);
  const { count, measure, rest } = readQuantity(head);
  const item = { name: unquote(rest), count, by: null, description: measure };
  return insides.reduce<Omit<NoteItem, 'at'>>((known, inside) => addParenthesis(known, inside, people), item);
}

/** Takes all parentheses at the end off: `knife (Tom) (blunt)`. */
function takeParentheses(text: string): { head: string; insides: string[] } {
  const insides: string[] = [];
  for (let rest = text; ; ) {
    const { head, inside } = takeParenthesis(rest);
    if (inside === null) return { head, insides };
    insides.unshift(inside);
    rest = head;
  }
}

function takeParenthesis(text: string): { head: string; inside: string | null } {
  const open = text.endsWith(')') ? matchingOpen(text) : -1;
  if (open <= 0) return { head: text, inside: null };
  return { head: text.slice(0, open).trim(), inside: text.slice(open + 1, -1).trim() };
}

function matchingOpen(text: string): number {
  let depth = 0;
  for (let at = text.length - 1; at >= 0; at -= 1) {
    if (text[at] === ')') depth += 1;
    else if (text[at] === '(') depth -= 1;
    if (depth === 0) return at;
  }
  return -1;
}

/** A person in the parenthesis is who has it, a bare number how many; what else stands there describes it. */
function addParenthesis(item: Omit<NoteItem, 'at'>, inside: string, people: readonly Person[]): Omit<NoteItem, 'at'> {
  const number = /^[x\u00d7]?\s?(\d{1,4})$/i.exec(inside)?.[1];
  if (number !== undefined && item.count === null) return { ...item, count: Number(number) };
  const { by, description } = readParenthesis(inside, people);
  const described = [item.description, description].filter((one) => one !== null).join(', ');
  return { ...item, by: item.by ?? by, description: described || null };
}

function readParenthesis(inside: string, people: readonly Person[]): { by: string | null; description: string | null } {
  const whole = findPerson(people, inside);
  if (whole) return { by: whole.name, description: null };
  const comma = inside.search(/[,;]/);
  const first = comma === -1 ? null : findPerson(people, inside.slice(0, comma));
  return first
    ? { by: first.name, description: inside.slice(comma + 1).trim() || null }
    : { by: null, description: inside || null };
}

/** A name without the quotes round it. */
export function unquote(text: string): string {
  const found = /^(?:"([^"]*)"|“([^”]*)”|‘([^’]*)’)$/.exec(text.trim());
  return found ? (found[1] ?? found[2] ?? found[3] ?? '').trim() : text.trim();
}
