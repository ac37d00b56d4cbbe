import { define, type MessageTable, speaker } from './define.js';

/** Messages of the command line. */
export const commandMessages = {
  'file-not-read': define<{ path: string; why: string }>('error', 'a file cannot be read', ({ path, why }) => ({
    reason: `Cannot read ${path}: ${why}.`,
    hint: 'Check the name and the folder; `-` reads from standard input.',
  })),
  'output-not-written': define<{ path: string; why: string }>(
    'error',
    'the outputs cannot be written',
    ({ path, why }) => ({
      reason: `Cannot write into ${path}: ${why}. The files from before are as they were.`,
      hint: 'Name another folder with --out, or close the program that holds these files open.',
    }),
  ),
  'output-unknown': define<{ name: string; nearest: string | null; known: readonly string[] }>(
    'error',
    'an output of that name does not exist',
    ({ name, nearest, known }) => ({
      reason: `There is no output called "${name}".`,
      hint: `${nearest ? `Did you mean ${nearest}? ` : ''}The outputs are ${known.join(', ')}.`,
      actual: name,
      expected: known,
    }),
  ),
  'output-needs-book': define<{ name: string }>('error', 'an output rests on a production book', ({ name }) => ({
    reason: `The output "${name}" is made from a production book, and there is none.`,
    hint: 'Begin one with `prepwright book FILE`, or name yours with --book.',
  })),
  'date-not-read': define<{ typed: string }>('error', 'a date cannot be read', ({ typed }) => ({
    reason: `Expected a date after --today, found "${typed}".`,
    hint: 'Write it as year, month, day: 2027-03-01.',
    actual: typed,
  })),
  'file-not-written': define<{ path: string; why: string }>(
    'error',
    'a text file cannot be written',
    ({ path, why }) => ({
      reason: `Cannot write ${path}: ${why}. The file is as it was.`,
      hint: 'Close the program that holds it open, or copy it to a folder where you may write.',
    }),
  ),
  'book-scenes-unnumbered': define<{ without: number; of: number; heading: string }>(
    'info',
    'a book whose scenes may change their names',
    ({ without, of, heading }) => ({
      reason:
        without > 0
          ? `Expected a number before each heading, found ${without} of ${of} scenes without one. The book finds a scene by the words of its heading, so that a new place or time of day makes it another scene.`
          : 'Expected numbers that stay, found numbers that may still shift. The book finds a scene by the words of its heading, so that a new place or time of day makes it another scene.',
      hint: `${without > 0 ? `Number the scenes before you fill in the book: "1. ${heading}". Then write` : 'Write'} "numbers: locked" between the lines of --- at the top of the script; a scene keeps its number and its entries from then on, and one put in later is 1A.`,
    }),
  ),
  'review-needs-file': define('error', 'a review needs a file', () => ({
    reason: 'Expected the name of a script, found `-`: a review writes the answers into the file.',
    hint: 'Save the script, then type `prepwright review my-film.md`.',
  })),
  'name-unknown': define<{ name: string; nearest: string | null }>(
    'error',
    'nothing has that name',
    ({ name, nearest }) => ({
      reason: `Nothing in the script is called "${name}".`,
      hint: nearest
        ? `Did you mean ${nearest}?`
        : 'Use a name as the sheets print it, a scene number, a story day such as D2, a state or a figure.',
      actual: name,
    }),
  ),
} as const satisfies MessageTable;

export const sayCommand = speaker('command', commandMessages);
