import fs from 'node:fs';
import path from 'node:path';
import { createInterface } from 'node:readline/promises';
import { fileURLToPath } from 'node:url';
import { asFileTrouble } from './file-trouble.js';
import { readFontFile } from './font-files.js';
import type { Host } from './types.js';
import { writeAllFiles, writeOneFile } from './write-all.js';

const packageRoot = fileURLToPath(new URL('../../', import.meta.url));

/** The host of a real run: this process, its files and its terminal. */
export function createNodeHost(): Host {
  const { env, stdout, stderr } = process;
  return {
    cwd: process.cwd(),
    env,
    columns: stdout.columns ?? 80,
    colour: { out: mayColour(stdout.isTTY, env), error: mayColour(stderr.isTTY, env) },
    out: (text) => void stdout.write(text),
    error: (text) => void stderr.write(text),
    ask,
    readFile,
    exists: async (file) => fs.existsSync(file),
    writeFile: writeOneFile,
    readData: (file) => fs.readFileSync(path.join(packageRoot, file)),
    readFont: readFontFile,
    writeAll: writeAllFiles,
    today: () => localDate(new Date()),
  };
}

/** NO_COLOR wins when it is set to anything (no-color.org); FORCE_COLOR then; else only a terminal gets colours. */
function mayColour(isTerminal: boolean | undefined, env: NodeJS.ProcessEnv): boolean {
  if (env.NO_COLOR) return false;
  if (env.FORCE_COLOR && env.FORCE_COLOR !== '0') return true;
  return isTerminal === true && env.TERM !== 'dumb';
}

async function readFile(file: string): Promise<Uint8Array> {
  try {
    return file === '-' ? await readStandardInput() : await fs.promises.readFile(file);
  } catch (error) {
    throw asFileTrouble(file, error);
  }
}

async function readStandardInput(): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  for await (const chunk of process.stdin) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks);
}

let typed: AsyncIterator<string> | null = null;

async function ask(prompt: string): Promise<string | null> {
  process.stdout.write(prompt);
  typed ??= createInterface({ input: process.stdin })[Symbol.asyncIterator]();
  const next = await typed.next();
  return next.done ? null : next.value;
}

function localDate(now: Date): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
