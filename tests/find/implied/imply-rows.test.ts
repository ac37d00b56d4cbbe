import { describe, expect, it } from 'vitest';
import { imply } from '../../../src/find/imply.js';
import { implications } from '../../../src/trade/implications/implications.js';
import { readOne } from './read-one.js';
import { rowCases } from './rows.js';

/** The rows of the table that a text raises. */
function rowsOf(body: string, heading?: string): Set<number> {
  const { script, sentences } = readOne(body, heading);
  const { elements, tasks, questions } = imply(sentences, script, []);
  const rules = [...elements.flatMap(({ rules }) => rules), ...tasks.map(({ rule }) => rule)];
  const rows = rules.map((rule) => Number(/^implication (\d+):/.exec(rule)?.[1]));
  const asked = implications
    .filter((one) => one.questions.some(({ id }) => questions.some((question) => question.id.startsWith(id))))
    .map(({ row }) => row);
  return new Set([...rows, ...asked]);
}

describe('the table of implications', () => {
  it('has every row from 1 to 82', () => {
    const rows = new Set(implications.map(({ row }) => row));
    for (let row = 1; row <= 82; row++) expect(rows, `row ${row}`).toContain(row);
  });

  it('has a case for every row', () => {
    const cased = new Set(rowCases.map(({ row }) => row));
    expect([...new Set(implications.map(({ row }) => row))].filter((row) => !cased.has(row))).toEqual([]);
  });

  it('names each rule once', () => {
    const ids = implications.map(({ id }) => id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  });

  it('gives every rule cues, something to say, and a source', () => {
    for (const { id, cues, elements, tasks, questions, source } of implications) {
      expect(cues.length, id).toBeGreaterThan(0);
      expect(elements.length + tasks.length + questions.length, id).toBeGreaterThan(0);
      expect(source, id).not.toBe('');
    }
  });

  it('names things so that a note can take the name as it stands', () => {
    // A comma would part it in a note, a bracket would read as a description (conventions, Notes).
    for (const { elements } of implications) for (const { name } of elements) expect(name).not.toMatch(/[,;:()[\]]/);
  });

  it('says work in a line that fits a sheet', () => {
    for (const { tasks } of implications)
      for (const { text } of tasks) expect(text.length, text).toBeLessThanOrEqual(85);
  });

  for (const { row, yes, no, heading, noHeading } of rowCases) {
    it(`row ${row}: "${yes}" raises it`, () => {
      expect([...rowsOf(yes, heading)]).toContain(row);
    });
    it(`row ${row}: "${no}" does not`, () => {
      expect([...rowsOf(no, noHeading)]).not.toContain(row);
    });
  }
});
