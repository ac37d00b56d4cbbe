import { define, type MessageTable, speaker } from './define.js';

/** Messages of the book layer. */
export const bookMessages = {
  'book-not-readable': define<{ problem: string }>('error', 'The book is no YAML that can be read', ({ problem }) => ({
    reason: `Expected a book in YAML, found a line that cannot be read: ${problem}.`,
    hint: 'Look at the spaces at the start of the line and at the colon after each name; put quotes around a text that holds ": " or " #".',
  })),
  'book-key-twice': define<{ key: string }>('error', 'One name stands twice in the book', ({ key }) => ({
    reason: `Expected each name once, found "${key}" a second time.`,
    hint: 'Join the two entries into one.',
  })),
  'book-not-a-list-of-names': define<{ found: string }>('error', 'The book holds no names', ({ found }) => ({
    reason: `Expected names followed by a colon (money:, days:, elements:), found ${found}.`,
    hint: 'Begin with a line such as "money:"; an empty file is a book too.',
  })),
  'book-key-unknown': define<{
    key: string;
    where: string;
    known: readonly string[];
    near: string | null;
    write: string | null;
  }>('warning', 'A name the book does not know', ({ key, where, known, near, write }) => ({
    reason: `Expected a known name ${where}, found "${key}"; the line is left out.`,
    hint: write ?? (near === null ? `Known here: ${known.join(', ')}.` : `Did you mean "${near}"?`),
    actual: key,
    expected: near === null ? known : [near],
  })),
  'book-value': define<{ expected: string; found: string }>(
    'error',
    'A value in the book that cannot be read',
    ({ expected, found }) => ({
      reason: `Expected ${expected}, found ${found}.`,
      hint: 'Correct the line or leave it empty; until then it counts as empty.',
      actual: found,
      expected: [expected],
    }),
  ),
  'book-amount': define<{ text: string; currency: string; decimals: number }>(
    'error',
    'An amount with more decimals than its currency has',
    ({ text, currency, decimals }) => ({
      reason: `Expected an amount with ${decimals === 0 ? 'no decimals' : `at most ${decimals} decimals`} in ${currency}, found ${text}.`,
      hint:
        decimals === 0
          ? `${currency} has no smaller unit: write a whole number.`
          : `${currency} has no smaller coin: write ${decimals} decimals at most.`,
    }),
  ),
  'book-currency-rate': define<{ currency: string; home: string }>(
    'error',
    'An amount in a currency without a rate',
    ({ currency, home }) => ({
      reason: `Expected a rate for ${currency}, found none.`,
      hint: `Write under money, rates: "${currency}: 0.92 on 2027-02-01", which is what one ${currency} is worth in ${home}.`,
    }),
  ),
  'book-day-without-date': define('error', 'A shooting day without a date', () => ({
    reason: 'Expected a date for this shooting day, found none.',
    hint: 'Write "date: 2027-03-12"; the day is left out until then.',
  })),
  'book-reference-unknown': define<{ what: string; id: string; near: string | null }>(
    'warning',
    'The book names an id that is nowhere',
    ({ what, id, near }) => ({
      reason: `Expected the id of ${what}, found "${id}", which is not there.`,
      hint: near === null ? 'Correct it, or take it out if it was cut from the script.' : `Did you mean "${near}"?`,
      actual: id,
    }),
  ),
  'book-entry-without-script': define<{ what: string; id: string; near: string | null }>(
    'warning',
    'An entry of the book that no longer matches the script',
    ({ what, id, near }) => ({
      reason: `Expected ${what} of the script under "${id}", found none with this id or any earlier name; the entry is kept.`,
      hint:
        near === null
          ? 'Keep it if it may come back; otherwise take it out by hand.'
          : `If it is "${near}" now, add "was: ${id}" to that entry, or rename this one.`,
      actual: id,
    }),
  ),
  'book-entries-without-script': define<{ ids: readonly string[] }>(
    'warning',
    'Entries of the book that no longer match the script',
    ({ ids }) => ({
      reason: `Expected ${ids.length} entries of the book in the script, found none of them with their ids or any earlier name: ${ids.join(', ')}; they are kept.`,
      hint: 'Keep them if they may come back; otherwise take them out by hand. Write "was: old-id" in the new entry of what only has a new name.',
    }),
  ),
  'book-section-not-extended': define<{ section: string }>(
    'warning',
    'A section of the book that new entries cannot be added to',
    ({ section }) => ({
      reason: `Expected "${section}:" to hold one entry a line, found another form; nothing was added to it.`,
      hint: `Write "${section}:" on a line of its own at the left margin, with its entries indented below.`,
    }),
  ),
  'book-same-thing-twice': define<{ id: string; other: string }>(
    'warning',
    'Two entries of the book for one thing',
    ({ id, other }) => ({
      reason: `Expected one entry for each thing, found "${id}" and "${other}" for the same one; the first counts.`,
      hint: 'Join the two entries into one.',
    }),
  ),
} as const satisfies MessageTable;

export const sayBook = speaker('book', bookMessages);
