/** Where the outputs go when nobody says: `NAME-breakdown` beside the script, `script-breakdown` here for standard input. */
export function outputFolder(file: string, out: string | undefined): string {
  if (out !== undefined) return out;
  if (file === '-') return 'script-breakdown';
  return `${file.replace(/\.[^./\\]*$/, '')}-breakdown`;
}
