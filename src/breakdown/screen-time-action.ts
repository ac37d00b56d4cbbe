import { endsSentence } from '../page/sentence-ends.js';
import type { Action } from '../script/types.js';
import {
  actionLength,
  condensedCue,
  condensedWords,
  duringSpeechCue,
  itemSeconds,
  pauseCues,
  sentenceCues,
  type TimeSpan,
} from '../trade/screen-time-rates.js';
import { longerSpan } from './screen-time-spans.js';
import { countWords, timeWords } from './screen-time-speech.js';

/** One sentence of action with its time. */
export interface TimedSentence {
  readonly time: TimeSpan;
  /** True when it happens while somebody speaks. */
  readonly duringSpeech: boolean;
}

/**
 * The sentences of an action, timed, and after them the words in it that the audience reads: what stands in quotes
 * on a letter, a sign, a screen. In a montage each paragraph is one image.
 */
export function timeAction(action: Action, montage: boolean): TimedSentence[] {
  const lines = action.lines.map((line) => line.text);
  if (!/[\p{L}\p{N}]/u.test(lines.join(''))) return [];
  if (action.item || montage) return [{ time: itemSeconds.image, duringSpeech: false }];
  const text = lines.join('\n');
  const shown = [...text.matchAll(quoted)].map((match) => match[1] ?? '').join(' ');
  const sentences = splitSentences(text.replace(quoted, keepStop).split('\n')).map((sentence) => ({
    time: timeKind(sentence),
    duringSpeech: duringSpeechCue.test(sentence),
  }));
  return countWords(shown) > 0 ? [...sentences, { time: timeWords(shown, 'read'), duringSpeech: false }] : sentences;
}

const quoted = /["\u201c\u00ab]([^"\u201c\u201d\u00ab\u00bb]+)["\u201d\u00bb]/gu;

/** A quotation that ends a sentence leaves its full stop. */
function keepStop(quotation: string): string {
  return /[.!?\u2026].$/u.test(quotation) ? ' .' : ' ';
}

function timeKind(text: string): TimeSpan {
  const pause = pauseCues.find(({ pattern }) => pattern.test(text));
  if (pause) return itemSeconds[pause.kind];
  const words = countWords(text);
  const plain = timePlain(words);
  if (words <= condensedWords && condensedCue.test(text)) return longerSpan(plain, itemSeconds.condensed);
  const cue = sentenceCues.find(({ pattern }) => pattern.test(text));
  return cue ? longerSpan(plain, itemSeconds[cue.kind]) : plain;
}

/**
 * A sentence without a cue: from the least to the most that is usual as its words grow. One that is longer still holds
 * several actions.
 */
function timePlain(words: number): TimeSpan {
  const { low, high } = itemSeconds.action;
  const { shortest, longest } = actionLength;
  const actions = Math.max(1, words / longest);
  const slope = (high - low) / (longest - shortest);
  return { low: low * actions, likely: low + slope * Math.max(0, words - shortest), high: high * actions };
}

/** Chinese and Japanese put no space after a sentence. */
const wideStop = /[\u3002\uff01\uff1f]+[\u300d\u300f\u201d]*/gu;

/** The sentences of lines of text. A line end is the end of one when the next line does not go on in small letters. */
export function splitSentences(lines: readonly string[]): string[] {
  const sentences: string[] = [];
  let open: string[] = [];
  const close = () => {
    if (/[\p{L}\p{N}]/u.test(open.join(''))) sentences.push(open.join(' '));
    open = [];
  };
  for (const line of lines) {
    const words = line
      .replace(wideStop, '$& ')
      .split(/\s+/u)
      .filter((word) => word !== '');
    if (words[0] !== undefined && !/^[^\p{L}\p{N}]*\p{Ll}/u.test(words[0])) close();
    words.forEach((word, index) => {
      open.push(word);
      if (word.endsWith(';') || endsSentence(word, words[index + 1] ?? null)) close();
    });
  }
  close();
  return sentences;
}
