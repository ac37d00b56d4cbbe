import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blank, bold, type Inline, tick } from '../../../src/render/layout/inline.js';
import type { Item } from '../../../src/render/layout/page-tree.js';
import { lineHeight, naturalWidth, wrapInline } from '../../../src/render/layout/wrap.js';
import { plainType } from '../../support/plain-type.js';

const type = plainType();
/** Ten points high, five points a character: 50 points hold ten characters. */
const wrap = (inline: Inline, width = 50, hang = 0) => wrapInline(inline, { size: 10, x: 100, width, hang }, type);
const texts = (lines: ReturnType<typeof wrap>) =>
  lines.map((line) => line.items.flatMap((item: Item) => (item.kind === 'text' ? [item.text] : [])).join('|'));

describe('wrapInline', () => {
  it('ends lines at spaces and drops them', () => {
    expect(texts(wrap('the rope and the lamp'))).toEqual(['the rope', 'and the', 'lamp']);
  });

  it('fills a line to its last character', () => {
    expect(texts(wrap('1234567890 1'))).toEqual(['1234567890', '1']);
  });

  it('ends lines after hyphens and slashes', () => {
    expect(texts(wrap('the break-away glass/lampshade'))).toEqual(['the break-', 'away', 'glass/', 'lampshade']);
  });

  it('cuts a word wider than the line', () => {
    expect(texts(wrap('abcdefghijklm'))).toEqual(['abcdefghij', 'klm']);
  });

  it('breaks where the text says', () => {
    expect(texts(wrap('one\ntwo'))).toEqual(['one', 'two']);
  });

  it('does not break between styles without a space', () => {
    expect(texts(wrap(['a lot of ', bold('Nora'), '’s things']))).toEqual(['a lot of', 'Nora|’s', 'things']);
  });

  it('moves all lines but the first to the right by the hang', () => {
    const lines = wrap('the rope and the lamp', 50, 10);
    expect(lines.map((line) => line.items[0]?.x)).toEqual([100, 110, 110]);
  });

  it('sets signs and blanks as wide as they are', () => {
    expect(naturalWidth(['ab', blank(30)], 10, type)).toBe(40);
    const line = wrap(['ab ', tick])[0];
    expect(line?.items[1]).toMatchObject({ kind: 'rect' });
    expect(line?.items[1]?.x).toBeGreaterThan(115);
  });

  it('gives one empty line for no text', () => {
    expect(wrap('')).toEqual([{ items: [], width: 0 }]);
  });

  it('never loses a character that has ink, and never passes the right end', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 80 }), fc.integer({ min: 20, max: 90 }), (text, width) => {
        const lines = wrap(text, width);
        for (const line of lines) expect(line.width).toBeLessThanOrEqual(Math.max(width, 10) + 0.01);
        const ink = (value: string) =>
          value.normalize('NFC').replace(/[\p{White_Space}\p{C}\p{Variation_Selector}]/gu, '');
        expect(ink(texts(lines).join('').replaceAll('|', ''))).toBe(ink(text.replaceAll('|', '')));
      }),
    );
  });

  it('puts a baseline inside its line', () => {
    const item = wrap('a')[0]?.items[0];
    expect(item?.y).toBeGreaterThan(5);
    expect(item?.y).toBeLessThan(lineHeight(10));
  });
});
