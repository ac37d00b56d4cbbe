import { describe, expect, it } from 'vitest';
import { endsSentence } from '../../src/page/sentence-ends.js';

describe('sentence ends', () => {
  it.each([
    ['Listen.', 'She'],
    ['Listen!', 'She'],
    ['what?”', '“Nothing.”'],
    ['gone...', 'She'],
    ['gone…', 'She'],
    ['(Still.)', 'She'],
    ['No.', 'Never.'],
    ['I.', 'Nobody'],
    ['etc.', null],
    ['終わり。', '次'],
  ])('%s %s', (word, next) => {
    expect(endsSentence(word, next)).toBe(true);
  });
  it.each([
    ['Dr.', 'Bell'],
    ['MRS.', 'BELL'],
    ['J.', 'Bell'],
    ['No.', '7'],
    ['a.m.', 'The'],
    ['gone...', 'and'],
    ['“What?”', 'she'],
    ['Listen,', 'She'],
    ['Listen', null],
    ['3.5', 'metres'],
  ])('not %s %s', (word, next) => {
    expect(endsSentence(word, next)).toBe(false);
  });
});
