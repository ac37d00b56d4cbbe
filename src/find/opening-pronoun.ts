import { genders } from './genders.js';
import type { Token } from './reading.js';

/** True for a sentence that "he" or "she" opens. */
export const opensWithPronoun = (tokens: readonly Token[]): boolean => /^(?:he|she)$/.test(tokens[0]?.lower ?? '');

/** True for a "his" or "her" of the one who opens the sentence, where the verb before it is said of that one. */
export function isOfOpening(tokens: readonly Token[], at: number): boolean {
  const [first] = tokens;
  if (!first || !opensWithPronoun(tokens) || genders[first.lower] !== genders[tokens[at]?.lower ?? '']) return false;
  for (let place = 1; place < at; place++) if (/^[;:—–]$/.test((tokens[place] as Token).text)) return false;
  const verb = tokens.findLastIndex((one, place) => place < at && one.tag === 'verb');
  const before = tokens[verb - 1];
  return before !== undefined && (verb === 1 || before.lower === 'and' || before.text === ',');
}
