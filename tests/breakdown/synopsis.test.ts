import { describe, expect, it } from 'vitest';
import { shorten, splitSentences } from '../../src/breakdown/synopsis.js';
import { breakDown } from '../support/break-down.js';

function synopsisOf(body: string): string | undefined {
  return breakDown(`---\ncast: { NORA: {}, JOSEF: {} }\n---\n\n## 1. INT. BAR - NIGHT\n\n${body}\n`).scenes[0]
    ?.synopsis;
}

describe('a synopsis', () => {
  it.each([
    ['> synopsis: They meet.\n\nNora waits.', 'They meet.'],
    ['Rain. The clock of the bar ticks. Nora waits.', 'Nora waits.'],
    ["Nora's coat drips. Josef waits.", 'Josef waits.'],
    ['Then NORA, 40, comes in.', 'Then NORA, 40, comes in.'],
    ['Rain. A dog barks.', 'Rain.'],
    ['NORA\nIs it raining?', 'NORA: Is it raining?'],
    ['', ''],
    ['Mr. Hale is out. Nora waits.', 'Nora waits.'],
  ])('of %j is %j', (body, expected) => {
    expect(synopsisOf(body)).toBe(expected);
  });

  it('is cut where a clause ends', () => {
    const long =
      'Nora carries the wet boxes up from the cellar one after the other, and Josef counts them into the book without a word.';
    expect(synopsisOf(long)).toBe('Nora carries the wet boxes up from the cellar one after the other.');
    expect(synopsisOf(long)?.length).toBeLessThanOrEqual(91);
  });

  it('cut after a quotation keeps its sign', () => {
    expect(
      shorten(`The men compel the passengers to leave the coaches, "hands up," when the bell of the town rings twice.`),
    ).toBe('The men compel the passengers to leave the coaches, "hands up".');
  });

  it('without a clause to cut at ends in dots at a word', () => {
    expect(shorten(`Nora ${'walks '.repeat(30)}on.`)).toMatch(/^Nora (?:walks )+…$/);
  });
});

describe('sentences', () => {
  it('do not end after titles and initials', () => {
    expect(splitSentences('Mr. Hale and J. Poe wait. "Now!" Nora runs…').map(({ text }) => text)).toEqual([
      'Mr. Hale and J. Poe wait.',
      '"Now!"',
      'Nora runs…',
    ]);
  });

  it('tell where they begin', () => {
    const text = '  Rain.  Nora waits.';
    for (const { start, text: sentence } of splitSentences(text)) expect(text.slice(start)).toMatch(sentence);
  });
});
