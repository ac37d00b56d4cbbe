import { FileTrouble } from './types.js';

const reasons: Record<string, string> = {
  ENOENT: 'there is no such file or folder',
  EISDIR: 'it is a folder, not a file',
  ENOTDIR: 'a part of the path is a file, not a folder',
  EACCES: 'access is not allowed',
  EPERM: 'the system does not allow it',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk can only be read',
  EBUSY: 'another program holds it open',
};

/** Turns a system error into words; an error that is none is passed on as our own bug. */
export function asFileTrouble(path: string, error: unknown): Error {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (error instanceof Error && code === '') return error;
  return new FileTrouble(path, reasons[code] ?? `the system answers ${code}`, error);
}
