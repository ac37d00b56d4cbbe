import type { Part } from './clause-types.js';
import type { Token } from './reading.js';

const shots =
  /^(?:close-up|closeup|close-ups|long-shot|mid-shot|two-shot|wide|pov|insert|reverse|angle|cutaway|zoom|pan|fade|dissolve|fade-out|fade-in|montage|intercut|flash-cut)$/;

const sized =
  /^(?:wide|long|medium|close|establishing|reverse|master|full|two|over-the-shoulder|high-angle|low-angle|insert|opening|final)$/;

/** True for words that tell how the picture is taken and cut, and name nothing in it: "CLOSE-UP", "rides into picture", "toward camera". */
export function isShotTalk({ phrase, preposition }: Part, tokens: readonly Token[]): boolean {
  const head = tokens[phrase.head] as Token;
  const modifiers = phrase.modifiers.map((at) => (tokens[at] as Token).lower);
  const bare = phrase.determiner === null && phrase.owner === null && modifiers.length === 0;
  if (shots.test(head.lower)) return head.lower.includes('-') || bare || phrase.start === 0;
  if (
    /^(?:shot|view|angle|picture|frame)s?$/.test(head.lower) &&
    modifiers.some((word) => sized.test(word) || shots.test(word))
  )
    return true;
  if (/^(?:cut|cuts)$/.test(head.lower))
    return modifiers.some((word) => /^(?:smash|match|jump|hard|quick)$/.test(word));
  if (/^(?:picture|frame|shot|screen)$/.test(head.lower))
    return bare && /^(?:into|out of|in|to|off|from|on)$/.test(preposition ?? '');
  return head.lower === 'camera' && isViewer(phrase.determiner, bare, preposition, tokens[phrase.end]);
}

/** "toward camera", "to the camera", "the camera pans": the one that takes the picture. */
function isViewer(
  determiner: Token | null,
  bare: boolean,
  preposition: string | null,
  next: Token | undefined,
): boolean {
  if (!bare && determiner?.lower !== 'the') return false;
  if (bare) return true;
  if (/^(?:toward|towards|to|at|past|into|away from)$/.test(preposition ?? '')) return true;
  return /^(?:pan|track|move|tilt|push|pull|crane|glide|drift|follow|linger|hold|zoom|circle|rise|find|dolly|creep)s?$/.test(
    next?.lower ?? '',
  );
}
