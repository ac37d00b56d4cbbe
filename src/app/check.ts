import { type Diagnostic, sortDiagnostics } from '../base/diagnostic.js';
import type { Host } from '../host/types.js';
import { analyse, readLexicon } from './analyse.js';

/** All messages about a script, in order; nothing is printed or written. */
export function check(bytes: Uint8Array, file: string, host: Host): readonly Diagnostic[] {
  return sortDiagnostics(analyse(bytes, file, readLexicon(host)).messages);
}
