import stringWidth from 'string-width';
import { describe, expect, it } from 'vitest';
import { measureText, splitGraphemes } from '../../src/page/text-width.js';
import { tokenize, wrapTokens } from '../../src/page/wrap.js';

function wrap(text: string, width: number): string[] {
  const tokens = tokenize(text, width);
  return wrapTokens(tokens, 0, width).map(({ from, to }) => text.slice(tokens.starts[from], tokens.ends[to - 1]));
}

describe('wrapping', () => {
  it('fills a line up to its last cell', () => {
    expect(wrap('one two three', 7)).toEqual(['one two', 'three']);
    expect(wrap('one two three', 6)).toEqual(['one', 'two', 'three']);
  });
  it('keeps the spaces typed inside a line and drops them at its ends', () => {
    expect(wrap('  A.  B', 10)).toEqual(['A.  B']);
    expect(wrap('A.  Bcdefgh', 8)).toEqual(['A.', 'Bcdefgh']);
  });
  it('parts nothing at a no-break space or a hyphen', () => {
    expect(wrap('go to 5\u00a0km now', 8)).toEqual(['go to', '5\u00a0km now']);
    expect(wrap('a half-open door', 8)).toEqual(['a', 'half-open'.slice(0, 8), 'n door']);
    expect(wrap('a half-open door', 10)).toEqual(['a', 'half-open', 'door']);
  });
  it('cuts a word wider than the line and says which', () => {
    expect(wrap('so abcdefghijkl m', 5)).toEqual(['so', 'abcde', 'fghij', 'kl m']);
    expect(tokenize('so abcdefghijkl m', 5).cut).toBe('abcdefghijkl');
    expect(tokenize('so abc', 5).cut).toBeNull();
  });
  it('counts wide letters twice and parts between ideographs', () => {
    expect(wrap('灯台の中で', 6)).toEqual(['灯台の', '中で']);
    expect(tokenize('灯台の中で', 6).cut).toBeNull();
  });
  it('starts no line with a closing sign and ends none with an opening one', () => {
    expect(wrap('灯台の中。外', 8)).toEqual(['灯台の', '中。外']);
    expect(wrap('灯台「中」外', 6)).toEqual(['灯台', '「中」', '外']);
    expect(wrap('abc灯台', 4)).toEqual(['abc', '灯台']);
  });
  it('counts combining marks not at all and never cuts them off', () => {
    const accented = 'e\u0301'.repeat(6);
    expect(measureText(accented)).toBe(6);
    expect(wrap(accented, 4)).toEqual(['e\u0301'.repeat(4), 'e\u0301'.repeat(2)]);
  });
  it('takes an emoji of several code points as one of two cells', () => {
    expect(measureText('👩‍🚀')).toBe(2);
    expect(splitGraphemes('👩‍🚀a')).toEqual(['👩‍🚀', 'a']);
  });
  it('gives no line for empty text', () => {
    expect(wrap('', 10)).toEqual([]);
    expect(wrap('   ', 10)).toEqual([]);
  });
  it('measures every character of its quick table as string-width does', () => {
    for (let code = 0x20; code < 0xd800; code++) {
      const character = String.fromCodePoint(code);
      if (measureText(character) !== stringWidth(character)) expect.fail(code.toString(16));
    }
  });
  it('measures long text as the sum of its parts', () => {
    for (const part of ['灯台。', 'e\u0301', '👩‍🚀', '🇩🇰🇫🇷', '한국어 ', 'नमस्ते ']) {
      const text = part.repeat(300);
      expect(measureText(text)).toBe(stringWidth(text));
      expect(splitGraphemes(text).join('')).toBe(text);
    }
    expect(splitGraphemes('🇩🇰'.repeat(300))).toHaveLength(300);
    expect(splitGraphemes(`e${'\u0301'.repeat(3000)}x`)).toHaveLength(2);
    expect(measureText(`e${'\u0301'.repeat(3000)}`)).toBe(1);
  });
});
