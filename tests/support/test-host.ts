import fs from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { readFontFile } from '../../src/host/font-files.js';
import { FileTrouble, type Host } from '../../src/host/types.js';
import type { OutputFile } from '../../src/render/types.js';

export const packageRoot = fileURLToPath(new URL('../../', import.meta.url));

export interface TestHost extends Host {
  /** What was printed. */
  readonly printed: { out: string; error: string };
  /** The files written, by path. */
  readonly written: Map<string, OutputFile['content']>;
}

/**
 * A host in memory: files are handed in, `-` holds what is typed, outputs are kept, nothing touches the disk but the
 * package's own data.
 */
export function createTestHost(
  files: Readonly<Record<string, string | Uint8Array>> = {},
  env: Record<string, string> = {},
): TestHost {
  const printed = { out: '', error: '' };
  const written = new Map<string, OutputFile['content']>();
  const typed = String(files['-'] ?? '')
    .split('\n')
    .slice(0, -1);
  const refuseBelowFile = (name: string) => {
    const file = Object.keys(files).find((one) => name.startsWith(`${one}/`));
    if (file) throw new FileTrouble(name, 'a part of the path is a file, not a folder');
  };
  return {
    cwd: '/',
    env,
    columns: 100,
    colour: { out: false, error: false },
    printed,
    written,
    out: (text) => {
      printed.out += text;
    },
    error: (text) => {
      printed.error += text;
    },
    ask: async (prompt) => {
      printed.out += prompt;
      return typed.shift() ?? null;
    },
    readFile: async (name) => {
      const content = files[name];
      if (content === undefined) throw new FileTrouble(name, 'there is no such file or folder');
      return typeof content === 'string' ? new TextEncoder().encode(content) : content;
    },
    exists: async (name) => files[name] !== undefined,
    writeFile: async (name, content) => {
      refuseBelowFile(name);
      written.set(name, content);
    },
    readData: (file) => fs.readFileSync(path.join(packageRoot, file)),
    readFont: readFontFile,
    writeAll: async (folder, outputs) => {
      refuseBelowFile(`${folder}/`);
      for (const output of outputs) written.set(`${folder}/${output.name}`, output.content);
    },
    today: () => '2026-04-01',
  };
}
