import type { Diagnostic } from '../base/diagnostic.js';
import { foldName } from '../base/slug.js';
import type { Range } from '../base/text-range.js';
import { sayScript } from '../messages/script.js';
import { findCategory } from '../trade/categories.js';
import type { PrintedLines } from './printed-lines.js';
import type { RawLine } from './raw-line.js';

/** A definition as written, before its people are known (rule E5). */
export interface WrittenDefinition {
  readonly name: string;
  /** The category as typed; empty when there is none. */
  readonly category: string;
  readonly text: string;
  /** False for one that Markdown does not read. */
  readonly regular: boolean;
  readonly at: Range;
}

/** The lines without the definitions among them, and all definitions. */
export interface SortedDefinitions {
  readonly lines: readonly RawLine[];
  readonly definitions: readonly WrittenDefinition[];
}

/** Takes definitions out of the lines: those that Markdown reads, and those it does not but that are plain enough (rule E5). */
export function sortOutDefinitions(printed: PrintedLines, messages: Diagnostic[]): SortedDefinitions {
  const definitions = printed.definitions.map((definition): WrittenDefinition => ({ ...definition, regular: true }));
  const lines = printed.lines.filter((line) => {
    const loose = line.text.startsWith('[') ? readLoose(line) : null;
    if (loose === null) return true;
    const isTaken = isTakable(loose);
    messages.push(
      sayScript('definition-not-read', { name: loose.name, taken: isTaken ? retype(loose) : null }, line.at),
    );
    if (isTaken) definitions.push(loose);
    return !isTaken;
  });
  return { lines, definitions };
}

const shape = /^\[([^[\]]+)\]\s?:\s*(.*)$/;

/**
 * A line that was meant as a definition but that Markdown reads as text: no blank line above it, a category of two words, quotes
 * within quotes. Null for any other line.
 */
function readLoose(line: RawLine): WrittenDefinition | null {
  if (line.kind !== 'text' || line.literal?.has(0)) return null;
  const found = shape.exec(line.text);
  const name = found?.[1]?.trim() ?? '';
  if (!found || name === '') return null;
  return { name, ...splitLoose((found[2] as string).trim()), regular: false, at: line.at };
}

/** Splits `visual effects "heavy"` and `prop 2; carried by Nora` into category and text. */
function splitLoose(rest: string): { category: string; text: string } {
  const quote = rest.search(/["“(]/);
  const head = (quote === -1 ? rest : rest.slice(0, quote)).trim().replace(/^<(.*)>$/, '$1');
  if (quote !== -1) return { category: head, text: unwrap(rest.slice(quote)) };
  const found = /^(\S+|\S+ \S+)\s+((?:\d|carried by|worn by|was\b).*|.*;.*)$/i.exec(head);
  return found && findCategory(found[1] as string)
    ? { category: found[1] as string, text: found[2] as string }
    : { category: head, text: '' };
}

function unwrap(quoted: string): string {
  return quoted.slice(1).replace(/["”)]$/, '');
}

/** True when a loose definition is plain enough to be taken: its category is known, or it has none but a text in quotes. */
function isTakable(definition: WrittenDefinition): boolean {
  return findCategory(definition.category) !== null || (definition.category === '' && definition.text !== '');
}

/** The definition as Markdown reads it. */
function retype({ name, category, text }: WrittenDefinition): string {
  const spellings = [category, category.replace(/\s+/g, '-'), findCategory(category)?.name ?? ''];
  const word = spellings.find((one) => !one.includes(' ') && findCategory(one)) ?? '<>';
  return `[${name}]: ${word}${text === '' ? '' : ` "${text.replace(/["“”]/g, "'")}"`}`;
}

/** Folded names of definitions, for telling marks in speech. */
export function definedNames(definitions: readonly WrittenDefinition[]): Set<string> {
  return new Set(definitions.map((definition) => foldName(definition.name)));
}

/** The earlier names that definitions give their elements: `was lamp`. */
export function formerNames(definitions: readonly WrittenDefinition[]): string[] {
  return definitions.flatMap(({ text }) =>
    text.split(';').flatMap((segment) => /^\s*was\s+(\S.*)$/i.exec(segment)?.[1]?.trim() ?? []),
  );
}
