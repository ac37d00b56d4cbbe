import { describe, expect, it } from 'vitest';
import { compileText } from '../../support/compile-text.js';
import { pdfLines } from '../../support/pdf-lines.js';

const script = `---
title: The Pass
draft: A
date: 2027-01-15
---

## 1. EXT. PASS - DAY

> extras: 3 hikers

Three hikers rest by the cairn. A HIKER waves.

HIKER
Over here!
`;
const book = 'days:\n  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1] }\n';

describe('people called without a part', () => {
  it('do not count again who is called by name', async () => {
    // Three hikers, one of them HIKER with a row of his own: two more are called.
    const { files } = await compileText(script, ['callsheets'], { text: book, file: 'book.yaml' });
    const text = (await pdfLines(files.find((one) => one.name === 'callsheets.pdf')?.content)).join('\n');
    expect(text).toMatch(/\d\d:\d\d HIKER\b/);
    expect(text).toMatch(/2 × hikers beside HIKER/);
    expect(text).not.toContain('3 × hikers');
  });
});
