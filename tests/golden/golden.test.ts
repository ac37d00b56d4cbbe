import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { compileText, jsonOf } from '../support/compile-text.js';

/**
 * Each folder holds a script and its breakdown, read through by eye, without the weights and reasons that other tests
 * hold; `UPDATE_CASES=1` writes the breakdowns anew.
 */
const root = new URL('./', import.meta.url);
const names = readdirSync(root, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [one.name] : []));

const left = new Set(['confidence', 'rules', 'settle', 'because', 'precaution', 'reading', 'qualified']);

async function breakDown(name: string): Promise<string> {
  const json = jsonOf(await compileText(readFileSync(new URL(`${name}/input.md`, root))));
  return `${JSON.stringify(JSON.parse(json ?? 'null'), (key, value) => (left.has(key) ? undefined : value), 2)}\n`;
}

describe('the breakdown of', () => {
  it.each(names)('%s', async (name) => {
    const expected = new URL(`${name}/breakdown.json`, root);
    const json = await breakDown(name);
    if (process.env.UPDATE_CASES === '1') writeFileSync(expected, json);
    expect(json).toBe(readFileSync(expected, 'utf8'));
  });
});
