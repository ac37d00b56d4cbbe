import { define, type MessageTable, speaker } from './define.js';

/** Messages of the find layer. */
export const findMessages = {
  'language-not-read': define<{ language: string }>('info', 'The finder reads English only', ({ language }) => ({
    reason: `Expected English for finding elements that nobody marked, found \`language: ${language}\`: only marks and notes count.`,
    hint: 'Put brackets around each element, or list them in notes such as "> props: lantern".',
    actual: language,
  })),
  'words-not-english': define<{ unknown: number; words: number }>(
    'info',
    'Hardly a word of this script is English',
    ({ unknown, words }) => ({
      reason: `Expected English for finding elements that nobody marked, found ${unknown} of ${words} words that are none: little but marks and notes will count.`,
      hint: 'Name the language in the front matter, such as `language: fr`, and put brackets around each element.',
    }),
  ),
} as const satisfies MessageTable;

export const sayFind = speaker('find', findMessages);
