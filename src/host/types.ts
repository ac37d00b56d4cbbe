import type { FontFace, OutputFile } from '../render/types.js';

/** Everything outside the program: files, streams, environment, clock. Tests hand in their own. */
export interface Host {
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Terminal width in columns, and whether standard output and error may be coloured. */
  readonly columns: number;
  readonly colour: { readonly out: boolean; readonly error: boolean };
  out(text: string): void;
  error(text: string): void;
  /** Reads a file; `-` is standard input. Rejects with an Error that has a `code` (ENOENT …). */
  readFile(path: string): Promise<Uint8Array>;
  /** Reads a data file that ships with the package (path below the package root). */
  readData(path: string): Uint8Array;
  readFont(face: FontFace): Uint8Array;
  /** Writes all files of a run into a folder, or none; removes `stale` ones in the same step. */
  writeAll(folder: string, files: readonly OutputFile[]): Promise<void>;
  /** Today, as an ISO date. */
  today(): string;
}
