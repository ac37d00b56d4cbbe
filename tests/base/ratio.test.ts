import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ceiling,
  formatPercent,
  formatRatio,
  multiplyRounded,
  parseDecimal,
  parsePercent,
  ratio,
} from '../../src/base/ratio.js';

describe('exact fractions', () => {
  it('read decimals without loss', () => {
    expect(parseDecimal('0.1')).toEqual({ over: 1n, under: 10n });
    expect(parseDecimal('12,50')).toEqual({ over: 1250n, under: 100n });
    expect(parseDecimal('-3')).toEqual({ over: -3n, under: 1n });
    for (const text of ['', 'x', '1.2.3', '1e5', '--1']) expect(parseDecimal(text)).toBeNull();
  });

  it('round halves away from zero', () => {
    // 5 × 0.5 = 2.5: 3; −5 × 0.5: −3; 749.4: 749.
    expect(multiplyRounded(5, { over: 1n, under: 2n })).toBe(3);
    expect(multiplyRounded(-5, { over: 1n, under: 2n })).toBe(-3);
    expect(multiplyRounded(3747, { over: 20n, under: 100n })).toBe(749);
  });

  it('multiply as integers do', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e9, max: 1e9 }),
        fc.integer({ min: 0, max: 1e6 }),
        fc.integer({ min: 1, max: 1e6 }),
        (whole, over, under) => {
          const rounded = multiplyRounded(whole, { over: BigInt(over), under: BigInt(under) });
          expect(Math.abs(rounded - (whole * over) / under)).toBeLessThanOrEqual(0.5 + 1e-3);
        },
      ),
    );
  });

  it('round up only when there is a rest', () => {
    expect([ceiling({ over: 108n, under: 10n }), ceiling(ratio(11)), ceiling({ over: -1n, under: 2n })]).toEqual([
      11, 11, 0,
    ]);
  });

  it('print', () => {
    expect([
      formatRatio({ over: 54n, under: 5n }),
      formatPercent(parsePercent('12.5%') as never),
      formatPercent(parsePercent('20') as never),
    ]).toEqual(['10.8', '12.5 %', '20 %']);
  });
});
