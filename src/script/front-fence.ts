import type { Diagnostic } from '../base/diagnostic.js';
import { sayScript } from '../messages/script.js';
import { matchSceneStart } from './scene-heading.js';
import { lineEnd, lineStart, lineText, rangeAt, type SourceText } from './source-text.js';

/** The front matter's text and where the script begins behind it. */
export interface FrontFence {
  /** Offsets of the YAML text. */
  readonly start: number;
  readonly end: number;
  /** Offset where the script begins. */
  readonly bodyStart: number;
}

/** Keys that front matter may have, in the order in which a writer meets them. */
export const frontKeys = [
  'title',
  'draft',
  'date',
  'author',
  'contact',
  'paper',
  'eighths',
  'numbers',
  'language',
  'cast',
] as const;

const knownKey = new RegExp(`^["']?(?:${frontKeys.join('|')})["']?\\s*:`, 'im');
const anyKey = /^["']?[\p{L}][\p{L}\p{N} _-]*["']?\s*:(?:\s|$)/mu;

/** Finds the front matter (rule L1), and says what is odd about where it begins and ends; null when there is none. */
export function findFrontFence(source: SourceText): { fence: FrontFence | null; messages: readonly Diagnostic[] } {
  const first = firstTextLine(source);
  if (first === null || lineText(source, first).trimEnd() !== '---') return { fence: null, messages: [] };
  const close = closingLine(source, first);
  const end = close ?? firstBlankLine(source, first);
  const yamlStart = lineStart(source, first + 1);
  const yamlEnd = Math.max(yamlStart, lineStart(source, end));
  const at = rangeAt(source, lineStart(source, first), lineEnd(source, first));
  if (!startsWithKey(source.text.slice(yamlStart, yamlEnd), close !== null)) {
    return { fence: null, messages: first === 1 ? [missing(close, at)] : [] };
  }
  const bodyStart = close === null ? yamlEnd : lineStart(source, close + 1);
  return { fence: { start: yamlStart, end: yamlEnd, bodyStart }, messages: oddities(source, first, close, at) };
}

function missing(close: number | null, at: Diagnostic['place']): Diagnostic {
  return close === null
    ? sayScript('front-matter-open', { taken: false }, at)
    : sayScript('front-matter-not-mapping', undefined, at);
}

function oddities(source: SourceText, first: number, close: number | null, at: Diagnostic['place']): Diagnostic[] {
  const messages: Diagnostic[] = [];
  if (first > 1) messages.push(sayScript('front-matter-not-first', undefined, at));
  if (close === null) messages.push(sayScript('front-matter-open', { taken: true }, at));
  else if (lineText(source, close).startsWith('...')) {
    messages.push(
      sayScript('front-matter-dots', undefined, rangeAt(source, lineStart(source, close), lineEnd(source, close))),
    );
  }
  return messages;
}

/** Empty front matter, or a first line with a key: one we know below it, or at least one in small letters, as no script has. */
function startsWithKey(yaml: string, closed: boolean): boolean {
  const first = yaml.split('\n').find((line) => line.trim() !== '' && !line.startsWith('#'));
  if (first === undefined) return closed;
  if (!anyKey.test(first)) return false;
  return knownKey.test(yaml) || (closed && /\p{Ll}/u.test(first.split(':')[0] as string));
}

function firstTextLine(source: SourceText): number | null {
  for (let line = 1; line <= source.starts.length; line += 1) {
    if (lineText(source, line).trim() !== '') return line;
  }
  return null;
}

/** The line that ends the front matter; null when a scene begins before one. */
function closingLine(source: SourceText, first: number): number | null {
  for (let line = first + 1; line <= source.starts.length; line += 1) {
    const text = lineText(source, line);
    if (/^(?:---|\.\.\.)[ \t]*$/.test(text)) return line;
    if (isSceneStart(text)) return null;
  }
  return null;
}

function isSceneStart(text: string): boolean {
  const start = matchSceneStart(text.replace(/^#+\s*/, ''));
  return start !== null && !start.row.inFull && start.written === start.written.toUpperCase();
}

function firstBlankLine(source: SourceText, first: number): number {
  let line = first + 1;
  while (line <= source.starts.length && lineText(source, line).trim() !== '') line += 1;
  return line;
}
