import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compareSceneNumbers, takeSceneNumber } from '../../src/script/scene-number.js';

const sorted = (numbers: string[]) => [...numbers].reverse().sort(compareSceneNumbers);

describe('the order of scene numbers', () => {
  it('puts a letter before the number in front of the scene, one behind it after (leading letters: common practice)', () => {
    const order = ['11', 'A12', 'B12', '12', '12A', '12B', '13'];
    expect(sorted(order)).toEqual(order);
  });

  it('makes room between 10 and 10A with small letters (Wikipedia, Shooting script: 10aA, then 10aaA)', () => {
    const order = ['10', '10aaA', '10aA', '10A', '10B', '11'];
    expect(sorted(order)).toEqual(order);
  });

  it('puts 10A between 10 and 11 (Wikipedia, Shooting script; Padubaeh: 2A)', () => {
    expect(sorted(['2', '2A', '10', '10A', '11'])).toEqual(['2', '2A', '10', '10A', '11']);
  });

  it('counts numbers as numbers, not as text', () => {
    expect(compareSceneNumbers('9', '10')).toBeLessThan(0);
    expect(compareSceneNumbers('12', '12')).toBe(0);
  });

  it('puts what is no number last, as text', () => {
    expect(sorted(['1', '2', '18-20', 'x'])).toEqual(['1', '2', '18-20', 'x']);
  });

  it('is an order: what goes before never goes after', () => {
    const number = fc.stringMatching(/^[A-C]?[0-9]{1,2}[a-cA-C]{0,2}$/);
    fc.assert(
      fc.property(number, number, number, (a, b, c) => {
        expect(Math.sign(compareSceneNumbers(a, b))).toBe(-Math.sign(compareSceneNumbers(b, a)) || 0);
        const [first, second, third] = [a, b, c].sort(compareSceneNumbers) as [string, string, string];
        expect(compareSceneNumbers(first, second)).toBeLessThanOrEqual(0);
        expect(compareSceneNumbers(first, third)).toBeLessThanOrEqual(0);
      }),
    );
  });
});

describe('a number at the start of a heading', () => {
  it.each([
    ['12 INT. A', '12', 3],
    ['12. INT. A', '12', 4],
    ['12) INT. A', '12', 4],
    ['12A INT. A', '12A', 4],
    ['A12 INT. A', 'A12', 4],
    ['10aA INT. A', '10aA', 5],
    ['Scene 3: INT. A', '3', 9],
    ['3 - INT. A', '3', 4],
  ])('of %s is %s', (text, number, length) => {
    expect(takeSceneNumber(text)).toEqual({ number, length });
  });

  it.each(['INT. A', 'ROOM 12', '12', 'A', '12345 INT. A'])('is missing in %s', (text) => {
    expect(takeSceneNumber(text)).toBeNull();
  });
});
