import { describe, expect, it } from 'vitest';
import { compileText } from '../../support/compile-text.js';
import { pdfLines } from '../../support/pdf-lines.js';

const script = `---
title: Two Yards
draft: A
date: 2027-01-15
---

## 1. INT. SHED - DAY

> props: lamp
> Ada: wears red scarf

ADA lifts the lamp.

## 2. EXT. YARD - DAY

ADA waits.

## 3. EXT. LANE - DAY

ADA walks.
`;
const book = `days:
  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1, 2, 3] }
locations:
  yard: { name: Coal yard, address: 1 Quay }
  lane: { name: Back lane, address: 2 Quay }
places:
  yard: { at: yard }
  lane: { at: lane }
helpers:
  kim: { name: Kim, does: [props] }
  lou: { name: Lou, does: [transport] }
elements:
  lamp: { get: buy, who: kim }
  red-scarf: { get: buy, who: lou }
`;
const compiled = compileText(script, ['plan', 'props'], { text: book, file: 'book.yaml' });
const linesOf = async (name: string) => {
  const { files, messages } = await compiled;
  const file = files.find((one) => one.name === name);
  if (!file) throw new Error(messages.map((one) => one.reason).join('; '));
  return pdfLines(file.content);
};

describe('the plan', () => {
  it('has a list for whoever carries no pack with it, and none that is a calendar again', async () => {
    const text = (await linesOf('plan.pdf')).join('\n');
    expect(text).toContain('To do: Lou');
    expect(text).not.toContain('To do: Kim');
    expect((await linesOf('props.pdf')).join('\n')).toMatch(/Your calendar[\s\S]*lamp/);
  });
});

describe('place sheets without dressing', () => {
  it('share a page, and say in a line that nothing is told', async () => {
    const lines = await linesOf('props.pdf');
    const from = lines.findIndex((line) => line.includes('Place sheet: Coal yard'));
    const to = lines.findIndex((line) => line.includes('Place sheet: Back lane'));
    expect(Math.min(from, to)).toBeGreaterThan(0);
    const between = lines.slice(Math.min(from, to), Math.max(from, to));
    expect(between.join('\n')).toContain('What stands here: nothing told.');
    expect(between.some((line) => /page \d+ of \d+/.test(line))).toBe(false);
  });
});
