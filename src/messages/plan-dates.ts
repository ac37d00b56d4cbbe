import { define, type MessageTable } from './define.js';

/** Messages of the plan about days and times: what does not fit the order of the shoot. */
export const planDateMessages = {
  'plan-date-twice': define<{ date: string }>('warning', 'Two shooting days on one date', ({ date }) => ({
    reason: `Expected each date once under "days", found ${date} a second time.`,
    hint: 'Write all its scenes under one "date:", with "begin:" for the scene after the break; or correct the date.',
  })),
  'plan-begin': define<{ scene: string; begin: string; words: string; write: string }>(
    'warning',
    'A scene that cannot begin when the book says',
    ({ scene, begin, words, write }) => ({
      reason: `Expected scene ${scene} to begin within its day and in its order, found "begin: ${begin}", which is ${words}. It is placed by the order of the day instead.`,
      hint: write,
    }),
  ),
  'plan-begin-tight': define<{ scene: string; begin: string; before: string; there: string; wanted: string }>(
    'warning',
    'A scene that begins before the one before it can end',
    ({ scene, begin, before, there, wanted }) => ({
      reason: `Expected time enough before scene ${scene} begins at ${begin}, found ${there} for ${before}, reckoned at about ${wanted}.`,
      hint: 'Write a later "begin:", or an earlier "call:", or put fewer scenes before it; or write "setups:" and "takes:" where they are fewer.',
    }),
  ),
  'plan-undecided-late': define<{
    names: string;
    count: number;
    day: number;
    from: string;
    until: string | null;
    town: string;
  }>(
    'warning',
    'Things on which nobody has decided, too late to order',
    ({ names, count, day, from, until, town }) => ({
      reason: `Expected time enough to get ${count} things for shooting day ${day}, found that the last day to order them was ${from}${until === null ? '' : `, of some ${until}`}: ${names}. Ways out: borrow them, buy them in town by ${town}, pay for express delivery, do without them, move their scenes.`,
      hint: 'Write under "elements" for each of them "get: own" with "have: 1" if it is here, "get: borrow", or "get: buy" with "delivery: 1" for express; "get: cut" if the film does without it.',
    }),
  ),
  'plan-hire-dates': define<{ name: string; words: string; write: string }>(
    'warning',
    'Fetched too late, or given back too early',
    ({ name, words, write }) => ({ reason: `Expected "${name}" to be there for its scenes: ${words}.`, hint: write }),
  ),
  'plan-fitting-late': define<{ name: string; words: string; write: string }>(
    'warning',
    'A fitting, test or rehearsal that comes too late',
    ({ name, words, write }) => ({
      reason: `Expected fittings, tests and rehearsals of "${name}" while something can still be changed: ${words}.`,
      hint: write,
    }),
  ),
  'plan-work-short': define<{ name: string; words: string; write: string }>(
    'warning',
    'Work that no longer fits before the shoot',
    ({ name, words, write }) => ({ reason: `Expected time enough for the work on "${name}": ${words}`, hint: write }),
  ),
  'plan-overdue': define<{ name: string; date: string; today: string }>(
    'warning',
    'A thing that should have come',
    ({ name, date, today }) => ({
      reason: `Expected "${name}" on ${date}, found no "received:" in the book.`,
      hint: `Ask for it. Then write "received: ${today}" when it is there, or "promised:" with the new date.`,
    }),
  ),
  'plan-get-again': define<{ name: string; words: string; by: string | null }>(
    'warning',
    'A thing that must be got again',
    ({ name, words, by }) => ({
      reason: `Expected "${name}" to be there and right, found that ${words}${by === null ? '' : `; a new one must be ordered by ${by}`}.`,
      hint: 'Order it again, write the new "ordered:" date and take out "problem:" and "received:"; or write "checked:" with a date if it will do after all.',
    }),
  ),
  'plan-own-few': define<{ name: string; have: number; wanted: number; by: string | null }>(
    'warning',
    'Fewer of one’s own than the scenes need',
    ({ name, have, wanted, by }) => ({
      reason: `Expected ${wanted} of "${name}", found ${have} of one's own: ${wanted - have} missing${by === null ? '' : `, to be ordered by ${by}`}.`,
      hint: `Write where the rest comes from, such as "get: buy" or "get: borrow", and keep "have: ${have}"; or "copies: ${have}" if that is enough.`,
      actual: String(have),
      expected: [String(wanted)],
    }),
  ),
} as const satisfies MessageTable;
