import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { compileText } from '../../support/compile-text.js';

const script = `---
title: The Shed
draft: A
date: 2027-01-15
---

## 1. INT. SHED - DAY

> props: vase, rope, string

A vase stands by a rope and a string.
`;
const book = `days:
  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1] }
elements:
  vase: { get: buy, copies: 9 }
  rope: { get: buy, copies: 3, piece: 1 m, pack: 10 m, pool: cord, received: 2027-01-20 }
  string: { get: buy, copies: 2, piece: 1 m, pack: 10 m, pool: cord }
`;

describe('the purchase list', () => {
  const rows = async () => {
    const { files } = await compileText(script, ['purchases'], { text: book, file: 'book.yaml' });
    const csv = String(files.find((one) => one.name === 'purchases.csv')?.content).replace(/^\uFEFF/, '');
    return parse(csv) as string[][];
  };
  const rowOf = async (name: string) => (await rows()).find((row) => row.includes(name)) ?? [];

  it('gives the reason of the number that counts', async () => {
    // The book says 9; one and a spare, for a vase breaks, would be 2.
    const row = await rowOf('vase');
    expect(row.at(-1)).toMatch(/^the book says 9; reckoned 2: 1 spare: such a thing breaks/);
    expect((await rowOf('rope')).at(-1)).toMatch(/^the book says 3; reckoned 1: as the strict minimum/);
  });

  it('gets nothing more of a shared roll that is here', async () => {
    const [head] = await rows();
    const at = (head ?? []).indexOf('to get');
    expect(at).toBeGreaterThan(0);
    expect((await rowOf('string'))[at]).toBe('0');
    expect((await rowOf('vase'))[at]).toBe('9');
  });
});
