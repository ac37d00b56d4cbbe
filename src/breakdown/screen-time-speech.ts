import type { Speech } from '../script/types.js';
import {
  itemSeconds,
  paceCues,
  parenthesisCues,
  type SpeechPace,
  speechRates,
  type TimeSpan,
} from '../trade/screen-time-rates.js';
import { addSpans, divideByRate, noTime } from './screen-time-spans.js';

const ideograph = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}]/gu;
const word = /[\p{L}\p{N}][\p{L}\p{M}\p{N}]*(?:['\u2019][\p{L}\p{M}]+)*/gu;
const parenthesis = /\([^()]*\)/g;

/** Words of a text as they are counted for reading and speaking; ideographs are left out. */
export function countWords(text: string): number {
  return text.replace(ideograph, ' ').match(word)?.length ?? 0;
}

/** Seconds that it takes to speak or read a text at a pace. */
export function timeWords(text: string, pace: SpeechPace | 'read'): TimeSpan {
  const spoken = divideByRate(countWords(text), speechRates[pace]);
  return addSpans(spoken, divideByRate(text.match(ideograph)?.length ?? 0, speechRates.syllable));
}

/** Seconds of a speech: its words at the pace that its parentheses ask for, and the beats and pauses in them. */
export function timeSpeech(speech: Speech): TimeSpan {
  let pace: SpeechPace = 'plain';
  let time = noTime;
  for (const { kind, line } of speech.lines) {
    if (kind === 'parenthetical') pace = paceOf(line.text) ?? pace;
    else time = addSpans(time, timeWords(line.text.replace(parenthesis, ' '), pace));
    for (const [aside] of line.text.matchAll(parenthesis)) time = addSpans(time, timeAside(aside));
  }
  return time;
}

function paceOf(text: string): SpeechPace | null {
  return paceCues.find(({ pattern }) => pattern.test(text))?.kind ?? null;
}

function timeAside(text: string): TimeSpan {
  const cue = parenthesisCues.find(({ pattern }) => pattern.test(text));
  return cue ? itemSeconds[cue.kind] : noTime;
}
