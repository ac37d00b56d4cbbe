import { describe, expect, it } from 'vitest';
import { formatCsv, joinCell, makeInert } from '../../../src/render/csv/format-csv.js';

const bare = (rows: Parameters<typeof formatCsv>[0]) => formatCsv(rows).slice(1);

describe('formatCsv', () => {
  it('begins with a byte-order mark, for accents in spreadsheets', () => {
    expect(formatCsv([['é']])).toBe('\uFEFFé\r\n');
  });

  // RFC 4180, section 2: rules 1 (CRLF), 5 and 6 (quoting), 7 (doubled quotes).
  it('quotes commas, quotes and line breaks', () => {
    expect(bare([['a', 'b, c', 'say "so"', 'two\nlines', null, 3]])).toBe('a,"b, c","say ""so""","two\nlines",,3\r\n');
  });

  // OWASP, CSV Injection (from memory).
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\n=1', '＝1', ' =1'])('makes %j inert', (text) => {
    expect(makeInert(text)).toBe(`'${text}`);
  });

  it('leaves numbers and plain text alone', () => {
    expect(bare([[-3, 'self-made', '1 = 1', '']])).toBe('-3,self-made,1 = 1,\r\n');
  });

  it('makes every part of a joined cell inert', () => {
    expect(joinCell(['wet', '=1+1', 'torn'])).toBe("wet; '=1+1; torn");
  });
});
