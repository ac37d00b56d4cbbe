import { describe, expect, it } from 'vitest';
import { scoreSentences, shippedLexicon } from '../gold/run-score.js';
import { figures, newTally } from '../gold/score.js';
import { scoreScript } from '../gold/score-scripts.js';

const lexicon = shippedLexicon();

// The sealed sets were not tuned on; their errors are not looked at.
describe('the finder on gold that it was not tuned on', () => {
  const tally = newTally();
  for (const n of [6, 7]) scoreSentences(`sentences-${n}.jsonl`, lexicon, tally);
  for (const name of ['the-understudy', 'service-wash', 'the-relief-boat', 'second-test', 'plate-forty'])
    scoreScript(name, lexicon, tally);
  const { f1, strict, lenient, who } = figures(tally);

  it('finds what a reader lists, and little else', () => expect(f1).toBeGreaterThanOrEqual(0.9));
  it('gives the category a reader gives', () => expect(strict).toBeGreaterThanOrEqual(0.84));
  it('gives a category that a reasonable reader could give', () => expect(lenient).toBeGreaterThanOrEqual(0.94));
  it('tells who handles or wears it', () => expect(who).toBeGreaterThanOrEqual(0.85));
});

describe('the finder on gold that it was tuned on', () => {
  it('stays above what it reached', () => {
    const tally = newTally();
    for (const n of [1, 2, 3, 4, 5]) scoreSentences(`sentences-${n}.jsonl`, lexicon, tally);
    expect(figures(tally).f1).toBeGreaterThanOrEqual(0.88);
  });

  it('stays above what it reached on whole scripts', () => {
    const tally = newTally();
    for (const name of ['glaze', 'last-waltz-at-the-pier', 'lost-property', 'the-long-stop', 'the-weighbridge']) {
      scoreScript(name, lexicon, tally);
    }
    expect(figures(tally).f1).toBeGreaterThanOrEqual(0.9);
  });
});
