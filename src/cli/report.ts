import pc from 'picocolors';
import stringWidth from 'string-width';
import { type Diagnostic, type Severity, sortDiagnostics } from '../base/diagnostic.js';

export interface ReportOptions {
  /** The text of each file, to show the line that a message speaks of. */
  readonly texts: Readonly<Record<string, string>>;
  /** The script's name: what a message without a file speaks of. */
  readonly file: string;
  readonly colour: boolean;
}

/** Messages for a person: place, severity, reason and code; the source line with a caret; the hint; a count at the end. */
export function reportMessages(messages: readonly Diagnostic[], options: ReportOptions): string {
  if (messages.length === 0) return '';
  const lines = new Map(Object.entries(options.texts).map(([file, text]) => [file, text.split(/\r\n|\r|\n/)]));
  const blocks = sortDiagnostics(messages).map((message) =>
    reportOne(message, lines.get(message.file ?? options.file) ?? [], options),
  );
  return `${blocks.join('\n')}\n${countMessages(messages)}\n`;
}

/** `1 error, 2 warnings, 3 notes`. */
export function countMessages(messages: readonly Diagnostic[]): string {
  const names: Record<Severity, [string, string]> = {
    error: ['error', 'errors'],
    warning: ['warning', 'warnings'],
    info: ['note', 'notes'],
  };
  const counted = (Object.keys(names) as Severity[]).map((severity) => {
    const count = messages.filter((message) => message.severity === severity).length;
    return count === 0 ? '' : `${count} ${names[severity][count === 1 ? 0 : 1]}`;
  });
  return counted.filter((part) => part !== '').join(', ');
}

function reportOne(message: Diagnostic, lines: readonly string[], options: ReportOptions): string {
  const colours = pc.createColors(options.colour);
  const paint = { error: colours.red, warning: colours.yellow, info: colours.cyan }[message.severity];
  const word = message.severity === 'info' ? 'note' : message.severity;
  const where = [message.file ?? options.file, message.place?.start.line, message.place?.start.column]
    .filter((part) => part !== undefined && part !== '')
    .join(':');
  const head = `${where ? `${colours.bold(where)} ` : ''}${paint(word)} ${message.reason} ${colours.dim(`[${message.code}]`)}`;
  return [head, ...showLine(message, lines), ...(message.hint ? [`  hint: ${message.hint}`] : []), ''].join('\n');
}

/** The source line with carets under the words, by display width; nothing when there is no place or the line is empty. */
function showLine(message: Diagnostic, lines: readonly string[]): string[] {
  const { place } = message;
  if (!place) return [];
  const line = (lines[place.start.line - 1] ?? '').replace(/^\uFEFF/, '').replaceAll('\t', ' ');
  if (line.trim() === '') return [];
  const from = Math.max(0, Math.min(place.start.column - 1, line.length));
  const to =
    place.end.line === place.start.line ? Math.min(Math.max(place.end.column - 1, from + 1), line.length) : line.length;
  const cut = 100;
  const begin = from > cut - 20 ? from - 20 : 0;
  const shown = line.slice(begin, begin + cut);
  const carets = '^'.repeat(Math.max(1, stringWidth(line.slice(from, Math.min(to, begin + cut)))));
  return [`  | ${shown}`, `  | ${' '.repeat(stringWidth(line.slice(begin, from)))}${carets}`];
}
