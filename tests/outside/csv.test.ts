import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Cell, formatCsv, makeInert } from '../../src/render/csv/format-csv.js';

// The parser csv-parse reads back what we write (RFC 4180).
const read = (text: string): string[][] => parse(text, { bom: true, relax_column_count: false });
const asRead = (cell: Cell) => (cell === null ? '' : typeof cell === 'number' ? String(cell) : makeInert(cell));

const cell = fc.oneof(
  fc.string({ unit: 'grapheme' }),
  fc.string({ unit: fc.constantFrom('"', ',', ';', '\n', '\r', '\t', '=', '-', '@', ' ', 'a', 'é', '\uFEFF') }),
  fc.integer(),
  fc.constant(null),
);
const table = fc
  .integer({ min: 2, max: 6 })
  .chain((width) => fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 8 }));

describe('CSV read back by another parser', () => {
  it('gives the same cells, whatever they hold', () => {
    fc.assert(
      fc.property(table, (rows) => {
        expect(read(formatCsv(rows))).toEqual(rows.map((row) => row.map(asRead)));
      }),
      { numRuns: 500 },
    );
  });

  it('holds no cell that a spreadsheet would run', () => {
    fc.assert(
      fc.property(table, (rows) => {
        const texts = rows.map((row) => row.map((one) => (typeof one === 'number' ? 'number' : one)));
        for (const one of read(formatCsv(texts)).flat()) expect(one).not.toMatch(/^\s*[=+\-@＝＋－＠]|^[\t\r\n]/);
      }),
      { numRuns: 500 },
    );
  });
});
