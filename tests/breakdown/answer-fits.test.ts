import { describe, expect, it } from 'vitest';
import { answerFits } from '../../src/breakdown/answer-fits.js';

describe('an answer', () => {
  it.each([
    ['words', 'the grey suit', true],
    ['words', 'yes', false],
    ['words', '> Nora: grey suit wet', false],
    ['words, yes or no', '> Nora: grey suit wet', false],
    ['number', 'about thirty', true],
    ['number', 'many', false],
    ['yes or no', 'no, never', true],
  ] as const)('where %s is wanted: %s', (wants, answer, fits) => {
    expect(answerFits(wants, [], answer)).toBe(fits);
  });
});
