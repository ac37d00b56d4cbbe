import type { Host } from '../host/types.js';

/** What a command needs beside its own options. */
export interface Session {
  readonly host: Host;
  /** Sets what the process will answer. */
  readonly exit: (code: number) => void;
}
