import type { Range } from '../base/text-range.js';
import type { SceneGround } from './ground.js';
import { splitSentences } from './synopsis.js';

/** What the action says of clothes it names: that all are other ones, or that one garment is another of its kind. */
export type SaidChange = 'all' | 'one';

const otherClothes =
  /\b(?:now (?:dressed |wearing )?in|now we(?:ars|aring)|chang(?:ed|es|ing) (?:in)?to|(?:is|are) dressed in)\b[^;:]*$/i;
const saysNow = /\bnow\b/i;
const freshOne =
  /\b(?:in|wearing|wears) (?:a |an |his |her |their )?(?:fresh|clean|new|different|other|another)\b[^,;:]*$/i;

/**
 * Reads the sentence round a garment: `now in a blue dress`, `has changed into`, `dressed in white now` say that the clothes are others,
 * `in a fresh shirt` that this one is. Null when nothing is said, or when the words stand in no action.
 */
export function readSaidChange(ground: SceneGround, at: Range): SaidChange | null {
  return sentenceRound(ground, at, judge);
}

/** Whether the words tell of a change that lies before them (`has changed into`), of one before the camera (`changes into`), or of none. */
export function whenChanged(ground: SceneGround, at: Range): 'before' | 'here' | null {
  return sentenceRound(ground, at, (text) => {
    if (alreadyChanged.test(text)) return 'before';
    return changesHere.test(text) ? 'here' : null;
  });
}

const alreadyChanged = /\b(?:ha(?:s|ve|d) changed|now (?:dressed |wearing )?in|now we(?:ars|aring))\b/i;
const changesHere = /\b(?:chang(?:es?|ing)|(?:puts?|putting|pulls?|pulling|slips?|gets?|getting) (?:on|into)|dons?)\b/i;

/** What is read in the sentence of the action round a place, from its words, where the place begins in it and its length. */
function sentenceRound<T>(
  { actions }: SceneGround,
  at: Range,
  read: (text: string, offset: number, length: number) => T,
): T | null {
  for (const action of actions) {
    for (const { start, text } of splitSentences(action.text)) {
      const place = action.place(start, start + text.length);
      if (at.start.offset < place.start.offset || at.end.offset > place.end.offset) continue;
      return read(text, at.start.offset - place.start.offset, at.end.offset - at.start.offset);
    }
  }
  return null;
}

/** The first word of a garment may itself be `fresh`: the words up to its end count. */
function judge(sentence: string, offset: number, length: number): SaidChange | null {
  if (/^\s*(?:pocket|sleeve|lining)/i.test(sentence.slice(offset + length))) return null;
  const before = sentence.slice(0, offset + length);
  if (otherClothes.test(before)) return /\bdressed in\b/i.test(before) && !saysNow.test(sentence) ? null : 'all';
  return freshOne.test(before) ? 'one' : null;
}
