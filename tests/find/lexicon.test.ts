import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openLexicon } from '../../src/find/lexicon.js';

const bytes = readFileSync(new URL('../../src/find/data/lexicon.bin', import.meta.url));

describe('the lexicon', () => {
  it('finds words at the start, in the middle and at the end of its text', () => {
    const lines = new TextDecoder().decode(bytes).trimEnd().split('\n');
    const lexicon = openLexicon(bytes);
    const step = Math.floor(lines.length / 200);
    for (let i = 0; i < lines.length; i += step) {
      const word = (lines[i] as string).split('\t')[0] as string;
      expect(lexicon.find(word), word).not.toBeNull();
    }
    expect(lexicon.find((lines.at(-1) as string).split('\t')[0] as string)).not.toBeNull();
  });

  it('knows nothing of words it does not hold', () => {
    const lexicon = openLexicon(bytes);
    for (const word of ['', ' ', 'zzzzzz', 'aaaaaa', 'lanter', 'lanternn', '\u{1f600}', 'the\tthe']) {
      expect(lexicon.find(word), JSON.stringify(word)).toBeNull();
    }
  });

  it('reads what a line says', () => {
    const lexicon = openLexicon(new TextEncoder().encode('lamp\t+pd =d9 v3 .weak .fixed\nrun\tn v7 a2\n'));
    expect(lexicon.find('lamp')).toEqual({
      core: 'pd',
      wordnet: 'd',
      share: 9,
      verb: 3,
      adjective: -1,
      noun: true,
      classes: ['weak', 'fixed'],
    });
    expect(lexicon.find('run')).toMatchObject({ core: '', noun: true, verb: 7, adjective: 2, classes: [] });
  });

  it('opens in less than ten milliseconds', () => {
    const time = () => {
      const start = performance.now();
      openLexicon(bytes).find('lantern');
      return performance.now() - start;
    };
    // The least of five, for a busy machine may take one of them away.
    expect(Math.min(...Array.from({ length: 5 }, time))).toBeLessThan(10);
  });
});
