import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readScriptText } from '../../src/script/read-script.js';
import type { Block, Script } from '../../src/script/types.js';
import { scriptLike, tidyScript } from '../support/any-script.js';

type Place = { readonly start: { readonly line: number }; readonly end: { readonly line: number } };

/** The places of all that a script was read as. */
function placesOf(script: Script): Place[] {
  const blocks: readonly Block[] = [
    ...script.opening,
    ...script.scenes.flatMap(({ lead, blocks }) => [...lead, ...blocks]),
    ...script.closing,
  ];
  return [
    ...blocks.map(({ at }) => at),
    ...script.scenes.map(({ heading }) => heading.at),
    ...script.scenes.flatMap(({ notes }) => notes.map(({ at }) => at)),
    ...script.notes.map(({ at }) => at),
    ...script.definitions.map(({ at }) => at),
  ];
}

/** Lines of front matter and of private text, which are no script. */
function outside(lines: readonly string[]): Set<number> {
  const text = lines.join('\n');
  const hidden = new Set<number>();
  const hide = (start: number, end: number) => {
    const first = text.slice(0, start).split('\n').length;
    const last = text.slice(0, end).split('\n').length;
    for (let line = first; line <= last; line++) hidden.add(line);
  };
  const front = /^\s*---[ \t]*\n(?:[\s\S]*?\n)?(?:---|\.\.\.)[ \t]*(?=\n|$)/.exec(text);
  if (front) hide(0, front[0].length);
  for (const { index, 0: words } of text.matchAll(/<!--[\s\S]*?(?:-->|$)/g)) hide(index, index + words.length);
  return hidden;
}

describe('nothing that is typed is lost', () => {
  it('every line with words is read as something, or a message names it', () => {
    let seen = 0;
    const property = fc.property(fc.oneof(scriptLike, tidyScript), (text) => {
      const { script, messages } = readScriptText(text, 'any.md');
      if (!script) return;
      const lines = script.source.split('\n');
      const known = outside(lines);
      const places = [...placesOf(script), ...messages.flatMap(({ place }) => (place ? [place] : []))];
      for (const { start, end } of places) for (let line = start.line; line <= end.line; line++) known.add(line);
      const lost = lines.flatMap((line, index) => (/[\p{L}\p{N}]/u.test(line) && !known.has(index + 1) ? [line] : []));
      seen += lines.length;
      expect(lost).toEqual([]);
    });
    fc.assert(property, { numRuns: 400 });
    expect(seen).toBeGreaterThan(2000);
  });

  it('every word of the action and the speeches stands in the printed script', () => {
    const property = fc.property(tidyScript, (text) => {
      const { script } = readScriptText(text, 'any.md');
      if (!script) return;
      const printed = script.scenes
        .flatMap(({ blocks }) => blocks)
        .flatMap((block) => {
          if (block.kind === 'action') return block.lines.map((line) => line.text);
          if (block.kind === 'speech') return [block.cue.text, ...block.lines.map(({ line }) => line.text)];
          return block.kind === 'transition' || block.kind === 'part' ? [block.line.text] : [];
        })
        .join('\n');
      const hidden = outside(script.source.split('\n'));
      const typed = script.source
        .split('\n')
        .filter((line, index) => !hidden.has(index + 1) && !/^(?:[>#[]|<|- INT|\d+\. )/.test(line))
        .flatMap(
          (line) => line.replace(/\[[^\]]*\]\([^)]*\)|\[[^\]]*\]\[[^\]]*\]|&\w+;/g, ' ').match(/\p{L}{3,}/gu) ?? [],
        );
      for (const word of typed) expect(printed.toLowerCase()).toContain(word.toLowerCase());
    });
    fc.assert(property, { numRuns: 150 });
  });
});
