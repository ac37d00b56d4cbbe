import { describe, expect, it } from 'vitest';
import { compileText } from '../../support/compile-text.js';
import { pdfLines } from '../../support/pdf-lines.js';

const script = `---
title: The Lamp Room
draft: C
date: 2027-01-15
---

## 1. EXT. PIER - DAY

> props: letter (Ada), oar (Ada)

ADA tears the letter.

> letter: torn
`;
const bookWith = (copies: number) => `days:
  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1] }
elements:
  letter: { get: buy, copies: ${copies}, price: 1 }
`;
const papers = ['props', 'purchases', 'plan', 'callsheets'] as const;
const files = ['props.pdf', 'purchases.pdf', 'plan.pdf', 'callsheets.pdf'];

async function textsWith(copies: number) {
  const compiled = await compileText(script, papers, { text: bookWith(copies), file: 'book.yaml' });
  const texts = files.map(async (name) => {
    const lines = await pdfLines(compiled.files.find((one) => one.name === name)?.content);
    return [name, lines.join(' ')] as const;
  });
  const csv = String(compiled.files.find((one) => one.name === 'purchases.csv')?.content);
  return new Map<string, string>([...(await Promise.all(texts)), ['purchases.csv', csv]]);
}

/* 4 takes × 2 setups + 1 rehearsal tear 9 letters; 2 are decided: 7 are short. */
const tooFew = await textsWith(2);
const enough = await textsWith(9);

describe('too few copies', () => {
  it.each(files)('are said in the same words in %s', (name) => {
    expect(tooFew.get(name)).toMatch(/letter.*need 9,\s+decided 2,\s+SHORT 7/);
    expect(enough.get(name)).not.toContain('SHORT');
  });

  it('are said in the spreadsheet', () => {
    expect(tooFew.get('purchases.csv')).toContain('need 9, decided 2, SHORT 7');
    expect(enough.get('purchases.csv')).not.toContain('SHORT');
  });

  it('stand in the plan with their scenes', () => {
    expect(tooFew.get('plan.pdf')).toContain('Too few letter (sc 1): need 9, decided 2, SHORT 7');
  });
});
