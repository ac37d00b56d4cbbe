/** Letters and digits alone, in capitals, as cues are quoted: brackets, emphasis and quotes print otherwise than typed. */
function plain(text: string): string {
  return text
    .replaceAll('&amp;', '&')
    .replace(/[\s\p{P}\u0085]+/gu, '')
    .toUpperCase();
}

/** As it prints, without the second brackets of marks, and as it is typed, with the names that they hold. */
const readings: readonly ((text: string) => string)[] = [
  (text) => plain(text.replace(/\]\([^)\n]*\)/g, ']').replace(/\]\[[^\]\n]*\]/g, ']')),
  (text) => plain(text.replace(/\]\[/g, '] [')),
];

/** True when the words stand in a source text and begin on that line, counted from 1; they may run on into the next lines. */
export function standsOnLine(source: string, words: string, line: number): boolean {
  const lines = source.replace(/^\ufeff/, '').split(/\r\n|\r|\n/);
  const printed = (from: number, to: number) =>
    lines
      .slice(from, to)
      .join('\n')
      .replace(/<!--[\s\S]*?-->/g, '');
  return readings.some((read) => {
    const at = read(printed(line - 1, line + 12)).indexOf(plain(words));
    return plain(words) !== '' && at >= 0 && at < read(printed(line - 1, line)).length;
  });
}
