import { describe, expect, it } from 'vitest';
import { compileText } from '../../support/compile-text.js';
import { pdfLines } from '../../support/pdf-lines.js';

const script = `1. INT. HUT - DAY

NORA smokes a [cigarette](prop) and tears the [letter](prop) in two. She puts an apple on the table.

2. INT. HUT - NIGHT

NORA eats an apple under a [lamp](prop).

> letter: torn
`;
const book = `days:
  - { date: 2027-05-01, call: 8:00, scenes: [1] }
  - { date: 2027-05-02, call: 8:00, scenes: [2] }
elements:
  lamp: { get: own, have: 1, batteries: 2 AA }
`;

describe('what a call sheet says gets spoilt', async () => {
  const { files } = await compileText(script, ['callsheets'], { file: 'book.yaml', text: book });
  const lines = (await pdfLines(files.find(({ name }) => name === 'callsheets.pdf')?.content)).filter((line) =>
    line.includes('used up in each take'),
  );

  it('names what each take uses up on its own day, and no batteries', () => {
    expect(lines).toEqual([expect.stringContaining('cigarette (sc 1)'), expect.stringContaining('apple (sc 2)')]);
    expect(lines.join()).not.toMatch(/apple \(sc 1|batteries/);
  });
});
