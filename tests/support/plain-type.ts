import { createTypesetter, type Typesetter } from '../../src/render/layout/typesetter.js';

/** A typesetter whose every character is half as wide as the type is high, so that widths can be counted by hand. */
export function plainType(lacks: string = ''): Typesetter {
  return createTypesetter({
    advance: (_face, codePoint) => (lacks.includes(String.fromCodePoint(codePoint)) ? -1 : 500),
  });
}
