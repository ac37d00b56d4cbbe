/** Where the outputs go when nobody says: `NAME-breakdown` beside the script, `script-breakdown` here for standard input. */
export function outputFolder(file: string, out: string | undefined): string {
  if (out !== undefined) return out;
  return file === '-' ? 'script-breakdown' : `${withoutEnding(file)}-breakdown`;
}

/** The production book of a script: `NAME.book.yaml` beside it; none for standard input. */
export function bookFile(file: string): string | null {
  return file === '-' ? null : `${withoutEnding(file)}.book.yaml`;
}

function withoutEnding(file: string): string {
  return file.replace(/(?<=[^/\\])\.[^./\\]*$/, '');
}
