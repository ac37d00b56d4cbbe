import type { Range } from './text-range.js';

/** How much a message matters: an error keeps the old outputs in place, the others do not. */
export type Severity = 'error' | 'warning' | 'info';

/** The layer that speaks. */
export type DiagnosticSource =
  | 'script'
  | 'page'
  | 'find'
  | 'breakdown'
  | 'book'
  | 'compare'
  | 'plan'
  | 'render'
  | 'command';

/** One thing to tell the user, as data. `code` is never renamed or reused. */
export interface Diagnostic {
  readonly code: string;
  readonly source: DiagnosticSource;
  readonly severity: Severity;
  /** What is odd, in one sentence: what was met, what was expected. */
  readonly reason: string;
  /** What to type or do instead, in one sentence. */
  readonly hint?: string;
  /** The file it speaks of; the script's when absent. */
  readonly file?: string;
  readonly place?: Range;
  readonly actual?: string;
  readonly expected?: readonly string[];
  readonly related?: readonly { readonly place: Range; readonly reason: string }[];
}

const rank: Record<Severity, number> = { error: 0, warning: 1, info: 2 };

/** Orders messages by file, place, severity and code, so that a report never depends on the order of work. */
export function sortDiagnostics(messages: readonly Diagnostic[]): Diagnostic[] {
  const line = (m: Diagnostic) => m.place?.start.line ?? 0;
  const column = (m: Diagnostic) => m.place?.start.column ?? 0;
  return [...messages].sort(
    (a, b) =>
      compareText(a.file ?? '', b.file ?? '') ||
      line(a) - line(b) ||
      column(a) - column(b) ||
      rank[a.severity] - rank[b.severity] ||
      compareText(a.code, b.code) ||
      compareText(a.reason, b.reason),
  );
}

/** Orders text by code units: the same on every machine, whatever its language. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
