/** What the process answers, after the habits of sysexits where one exists (70 = software error). */
export const exitCodes = {
  fine: 0,
  /** The script has errors: nothing was written. */
  scriptErrors: 1,
  /** The command was typed wrongly. */
  usage: 2,
  /** A file cannot be read or written. */
  files: 3,
  /** A bug of ours. */
  bug: 70,
} as const;
