import type { Token } from './reading.js';

/** The particle of the verb at a place, also behind its object: "puts it on"; null when it has none. */
export function particleAfter(tokens: readonly Token[], at: number): string | null {
  for (let here = at + 1; here < Math.min(tokens.length, at + 7); here++) {
    const token = tokens[here] as Token;
    if (token.tag === 'particle') return token.lower;
    if (here === at + 1 && token.tag === 'preposition' && /^(?:on|off|in|out|up|down|over|around)$/.test(token.lower))
      return token.lower;
    if (/^(?:punctuation|conjunction|verb|participle|preposition)$/.test(token.tag)) return null;
  }
  return null;
}

/**
 * The word behind an object that may be the particle of its verb, or "" when none is: "puts a hat on", "pulls the cap off her head". "Puts a
 * hat on the chair" tells where, and dresses nobody.
 */
export function particleBehind(tokens: readonly Token[], at: number): string {
  const behind = tokens[at];
  if (behind === undefined) return '';
  const place =
    behind.tag === 'preposition' && /^(?:on|off)$/.test(behind.lower) && tokens[at + 1]?.tag === 'determiner';
  return place ? '' : behind.lower;
}
