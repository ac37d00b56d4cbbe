import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readScript } from '../../src/script/read-script.js';
import { blocks, front, headings, marks, notes, type Projection, project } from './project.js';

/** Each rule of the script conventions has a folder of cases here; `UPDATE_CASES=1` writes what is expected anew. */
const root = new URL('./rules/', import.meta.url);

const views: Record<string, Projection> = {
  'L1-front-matter': front,
  'L2-scenes': headings,
  'L3-headings': headings,
  'L4-numbers': (script) => ({ headings: headings(script), blocks: blocks(script) }),
  'L5-parts': blocks,
  'L6-order-of-tests': blocks,
  'L7-speech': blocks,
  'L8-line-breaks': blocks,
  'L9-list-items': blocks,
  'L10-stray-lines': blocks,
  'L11-page-breaks': blocks,
  'L12-private-text': blocks,
  'L13-emphasis': blocks,
  'E1-no-mark': marks,
  'E2-brackets': marks,
  'E3-category-on-the-spot': marks,
  'E4-full-reference': marks,
  'E5-definitions': marks,
  'E6-folding': (script) => ({ marks: marks(script), notes: notes(script) }),
  'E7-identity': marks,
  'notes-keys': notes,
  'notes-categories': notes,
  'notes-elements': notes,
  'notes-people': notes,
  'notes-overrides': notes,
  'notes-refusals-and-answers': notes,
  careless: blocks,
};

describe('the rules of the script conventions', () => {
  it('has cases for every rule and no other folder', () => {
    expect(readdirSync(root).sort()).toEqual(Object.keys(views).sort());
  });

  for (const [rule, view] of Object.entries(views)) {
    describe(rule, () => {
      for (const name of readdirSync(new URL(`${rule}/`, root))) {
        it(name, () => {
          const folder = new URL(`${rule}/${name}/`, root);
          const read = project(readScript(readFileSync(new URL('input.md', folder)), 'input.md'), view);
          const expected = new URL('expected.json', folder);
          if (process.env.UPDATE_CASES === '1') writeFileSync(expected, `${JSON.stringify(read, null, 2)}\n`);
          expect(read).toEqual(JSON.parse(readFileSync(expected, 'utf8')));
        });
      }
    });
  }
});
