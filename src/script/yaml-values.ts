import { isScalar } from 'yaml';
import type { Diagnostic } from '../base/diagnostic.js';
import type { Range } from '../base/text-range.js';

/** What the readers of the front matter share: places in the script, and the list of messages. */
export interface FrontReader {
  readonly place: (node: unknown) => Range;
  readonly messages: Diagnostic[];
}

/** A scalar as the writer typed it; null for nothing and for anything that is no scalar. */
export function scalarText(node: unknown): string | null {
  if (!isScalar(node) || node.value === null || node.value === undefined) return null;
  if (typeof node.value === 'string') return node.value.trim();
  return (node.source ?? String(node.value)).trim();
}
