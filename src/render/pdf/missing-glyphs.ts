import type { Diagnostic } from '../../base/diagnostic.js';
import type { Point, Range } from '../../base/text-range.js';
import { sayRender } from '../../messages/render.js';

/** One message for each code point that no face could print, at its first place in the script when it stands there. */
export function sayMissingGlyphs(missing: Iterable<number>, source: string): Diagnostic[] {
  return [...missing].map((codePoint) => {
    const character = String.fromCodePoint(codePoint);
    return sayRender('font-glyph-missing', { character, codePoint }, findPlace(character, source));
  });
}

function findPlace(character: string, source: string): Range | undefined {
  const offset = source.indexOf(character);
  if (offset < 0) return undefined;
  const before = source.slice(0, offset).split('\n');
  const start: Point = { line: before.length, column: (before.at(-1)?.length ?? 0) + 1, offset };
  const end: Point = { ...start, column: start.column + character.length, offset: offset + character.length };
  return { start, end };
}
