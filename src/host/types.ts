import type { FontFace, OutputFile } from '../render/types.js';

/** Everything outside the program: files, streams, environment, clock. Tests hand in their own. */
export interface Host {
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Width of the terminal in columns. */
  readonly columns: number;
  /** Whether standard output and standard error may be coloured. */
  readonly colour: { readonly out: boolean; readonly error: boolean };
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
  /** One line typed by the user, without its line end; null at the end of input. */
  readonly ask: (prompt: string) => Promise<string | null>;
  /** Reads a file; `-` is standard input. Rejects with FileTrouble. */
  readonly readFile: (path: string) => Promise<Uint8Array>;
  /** Whether there is a file of that path. */
  readonly exists: (path: string) => Promise<boolean>;
  /** Writes one file by way of a neighbour and a rename: the old text or the new, never half. Rejects with FileTrouble. */
  readonly writeFile: (path: string, content: string) => Promise<void>;
  /** Reads a data file that ships with the package; the path is below the package's root. */
  readonly readData: (path: string) => Uint8Array;
  readonly readFont: (face: FontFace) => Uint8Array;
  /** Writes all files of a run into a folder, or none of them. Rejects with FileTrouble. */
  readonly writeAll: (folder: string, files: readonly OutputFile[]) => Promise<void>;
  /** Today as an ISO date. */
  readonly today: () => string;
}

/** A file that cannot be read or written, in words for the user. */
export class FileTrouble extends Error {
  readonly path: string;
  constructor(path: string, reason: string, cause?: unknown) {
    super(reason, { cause });
    this.name = 'FileTrouble';
    this.path = path;
  }
}
