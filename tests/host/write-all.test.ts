import { spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { FileTrouble } from '../../src/host/types.js';
import { writeAllFiles, writeOneFile } from '../../src/host/write-all.js';
import { packageRoot } from '../support/test-host.js';

let folder: string;
beforeEach(() => {
  folder = fs.mkdtempSync(path.join(os.tmpdir(), 'prepwright-write-'));
});
afterEach(() => fs.rmSync(folder, { recursive: true }));

const read = (name: string) => fs.readFileSync(path.join(folder, name), 'utf8');

describe('writing all files of a run', () => {
  it('makes the folder and writes every file', async () => {
    const deep = path.join(folder, 'a/b');
    await writeAllFiles(deep, [
      { name: 'one.txt', content: '1' },
      { name: 'two.bin', content: new Uint8Array([2]) },
    ]);
    expect(fs.readdirSync(deep).sort()).toEqual(['one.txt', 'two.bin']);
  });

  it('leaves files of others alone and replaces its own', async () => {
    fs.writeFileSync(path.join(folder, 'mine.txt'), 'mine');
    await writeAllFiles(folder, [{ name: 'one.txt', content: 'old' }]);
    await writeAllFiles(folder, [{ name: 'one.txt', content: 'new' }]);
    expect([read('mine.txt'), read('one.txt')]).toEqual(['mine', 'new']);
    expect(fs.readdirSync(folder).sort()).toEqual(['mine.txt', 'one.txt']);
  });

  it('takes the first files back when a later one cannot be written', async () => {
    fs.writeFileSync(path.join(folder, 'one.txt'), 'old');
    fs.mkdirSync(path.join(folder, 'three.txt'));
    const run = writeAllFiles(folder, [
      { name: 'one.txt', content: 'new' },
      { name: 'two.txt', content: 'new' },
      { name: 'three.txt', content: 'new' },
    ]);
    await expect(run).rejects.toBeInstanceOf(FileTrouble);
    expect(read('one.txt')).toBe('old');
    expect(fs.readdirSync(folder).sort()).toEqual(['one.txt', 'three.txt']);
  });

  it('makes no folder when nothing can be written there', async () => {
    fs.writeFileSync(path.join(folder, 'file'), '');
    await expect(writeAllFiles(path.join(folder, 'file/sub'), [{ name: 'a', content: '' }])).rejects.toThrow(
      /file, not a folder/,
    );
    expect(fs.readdirSync(folder)).toEqual(['file']);
  });

  it.runIf(fs.existsSync('/proc/self'))('ends where the system refuses a folder oddly', async () => {
    await expect(writeAllFiles('/proc/film-breakdown', [{ name: 'a', content: '' }])).rejects.toBeInstanceOf(
      FileTrouble,
    );
  });

  it('removes what an interrupted run left', async () => {
    fs.mkdirSync(path.join(folder, '.prepwright-writing-x1'));
    await writeAllFiles(folder, [{ name: 'one.txt', content: '1' }]);
    expect(fs.readdirSync(folder)).toEqual(['one.txt']);
  });

  it('writes one file whole', async () => {
    await writeOneFile(path.join(folder, 'script.md'), 'text');
    expect(fs.readdirSync(folder)).toEqual(['script.md']);
    await expect(writeOneFile(path.join(folder, 'no/script.md'), 'text')).rejects.toBeInstanceOf(FileTrouble);
  });

  it('keeps a link and the permissions of what it points to', async () => {
    const real = path.join(folder, 'real.md');
    fs.writeFileSync(real, 'old', { mode: 0o600 });
    fs.symlinkSync('real.md', path.join(folder, 'script.md'));
    await writeOneFile(path.join(folder, 'script.md'), 'new');
    expect(read('real.md')).toBe('new');
    expect(fs.statSync(real).mode & 0o777).toBe(0o600);
    expect(fs.lstatSync(path.join(folder, 'script.md')).isSymbolicLink()).toBe(true);
    expect(fs.readdirSync(folder).sort()).toEqual(['real.md', 'script.md']);
  });

  it('says so when a part of the path is a file', async () => {
    fs.writeFileSync(path.join(folder, 'file'), '');
    await expect(writeOneFile(path.join(folder, 'file/script.md'), 'text')).rejects.toThrow(/file, not a folder/);
    expect(fs.readdirSync(folder)).toEqual(['file']);
  });
});

describe('a run that is killed', () => {
  it('leaves every old file whole, at whatever moment', async () => {
    const script = path.join(packageRoot, 'samples/slack-water/slack-water.md');
    const bin = path.join(packageRoot, 'bin/prepwright.js');
    const run = (limit: number) =>
      new Promise<void>((done) => {
        const child = spawn(process.execPath, [bin, 'compile', script, '--only', 'json,scenes', '--out', folder]);
        const timer = setTimeout(() => child.kill('SIGKILL'), limit);
        child.on('exit', () => {
          clearTimeout(timer);
          done();
        });
      });
    await run(30_000);
    const whole = read('breakdown.json');
    for (const limit of [50, 150, 250, 350, 450]) {
      await run(limit);
      expect(read('breakdown.json')).toBe(whole);
    }
  });
});
