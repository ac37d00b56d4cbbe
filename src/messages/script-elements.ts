import { define, type MessageTable } from './define.js';

const categoryHint =
  'Use one of: cast, extras, prop, food, graphic, vehicle, animal, costume, makeup, dressing, plant, stunt, effect, visual-effect, sound, music, gear.';

/** Messages about marks and definitions. */
export const elementMessages = {
  'bracket-open': define('warning', 'A bracket that nothing closes', () => ({
    reason: 'Expected `]` on the same line or the next, found none; the bracket prints as typed and marks nothing.',
    hint: 'Close it behind the words: `[storm lantern]`.',
  })),
  'category-unknown': define<{ written: string }>('warning', 'A category nobody knows', ({ written }) => ({
    reason: `Expected a category, found ${written === '' ? 'nothing' : `\`${written}\``}.`,
    hint: categoryHint,
    actual: written,
  })),
  'category-with-text': define<{ word: string; text: string; name: string }>(
    'warning',
    'More than a category behind a mark',
    ({ word, text, name }) => ({
      reason: `Expected only a category in the parentheses, found \`${text}\` behind \`${word}\`; the category is read, the rest is not.`,
      hint: `Write \`[${name}](${word})\`, and put \`[${name}]: ${word} "${text}"\` in a line of its own at the end.`,
      actual: text,
    }),
  ),
  'category-short-for-two': define<{ written: string; read: string; other: string }>(
    'info',
    'A short word with two meanings',
    ({ written, read, other }) => ({
      reason: `Expected a category, found \`${written}\`, which is short for two; it is read as ${read}, done on set.`,
      hint: `Write \`${read}\`, or \`${other}\` if it is a sound effect.`,
      actual: written,
      expected: [read, other],
    }),
  ),
  'definition-not-read': define<{ name: string; taken: string | null }>(
    'warning',
    'A definition that Markdown does not read',
    ({ name, taken }) => ({
      reason: `Expected the definition of \`${name}\` under a blank line, with one word for the category and one pair of straight quotes, found it otherwise.`,
      hint: taken
        ? `It is taken as meant; write \`${taken}\` under a blank line.`
        : `It prints as action; write \`[${name}]: prop "2; carried by Nora"\` under a blank line.`,
    }),
  ),
  'definition-twice': define<{ name: string }>('warning', 'A second definition of one element', ({ name }) => ({
    reason: `Expected one definition of \`${name}\`, found another; the first one counts.`,
    hint: 'Put all into one of them and delete the other.',
  })),
  'definition-person-unknown': define<{ name: string }>(
    'info',
    'A definition with a person nobody knows',
    ({ name }) => ({
      reason: `Expected a person of the script, found \`${name}\`.`,
      hint: 'Write the name as it stands over the speeches, or add it to `cast:`.',
    }),
  ),
} as const satisfies MessageTable;
