import { define, type MessageTable } from './define.js';

/** Messages about the file as a whole, its front matter and its people. */
export const frontMessages = {
  'not-utf-8': define<{ line: number; wide: boolean }>('error', 'A file that is no UTF-8', ({ line, wide }) => ({
    reason: wide
      ? 'Expected text in UTF-8, found UTF-16.'
      : `Expected text in UTF-8, found bytes that are none in line ${line}.`,
    hint: 'Save the script again as “UTF-8” in your editor; names with accents may have to be typed again.',
  })),
  'null-character': define('warning', 'A character that is no text', () => ({
    reason: 'Expected text, found a NUL character; it prints as a sign for what cannot be read.',
    hint: 'Delete it, or save the script anew as plain text: editors that show nothing there still write it.',
  })),
  'front-matter-unreadable': define<{ found: string }>('error', 'Front matter that cannot be read', ({ found }) => ({
    reason: `Expected lines of the form \`title: The Ferry\` between the \`---\` lines, found ${found}.`,
    hint: 'Write one `key: value` a line, and put quotes round a value that holds a colon: `title: "Day One: Rain"`.',
  })),
  'front-matter-not-mapping': define('warning', 'A first line --- with script under it', () => ({
    reason: 'Expected front matter between the first `---` and the next one, found no `key: value` lines.',
    hint: 'The text is read as script; take the first `---` away, or write `title: …` under it.',
  })),
  'front-matter-not-first': define('warning', 'Front matter after a blank line', () => ({
    reason: 'Expected front matter to begin on the first line, found a blank line above it.',
    hint: 'It is read all the same; delete what stands above the first `---`.',
  })),
  'front-matter-open': define<{ taken: boolean }>('warning', 'Front matter without its end', ({ taken }) => ({
    reason: 'Expected a line `---` that ends the front matter, found none.',
    hint: taken
      ? 'It is read up to the first blank line; put `---` there.'
      : 'Nothing is read as front matter; put `---` under its last line.',
  })),
  'front-matter-dots': define('warning', 'Front matter closed with three dots', () => ({
    reason: 'Expected a line `---` at the end of the front matter, found `...`.',
    hint: 'It is read all the same; write `---` there.',
  })),
  'front-key-unknown': define<{ key: string; known: readonly string[] }>(
    'warning',
    'A front matter key nobody reads',
    ({ key, known }) => ({
      reason: `Expected a key that the front matter knows, found \`${key}\`.`,
      hint: `Use one of these: ${known.join(', ')}.`,
      actual: key,
      expected: known,
    }),
  ),
  'front-value-unknown': define<{ key: string; value: string; expected: readonly string[] }>(
    'warning',
    'A front matter value that does not fit',
    ({ key, value, expected }) => ({
      reason: `Expected ${expected.join(' or ')} for \`${key}\`, found ${value === '' ? 'nothing' : `\`${value}\``}.`,
      hint: `Write \`${key}: ${expected[0]}\` or take the line out.`,
      actual: value,
      expected,
    }),
  ),
  'cast-unreadable': define<{ found: string }>('warning', 'An entry of cast: that cannot be read', ({ found }) => ({
    reason: `Expected a name with \`aliases\`, \`age\`, \`was\` or \`background\`, found \`${found}\`.`,
    hint: 'Write each person as `NORA: {age: 34, aliases: [MISS BELL]}`, or `NORA: {}`.',
  })),
  'cast-name-twice': define<{ name: string; person: string }>(
    'warning',
    'One name for two people in cast:',
    ({ name, person }) => ({
      reason: `Expected each name to mean one person, found \`${name}\` again; it already means ${person}.`,
      hint: `The name goes on meaning ${person}; take it out of one of the two.`,
    }),
  ),
} as const satisfies MessageTable;
