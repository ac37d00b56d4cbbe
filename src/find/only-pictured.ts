import type { Clauses, Part } from './clause-types.js';
import { isPictured, namesPicture } from './implied/unreal.js';
import type { Kind } from './kinds.js';

/** Makes the test for what a picture or a screen shows, and the scene does not: "a portrait of a man with a dog", "the news shows a bomb". */
export function pictureTest({ sentence, parts, kindOf }: Clauses): ((part: Part, kind: Kind) => boolean) | null {
  const { tokens } = sentence;
  if (sentence.kind !== 'action' || !namesPicture(tokens)) return null;
  const isShown = ({ phrase }: Part) =>
    isPictured(tokens, { first: phrase.start, core: phrase.head, last: phrase.end - 1 });
  const isOnly = (part: Part) => isShown(part) || goesOn(part, kindOf(part.phrase));
  // "with a dog", "in overalls" of the man in the picture; "puts the photo of a man in a box" goes on otherwise.
  const goesOn = ({ phrase, deed }: Part, { letters }: Kind): boolean => {
    const joins = tokens[phrase.start - 1]?.lower ?? '';
    const fits =
      joins === 'with' || (joins === 'in' && letters.startsWith('c')) || (deed === null && beside.test(joins));
    if (!fits) return false;
    const before = parts.find((one) => one.phrase.end === phrase.start - 1);
    return before !== undefined && isOnly(before);
  };
  return (part, kind) => {
    if (!/^[axzvwdpckfe]/.test(kind.letters) || kind.classes.includes('pictures')) return false;
    if (isShown(part)) return true;
    return goesOn(part, kind);
  };
}

const beside = /^(?:in|on|beside|under|at|behind|near|by|before)$/;
