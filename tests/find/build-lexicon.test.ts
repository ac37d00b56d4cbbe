import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { buildLexicon, readLists } from './lexicon/build-lexicon.js';

const shipped = (name: string) => readFileSync(new URL(`../../src/find/data/${name}`, import.meta.url), 'utf8');

describe('the derived lexicon', () => {
  it('is what the script makes of WordNet and our lists', () => {
    expect(shipped('lexicon.bin') === buildLexicon()).toBe(true);
  });

  it('travels with the licence of WordNet', () => {
    expect(shipped('lexicon-licence.txt')).toContain('WordNet 3.1 Copyright 2011 by Princeton University');
    expect(shipped('lexicon-licence.txt')).toContain('appear on ALL copies');
  });

  it('is sorted, with one line a word', () => {
    const words = shipped('lexicon.bin')
      .trimEnd()
      .split('\n')
      .map((line) => line.split('\t')[0] as string);
    expect(words.findIndex((word, i) => i > 0 && word <= (words[i - 1] as string))).toBe(-1);
  });

  it('holds every word of our lists', () => {
    const held = new Set(
      shipped('lexicon.bin')
        .split('\n')
        .map((line) => line.split('\t')[0]),
    );
    const missing: string[] = [];
    for (const list of readLists().values()) {
      for (const line of list.split('\n')) {
        for (const word of (line.split('#')[0] as string).trim().split(/\s+/)) {
          if (word !== '' && !held.has(word.replaceAll('_', ' '))) missing.push(word);
        }
      }
    }
    expect(missing).toEqual([]);
  });
});
