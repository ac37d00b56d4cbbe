import { expect, it } from 'vitest';
import { compileText } from '../../support/compile-text.js';
import { pdfLines } from '../../support/pdf-lines.js';

const script = `---
title: The Lamp Room
draft: C
---

## 1. EXT. PIER - DAY

> props: 6 eggs (Ada)
> graphics: notice

ADA carries the eggs to the river, past the notice.

## 2. EXT. LOCK - DAY

ADA swims across the river.

## 3. EXT. PIER - DAY

ADA swims back across the river.
`;

const book = `days:
  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1, 2, 3] }
helpers:
  kim: { name: Kim, does: [props] }
elements:
  eggs: { get: buy, note: Ada must not touch them raw }
  notice: { get: make, words: No swimming }
scenes:
  ext-lock-day: { in charge: kim }
`;

const outputs = ['sheets', 'props', 'indexes'] as const;
const compiled = await compileText(script, [...outputs], { text: book, file: 'book.yaml' });
const textOf = async (name: string) => {
  const lines = await pdfLines(compiled.files.find((file) => file.name === name)?.content);
  return lines.join(' ');
};

it.each(outputs)('prints the note of the book under the thing in %s', async (name) => {
  expect(await textOf(`${name}.pdf`)).toContain('Note: Ada must not touch them raw');
});

it('names who answers for a danger, with the scenes, and leaves a blank for the others', async () => {
  expect(await textOf('props.pdf')).toMatch(/Place sheet: Lock .*Water 2 Kim/);
  expect(await textOf('sheets.pdf')).toMatch(/In\scharge:\sKim \(sc 2\), sc 1, 3:/);
});

it('prints the exact words of a paper that the book has', async () => {
  expect(await textOf('props.pdf')).toContain('“No swimming”');
});
