import { define, type MessageTable, speaker } from './define.js';
import { planDateMessages } from './plan-dates.js';
import { planSourceMessages } from './plan-sources.js';

/** Messages of the plan layer. */
export const planMessages = {
  ...planDateMessages,
  ...planSourceMessages,
  'plan-scene-twice': define<{ scene: string; date: string }>(
    'warning',
    'A scene in two shooting days',
    ({ scene, date }) => ({
      reason: `Expected each scene in one shooting day, found scene ${scene} again; it counts on ${date}.`,
      hint: 'Take it out of one of the two days.',
    }),
  ),
  'plan-location-unknown': define<{ id: string; near: string | null }>(
    'warning',
    'A real location that the book does not describe',
    ({ id, near }) => ({
      reason: `Expected a location described under "locations", found "${id}".`,
      hint: near === null ? `Add "${id}:" under locations.` : `Did you mean "${near}"?`,
      actual: id,
    }),
  ),
  'plan-too-late': define<{ name: string; words: string }>(
    'warning',
    'A thing that cannot come in time',
    ({ name, words }) => ({
      reason: `Expected time enough to get "${name}": ${words}`,
      hint: 'Choose one of the ways out and write it in the book: "delivery: 1" for express, another "from:" or "get: borrow", or the scene under another day.',
    }),
  ),
  'plan-over-budget': define<{ forecast: string; budget: string }>(
    'warning',
    'More than the budget',
    ({ forecast, budget }) => ({
      reason: `Expected a forecast within ${budget}, found ${forecast}.`,
      hint: 'Borrow, make or cut something, or raise the budget in the book.',
    }),
  ),
  'plan-cash-short': define<{ peak: string; budget: string; date: string }>(
    'warning',
    'Cash runs out before the budget does',
    ({ peak, budget, date }) => ({
      reason: `Expected no more than ${budget} out at one time, found ${peak} on ${date}, deposits among it.`,
      hint: 'Spread the deposits, or fetch a hire later.',
    }),
  ),
  'plan-other-costs-missing': define('info', 'No costs but things', () => ({
    reason: 'Expected food, fuel and parking in the budget, found none.',
    hint: 'Write under money, other costs: "- what: crew food", "cost: 8", "per: head and day".',
  })),
  'plan-day-heavy': define<{ day: number; words: string }>(
    'warning',
    'A shooting day that is too much',
    ({ day, words }) => ({
      reason: `Expected shooting day ${day} to be possible: ${words}`,
      hint: 'Move a scene to another day, or correct the times in the book.',
    }),
  ),
  'plan-light': define<{ day: number; words: string }>('warning', 'A scene without its light', ({ day, words }) => ({
    reason: `Expected light on shooting day ${day} as the script has it: ${words}`,
    hint: 'Change the call or the day, or play the scene at another hour; a ridge or trees may take more.',
  })),
  'plan-drying-short': define<{ name: string; words: string }>(
    'warning',
    'Not enough hours to dry or convert',
    ({ name, words }) => ({
      reason: `Expected hours enough for "${name}": ${words}`,
      hint: 'Get a double, or change the order of the days.',
    }),
  ),
  'plan-mess-first': define<{ words: string }>('warning', 'Spoilt before it is wanted clean', ({ words }) => ({
    reason: `Expected the clean scene before the dirty one, found that ${words}.`,
    hint: 'Write "copies: 2" for it in the book, or put the scenes of the day in another order.',
  })),
  'plan-mess-near': define<{ words: string }>('info', 'It may be spoilt before it is wanted clean', ({ words }) => ({
    reason: `Expected clean clothes for the scenes shot later, found a question: ${words}.`,
    hint: 'Write "copies: 2" for what may be hit, or put the scenes of the day in another order.',
  })),
  'plan-copies-few': define<{ name: string; decided: number; minimum: number; why: string }>(
    'warning',
    'Fewer copies decided than the scenes need',
    ({ name, decided, minimum, why }) => ({
      reason: `Expected at least ${minimum} of "${name}", found ${decided} decided: ${why}.`,
      hint: 'Raise "copies" in the book, shoot the scenes in another order, or take fewer takes.',
      actual: String(decided),
      expected: [String(minimum)],
    }),
  ),
  'plan-pack-unknown': define<{ name: string; price: string; amount: string }>(
    'warning',
    'A price of a bottle, bag or roll of unknown size',
    ({ name, price, amount }) => ({
      reason: `Expected to know how much of "${name}" ${price} buys, found no "pack"; ${amount} are needed, and no cost is counted.`,
      hint: 'Write what one bottle, bag or roll holds: "pack: 750 ml", or "pack: 5 m".',
    }),
  ),
  'plan-looks-count': define<{ name: string; count: number; looks: number }>(
    'warning',
    'Looks that do not add up to the people',
    ({ name, count, looks }) => ({
      reason: `Expected looks for ${count} ${name}, found looks for ${looks}.`,
      hint: 'Correct the counts under "looks:", or "count:".',
      actual: String(looks),
      expected: [String(count)],
    }),
  ),
  'plan-place-open': define<{ scenes: string; place: string; choices: readonly string[]; taken: string }>(
    'warning',
    'A place that two real locations play',
    ({ scenes, place, choices, taken }) => ({
      reason: `Expected the day to say where ${scenes} is shot, found ${choices.join(' and ')} for "${place}"; ${taken} is taken.`,
      hint: `Write "at: ${choices[1] ?? taken}" or "at: ${taken}" under the day.`,
    }),
  ),
  'plan-helper-unknown': define<{ id: string; near: string | null }>(
    'warning',
    'A helper that the book does not name',
    ({ id, near }) => ({
      reason: `Expected the id of a helper, found "${id}".`,
      hint: near === null ? `Add "${id}:" under helpers.` : `Did you mean "${near}"?`,
      actual: id,
    }),
  ),
} as const satisfies MessageTable;

export const sayPlan = speaker('plan', planMessages);
