import type { Token } from './reading.js';

/** What is put on a wound or a broken bone; where it is worn it is make-up. Common practice. */
const dressings: ReadonlySet<string> = new Set(
  'bandage plaster gauze sling cast splint dressing tourniquet lint'.split(' '),
);
const on = /^(?:on|over|across|round|around|about|to)$/;

/** "a plaster across his palm", "his arm in a sling": the place of what is worn on a part of the body at a place, or null. */
export function dressingOn(tokens: readonly Token[], at: number): number | null {
  return dressingBefore(tokens, at) ?? dressingAround(tokens, at);
}

/** Not what somebody is just putting on or taking in hand: that is an object of a verb, and a prop. */
function dressingBefore(tokens: readonly Token[], at: number): number | null {
  const opening = skipBack(tokens, at - 1);
  if (!on.test(tokens[opening]?.lower ?? '')) return null;
  const dressing = opening - 1;
  if (!dressings.has(tokens[dressing]?.lemma ?? '')) return null;
  const before = tokens[skipBack(tokens, dressing - 1)];
  return before?.tag === 'verb' || before?.tag === 'participle' ? null : dressing;
}

function dressingAround(tokens: readonly Token[], at: number): number | null {
  let next = at + 1;
  if (/^(?:is|are|was|still|now)$/.test(tokens[next]?.lower ?? '')) next++;
  if (tokens[next]?.lower !== 'in') return null;
  next++;
  while (/^(?:determiner|adjective|possessive)$/.test(tokens[next]?.tag ?? '')) next++;
  while (tokens[next]?.tag === 'noun' && tokens[next + 1]?.tag === 'noun') next++;
  return dressings.has(tokens[next]?.lemma ?? '') ? next : null;
}

/** Goes back over the words before a noun that belong to its phrase. */
function skipBack(tokens: readonly Token[], from: number): number {
  let at = from;
  while (
    at >= 0 &&
    /^(?:determiner|adjective|possessive|number|noun)$/.test(tokens[at]?.tag ?? '') &&
    !dressings.has(tokens[at]?.lemma ?? '')
  )
    at--;
  return at;
}
