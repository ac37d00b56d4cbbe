import { spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { text } from 'node:stream/consumers';
import { describe, expect, it } from 'vitest';
import { main } from '../../src/cli/main.js';
import { commandMessages } from '../../src/messages/command.js';
import { createTestHost, packageRoot } from '../support/test-host.js';
import { type CommandLineCase, commandLineCases } from './command-line-cases.js';

interface Answer {
  readonly exit: number;
  readonly out: string;
  readonly error: string;
  readonly files: readonly string[];
  readonly rewritten: Readonly<Record<string, string>>;
}

async function runInProcess(given: CommandLineCase): Promise<Answer> {
  const host = createTestHost({ ...given.files, ...(given.stdin === undefined ? {} : { '-': given.stdin }) });
  const exit = await main(given.args, host);
  const written = [...host.written].map(([name, content]) => [name, String(content)]);
  return { exit, ...host.printed, files: [...host.written.keys()], rewritten: Object.fromEntries(written) };
}

async function runAsChild(given: CommandLineCase): Promise<Answer> {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'prepwright-cli-'));
  try {
    for (const [name, content] of Object.entries(given.files ?? {})) fs.writeFileSync(path.join(folder, name), content);
    const child = spawn(process.execPath, [path.join(packageRoot, 'bin/prepwright.js'), ...given.args], {
      cwd: folder,
      env: { ...process.env, NO_COLOR: '1' },
    });
    child.stdin.end(given.stdin ?? '');
    const ended = new Promise<number>((resolve) => child.on('close', (code) => resolve(code ?? -1)));
    const [out, error, exit] = await Promise.all([text(child.stdout), text(child.stderr), ended]);
    const inputs = new Set(Object.keys(given.files ?? {}));
    const files = fs.readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => !inputs.has(name));
    return {
      exit,
      out,
      error,
      files: files.filter((name) => fs.statSync(path.join(folder, name)).isFile()),
      rewritten: Object.fromEntries(
        [...inputs].map((name) => [name, fs.readFileSync(path.join(folder, name), 'utf8')]),
      ),
    };
  } finally {
    fs.rmSync(folder, { recursive: true });
  }
}

const ways = { 'in process': runInProcess, 'as a child process': runAsChild };

describe.each(Object.entries(ways))('the command line, %s', (_, run) => {
  it.concurrent.each(commandLineCases)('$name', async (given) => {
    const answer = await run(given);
    expect(answer.exit, answer.error).toBe(given.exit);
    for (const part of given.out ?? []) expect(answer.out).toMatch(part);
    for (const part of given.error ?? []) expect(answer.error).toMatch(part);
    if (given.writes) {
      if (given.writes.length === 0) expect(answer.files).toEqual([]);
      else expect(answer.files).toEqual(expect.arrayContaining([...given.writes]));
    }
    for (const [name, text] of Object.entries(given.rewrites ?? {})) expect(answer.rewritten[name]).toBe(text);
    expect(answer.out + answer.error).not.toContain('\u001b[');
  });
});

it('has a case for every message of the command line', async () => {
  const answers = await Promise.all(commandLineCases.map(runInProcess));
  const said = answers.flatMap(({ error }) => [...error.matchAll(/\[([a-z0-9-]+)\]$/gm)].map(([, code]) => code));
  expect(said).toEqual(expect.arrayContaining(Object.keys(commandMessages)));
});
