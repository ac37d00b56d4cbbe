/** Text without the signs that do not print: brackets, emphasis, escapes, private text, the sign of a note. */
function plain(text: string): string {
  return text
    .replace(/<!--[\s\S]*?-->/g, '')
    .replace(/\]\([^)\n]*\)/g, ']')
    .replace(/\]\[[^\]\n]*\]/g, ']')
    .replaceAll('&amp;', '&')
    .replace(/[[\]*_\\>]/g, '')
    .replace(/\s+/g, ' ');
}

/** True when the words stand in a source text and begin on that line, counted from 1; they may run on into the next lines. */
export function standsOnLine(source: string, words: string, line: number): boolean {
  const lines = source.replace(/^\ufeff/, '').split(/\r\n|\r|\n/);
  const first = plain(`${lines[line - 1] ?? ''} `);
  const at = plain(lines.slice(line - 1, line + 12).join('\n')).indexOf(plain(words).trim());
  return words.trim() !== '' && at >= 0 && at < first.length;
}
