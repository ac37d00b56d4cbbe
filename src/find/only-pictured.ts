import type { Clauses, Part } from './clause-types.js';
import { isPictured, namesPicture } from './implied/unreal.js';
import type { Kind } from './kinds.js';

/** Makes the test for what a picture or a screen shows, and the scene does not: "a portrait of a man with a dog", "the news shows a bomb". */
export function pictureTest({ sentence, parts }: Clauses): ((part: Part, kind: Kind) => boolean) | null {
  const { tokens } = sentence;
  if (sentence.kind !== 'action' || !namesPicture(tokens)) return null;
  const isShown = ({ phrase }: Part) =>
    isPictured(tokens, { first: phrase.start, core: phrase.head, last: phrase.end - 1 });
  return (part, kind) => {
    if (!/^[axzvwdpckfe]/.test(kind.letters) || kind.classes.includes('pictures')) return false;
    if (isShown(part)) return true;
    const before = parts.find(({ phrase }) => phrase.end === part.phrase.start - 1);
    return tokens[part.phrase.start - 1]?.lower === 'with' && before !== undefined && isShown(before);
  };
}
