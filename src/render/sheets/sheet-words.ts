import { formatDuration } from '../../base/duration.js';
import { type Eighths, formatEighths } from '../../base/eighths.js';
import type { BreakdownScene, ScreenTime, StoryDay } from '../../breakdown/types.js';
import type { Light, Setting } from '../../script/types.js';

const settings: Record<Setting, string> = { INT: 'Inside', EXT: 'Outside', 'INT/EXT': 'Inside and outside' };

/** `Inside`, `Outside`, `Inside and outside`. */
export function settingWords(setting: Setting): string {
  return settings[setting];
}

const smallWords = new Set('a an and at by for from in of off on or the to under with'.split(' '));

/** A place as people write it: capitals of a heading become capital first letters; anything else stays as typed. */
export function placeWords(parts: readonly string[]): string {
  return parts.map((part) => (/\p{Ll}/u.test(part) ? part : part.replace(/\S+/gu, unshout))).join(', ');
}

function unshout(word: string, at: number): string {
  const lower = word.toLowerCase();
  if (at > 0 && smallWords.has(lower)) return lower;
  // A word without a vowel is a short name made of letters: TV, NHS.
  if (!/[aeiouyà-ÿ]/u.test(lower)) return word;
  return lower.replace(/(?<![\p{L}'’])\p{L}/gu, (letter) => letter.toUpperCase());
}

/** Words that stood in capitals, in small letters: `night`, `flashback`. */
export function quietWords(text: string): string {
  return /\p{Ll}/u.test(text) ? text : text.toLowerCase();
}

/** `Inside, Ferry house, kitchen, night (flashback, 1974)`. */
export function headingSentence(scene: BreakdownScene): string {
  const time = scene.time ? quietWords(scene.time) : '';
  const parts = [settingWords(scene.setting), placeWords(scene.placeParts), time, lightAfter(time, scene.light)];
  const qualifiers = scene.qualifiers.map(quietWords).join(', ');
  return parts.filter((part) => part !== '').join(', ') + (qualifiers ? ` (${qualifiers})` : '');
}

const lights: Record<Light, string> = { day: 'by day', night: 'by night', dawn: 'at dawn', dusk: 'at dusk' };

/** The light in words when the time as written does not tell it: CONTINUOUS, LATER. */
function lightAfter(time: string, light: Light | null): string {
  const told = /day|night|dawn|dusk|morning|noon|evening|sun|twilight/i.test(time);
  return told || light === null ? '' : lights[light];
}

/** `1 3/8 pages`, `3/8 page`, `1 page`. */
export function pageWords(length: Eighths): string {
  return `${formatEighths(length)} ${length > 8 ? 'pages' : 'page'}`;
}

/** `story day D2`, `flashback day F1`. */
export function dayWords(day: StoryDay): string {
  return `${day.series === 'F' ? 'flashback day' : 'story day'} ${day.label}${day.sure ? '' : ' ?'}`;
}

/** `0:50 on screen (0:40 to 1:05)`; a time that the writer set is said to be so. */
export function timeWords(time: ScreenTime): string {
  if (time.noted) return `${formatDuration(time.seconds)} on screen (set by the writer)`;
  return `${formatDuration(time.seconds)} on screen (${rangeWords(time)})`;
}

/** `0:40 to 1:05`. */
export function rangeWords(time: ScreenTime): string {
  return `${formatDuration(time.low)} to ${formatDuration(time.high)}`;
}

/** `1 scene`, `3 scenes`. */
export function countWords(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** What stands in a section's place when it is folded to a count: `4 things: see “Left over” at the end`. */
export function foldedWords(count: number, one: string): string {
  return `${countWords(count, one)}: see “Left over” at the end`;
}

/** The script's own words in quotes; `the heading` when they are a scene's heading, which the reader has before them. */
export function quoteWords(words: string): string {
  return /^(?:INT|EXT|I\/E)\b/.test(words) ? 'the heading' : `“${words}”`;
}
