/** Letters and digits alone, in capitals, as cues are quoted: signs, entities and spaces print otherwise than typed. */
function plain(text: string): string {
  return text
    .replace(/&#?\w+;/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, '')
    .toUpperCase();
}

/** As it prints, without the second brackets of marks, and as it is typed, with the names that they hold. */
const readings: readonly ((text: string) => string)[] = [
  (text) =>
    plain(
      text
        .replace(/!\[[^\]\n]*\]\([^)\n]*\)/g, '')
        .replace(/\]\([^)\n]*\)/g, ']')
        .replace(/\]\[[^\]\n]*\]/g, ']'),
    ),
  (text) => plain(text.replace(/!\[[^\]\n]*\]\([^)\n]*\)/g, '')),
];

/** True when the words stand in a source text and begin on that line, counted from 1; they may run on past notes. */
export function standsOnLine(source: string, words: string, line: number): boolean {
  const lines = source.replace(/^\ufeff/, '').split(/\r\n|\r|\n/);
  const first = lines[line - 1] ?? '';
  const below = lines.slice(line, line + 12);
  const goOn = [below, below.filter((one) => !/^\s*>/.test(one))];
  const printed = (all: readonly string[]) => all.join('\n').replace(/<!--[\s\S]*?-->/g, '');
  return readings.some((read) =>
    goOn.some((more) => {
      const sought = plain(words);
      const at = read(printed([first, ...more])).indexOf(sought);
      return words.trim() !== '' && at >= 0 && (sought === '' || at < read(printed([first])).length);
    }),
  );
}
