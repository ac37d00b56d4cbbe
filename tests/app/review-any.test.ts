import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerFits } from '../../src/breakdown/answer-fits.js';
import { scriptLike, tidyScript } from '../support/any-script.js';
import { isOnlyAddedTo } from '../support/only-added.js';
import { questionsOf, reviewText } from './review-text.js';

const lineEnd = fc.constantFrom('\n', '\r\n', '\r');
const mark = fc.constantFrom('', '\ufeff');
const typed = fc.constantFrom('n', 'y', '12', 'two of them, please', '> [x] "no": yes; (no)');

describe('any script under review', () => {
  it('keeps every character, and asks nothing twice', async () => {
    let asked = 0;
    const property = fc.asyncProperty(
      fc.oneof(tidyScript, scriptLike),
      typed,
      lineEnd,
      mark,
      async (lines, answer, end, bom) => {
        const text =
          bom +
          lines
            .replace(/^\ufeff+/, '')
            .replace(/\r\n?/g, '\n')
            .replaceAll('\n', end);
        const open = await questionsOf(text);
        const { exit, text: after } = await reviewText(text, () => answer);
        if (exit === 1) return;
        asked += open.size;
        expect(exit).toBe(0);
        expect(isOnlyAddedTo(text, after)).toBe(true);
        expect(after.match(/\r\n|\r|\n/g)?.filter((one) => one !== end) ?? []).toEqual([]);
        // What would not settle a question is not written, and the question stays.
        const settled = [...open.values()].filter(({ wants, choices }) => answerFits(wants, choices, answer));
        const still = await questionsOf(after);
        expect(settled.filter(({ id }) => still.has(id)).map(({ id }) => id)).toEqual([]);
      },
    );
    await fc.assert(property, { numRuns: 60 });
    expect(asked).toBeGreaterThan(30);
  });
});
