import fs from 'node:fs';
import path from 'node:path';
import type { OutputFile } from '../render/types.js';
import { asFileTrouble } from './file-trouble.js';

const stagingPrefix = '.prepwright-writing-';

/**
 * Writes all files into a folder, or none: they are first written whole beside their places, then moved in one go; if a
 * move fails, those already made are taken back. An interruption before the moves leaves only a hidden folder, which the
 * next run removes.
 */
export async function writeAllFiles(folder: string, files: readonly OutputFile[]): Promise<void> {
  const isNew = !fs.existsSync(folder);
  let staging: string | null = null;
  try {
    makeFolder(path.resolve(folder));
    removeLeftovers(folder);
    staging = fs.mkdtempSync(path.join(folder, stagingPrefix));
    for (const file of files) writeDurably(path.join(staging, file.name), file.content);
    moveTogether(
      staging,
      folder,
      files.map((file) => file.name),
    );
  } catch (error) {
    if (staging) fs.rmSync(staging, { recursive: true, force: true });
    if (isNew) removeIfEmpty(folder);
    throw asFileTrouble(folder, error);
  }
  fs.rmSync(staging, { recursive: true, force: true });
}

/** Makes a folder and those above it, one by one: the recursive call of Node never ends where the system refuses oddly (/proc). */
function makeFolder(folder: string): void {
  if (fs.existsSync(folder)) return;
  makeFolder(path.dirname(folder));
  fs.mkdirSync(folder);
}

/** Writes one file whole: a neighbour first, then a rename. A link stays a link, and a file keeps its permissions. */
export async function writeOneFile(file: string, content: string): Promise<void> {
  const isThere = fs.existsSync(file);
  const target = isThere ? fs.realpathSync(file) : file;
  const neighbour = `${target}.prepwright-new`;
  try {
    writeDurably(neighbour, content);
    if (isThere) fs.chmodSync(neighbour, fs.statSync(target).mode);
    fs.renameSync(neighbour, target);
  } catch (error) {
    if (fs.existsSync(neighbour)) fs.rmSync(neighbour);
    throw asFileTrouble(file, error);
  }
}

function writeDurably(file: string, content: string | Uint8Array): void {
  const handle = fs.openSync(file, 'w');
  try {
    fs.writeFileSync(handle, content);
    fs.fsyncSync(handle);
  } finally {
    fs.closeSync(handle);
  }
}

/**
 * Renames every staged file over its place; on failure puts the old ones back and throws. Signals wait until it is done,
 * and a copy of each old file stays beside it meanwhile, so that every name holds a whole file at any moment.
 */
function moveTogether(staging: string, folder: string, names: readonly string[]): void {
  const wait = () => {};
  process.on('SIGINT', wait).on('SIGTERM', wait);
  const moved: { target: string; old: string | null }[] = [];
  try {
    for (const [index, name] of names.entries()) {
      const target = path.join(folder, name);
      const old = fs.existsSync(target) ? path.join(staging, `old-${index}`) : null;
      if (old) fs.copyFileSync(target, old);
      fs.renameSync(path.join(staging, name), target);
      moved.push({ target, old });
    }
  } catch (error) {
    for (const { target, old } of moved.reverse()) takeBack(target, old);
    throw error;
  } finally {
    process.off('SIGINT', wait).off('SIGTERM', wait);
  }
}

function takeBack(target: string, old: string | null): void {
  if (old) fs.renameSync(old, target);
  else fs.rmSync(target, { force: true });
}

function removeLeftovers(folder: string): void {
  for (const name of fs.readdirSync(folder)) {
    if (name.startsWith(stagingPrefix)) fs.rmSync(path.join(folder, name), { recursive: true, force: true });
  }
}

function removeIfEmpty(folder: string): void {
  if (fs.existsSync(folder) && fs.readdirSync(folder).length === 0) fs.rmdirSync(folder);
}
