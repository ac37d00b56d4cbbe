import { describe, expect, it } from 'vitest';
import { currencyDecimals, formatMoney, isCurrency, parseAmount, plainAmount } from '../../src/base/money.js';

/* ISO 4217, list one (SIX Financial Information): number of decimals, from memory for these rows. */
const iso: readonly [string, number][] = [
  ['EUR', 2],
  ['USD', 2],
  ['GBP', 2],
  ['CHF', 2],
  ['DKK', 2],
  ['PLN', 2],
  ['INR', 2],
  ['CNY', 2],
  ['BRL', 2],
  ['ZAR', 2],
  ['JPY', 0],
  ['KRW', 0],
  ['ISK', 0],
  ['CLP', 0],
  ['VND', 0],
  ['UGX', 0],
  ['PYG', 0],
  ['XOF', 0],
  ['KWD', 3],
  ['BHD', 3],
  ['JOD', 3],
  ['OMR', 3],
  ['TND', 3],
];

describe('decimals of currencies', () => {
  it.each(iso)('%s has %i', (currency, decimals) => {
    expect(currencyDecimals(currency)).toBe(decimals);
  });

  it('agrees with Intl for every currency that it knows', () => {
    for (const currency of Intl.supportedValuesOf('currency')) {
      const expected = new Intl.NumberFormat('de', { style: 'currency', currency }).resolvedOptions()
        .maximumFractionDigits;
      expect(currencyDecimals(currency), currency).toBe(expected);
      const printed = plainAmount({ minor: 1234567, currency });
      expect(parseAmount(printed, currency), currency).toEqual({ minor: 1234567, currency });
      expect(printed.split('.')[1]?.length ?? 0, currency).toBe(expected);
    }
  });

  it.each(['EURO', 'eur', 'ABC', '', 'X'])('%s is no currency', (code) => {
    expect(isCurrency(code)).toBe(false);
  });
});

describe('printed amounts', () => {
  it.each([
    [120050, 'EUR', 'EUR 1,200.50'],
    [1200, 'JPY', 'JPY 1,200'],
    [1255, 'KWD', 'KWD 1.255'],
    [-5, 'EUR', 'EUR -0.05'],
    [0, 'USD', 'USD 0.00'],
  ])('%i of %s is %s', (minor, currency, text) => {
    expect(formatMoney({ minor, currency })).toBe(text);
  });

  it('keeps every digit of a large amount', () => {
    expect(formatMoney({ minor: 9007199254740991, currency: 'EUR' })).toBe('EUR 90,071,992,547,409.91');
  });
});
