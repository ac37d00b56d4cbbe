/** A script of as many scenes as asked, made of a shorter one: scenes are renumbered, places and props vary. */
export function makeLongScript(sample: string, scenes: number): string {
  const body = sample.replace(/^---[\s\S]*?\n---\n/, '').replace(/^\[[^\]]+\]: .*$/gm, '');
  const parts = body
    .split(/^(?=## )/m)
    .filter((part) => part.startsWith('## '))
    .map((part) => part.replace(/^> day: .*$/gm, ''));
  const front = /^---[\s\S]*?\n---\n/.exec(sample)?.[0] ?? '';
  const made = Array.from({ length: scenes }, (_, index) => {
    const part = parts[index % parts.length] ?? '';
    const round = Math.floor(index / parts.length);
    return part.replace(
      /^## \d+\. (\S+) ([^-\n]+)/,
      (_all, setting, place) =>
        `## ${index + 1}. ${setting} ${String(place).trim()}${round > 0 ? ` ${round + 1}` : ''} `,
    );
  });
  return `${front}\n${made.join('\n')}`;
}
