import { type Compiled, compile } from '../../src/app/compile.js';
import type { BookText } from '../../src/app/production.js';
import type { OutputName } from '../../src/render/types.js';
import { createTestHost } from './test-host.js';

/** Data of the package is read once for all texts of a test file. */
const data = new Map<string, Uint8Array>();
const plain = createTestHost();
const host = {
  ...plain,
  readData: (file: string) => {
    const bytes = data.get(file) ?? plain.readData(file);
    data.set(file, bytes);
    return bytes;
  },
};

/** Runs the whole pipeline over a text, on a day that never changes. */
export function compileText(
  script: string | Uint8Array,
  outputs: readonly OutputName[] = ['json'],
  book: BookText | null = null,
): Promise<Compiled> {
  const bytes = typeof script === 'string' ? new TextEncoder().encode(script) : script;
  return compile({ bytes, file: 'script.md', outputs, book, today: '2027-02-01' }, host);
}

/** The text of `breakdown.json`; null when the script was refused. */
export function jsonOf(compiled: Compiled): string | null {
  const file = compiled.files.find(({ name }) => name === 'breakdown.json');
  return file ? String(file.content) : null;
}
