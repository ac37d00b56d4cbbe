import { z } from 'zod';
import { dryingTimes } from '../trade/drying-times.js';
import * as leaf from './leaf-shapes.js';
import { mostHours, parseHours } from './written-values.js';

const prepTask = z
  .union(
    [
      z.string(),
      z.strictObject({
        task: z
          .string({ error: 'what is to be done' })
          .describe('What is to be done: "dye", "age with tea", "blunt the edge".'),
        who: leaf.line('Id of the helper who does it.'),
        hours: leaf.hours('Hours of work: 2, 1.5 or 30 min.'),
        days: leaf.days('Whole days that the work takes, when hours do not say it.'),
        wait: leaf.days('Days of drying or curing after the work.'),
      }),
    ],
    { error: 'a task: words, or task, who, hours, wait' },
  )
  .describe('A piece of work on the thing. Known words bring their usual hours and days of waiting.');

const material = z.strictObject(
  {
    what: z.string({ error: 'what to get' }).describe('The raw material.'),
    from: leaf.line('Supplier: an id of "suppliers", or a name.'),
    price: leaf.amount('Price of one.'),
    pieces: leaf.whole('How many.', 1),
    delivery: leaf.days('Delivery in working days; of "2-4 days" the 4 counts.'),
    ordered: leaf.date('Date it was ordered.'),
    received: leaf.date('Date it came.'),
    paid: leaf.amount('Paid in full, with tax.'),
    'paid on': leaf.date('Date it was paid.'),
  },
  { error: 'raw material: what, from, price, pieces, delivery' },
);

const state = z.strictObject(
  {
    undo: z
      .union(
        [
          z.literal('never'),
          z.string().regex(/^\s*\d+([.,]\d+)?\s*(h|hours?|min|minutes?)?\s*$/),
          z.number().min(0).max(mostHours),
        ],
        { error: 'hours such as 12, or never' },
      )
      .refine((value) => value === 'never' || parseHours(String(value)) !== null, {
        error: 'hours such as 12, or never',
      })
      .nullish()
      .describe('Hours to bring it back out of this state, or never.'),
    make: leaf.hours('Hours to bring it into this state between scenes.'),
    'on camera': leaf.word('What one take of the change costs.', ['copy each take', 'a pair', 'reset']),
  },
  { error: 'undo, make, on camera' },
);

const weapon = z.strictObject(
  {
    kind: leaf.word('What the object is.', ['real', 'replica', 'soft']),
    'blunted by': leaf.line('Who made it harmless.'),
    'blunted on': leaf.date('When.'),
    'key holder': leaf.line('The one named adult who holds the key.'),
    'notice given': leaf.yesNo('Were neighbours and authorities told?'),
  },
  { error: 'kind, blunted by, blunted on, key holder, notice given' },
);

const materials = dryingTimes.map((row) => row.material) as [string, ...string[]];

/** What the book may say of one thing to get. Every line may be left out. */
export const elementFields = {
  was: leaf.lines('Earlier ids of this thing, so that decisions outlive a new name.'),
  get: leaf.word('Where it comes from.', ['own', 'borrow', 'make', 'buy', 'hire', 'cut']),
  from: leaf.line('Supplier: an id of "suppliers", or a name.'),
  'second source': leaf.line('Where to go when the first source fails.'),
  have: leaf.whole('How many are here already.'),
  copies: leaf.whole('How many copies you decided on; it wins over the reckoning.'),
  'stand-ins': leaf.whole('Copies of the same shape for rehearsals, lighting and throws, beside the good ones.'),
  'background copies': leaf.whole('Rough copies for what is seen from more than three metres, beside the good ones.'),
  'rough price': leaf.amount('Price of one stand-in or background copy.'),
  'used up': leaf.yesNo('Is one used up in each take?'),
  'used up in': leaf.lines(
    'The only scenes, by id or number, in which a take uses it up; in the others it is merely there.',
  ),
  'per take': leaf.quantity('How much one take uses: 1, 15 ml, 2 portions.'),
  takes: leaf.whole('Takes of each setup.', 1),
  setups: leaf.whole('Setups that see it used.', 1),
  rehearsals: leaf.whole('Rehearsals with the real thing.'),
  spare: leaf.percent('Spare for what is used up: 20%.'),
  together: leaf.whole('How many are worn or seen at one time.', 1),
  fragile: leaf.yesNo('Does it break easily?'),
  material: leaf.word('What it is made of: decides how long it dries.', materials),
  states: z
    .record(z.string(), state.nullish(), { error: 'states with undo, make, on camera' })
    .nullish()
    .describe('States as the script writes them, where the usual figures are wrong.'),
  piece: leaf.quantity('The length of one piece cut from a roll: 1.2 m.'),
  pack: leaf.quantity('What one pack, roll or bottle holds: 10, 5 m, 500 ml.'),
  pool: leaf.line('Lines with the same word here share packs.'),
  batteries: leaf.line('Batteries that each one needs on a shooting day: 4 AA.'),
  price: leaf.amount('Price of one piece (see "per"): 12.50, or 12.50 USD.'),
  per: leaf.word('What the price is for.', ['piece', 'pack', 'day', 'week', 'hire']),
  'tax included': leaf.yesNo('Is tax in the price?'),
  tax: leaf.percent('Rate of tax on this line: 20%.'),
  deposit: leaf.amount('Money left with the owner for one piece until it goes back.'),
  'deposit returned': leaf.date('Date the deposit came back.'),
  owner: leaf.line('Whose it is.'),
  collect: leaf.date('Date it is fetched.'),
  back: leaf.date('Date it must be back with its owner.'),
  delivery: leaf.days('Delivery in working days; of "2-4 days" the 4 counts.'),
  prep: leaf.listOf(prepTask, 'Work on it before the shoot, in order.', 'a list of tasks'),
  materials: leaf.listOf(material, 'Raw material for what is made.', 'a list of raw materials'),
  fitting: leaf.date('Date of its first fitting.'),
  test: leaf.date('Date of its camera test.'),
  rehearsal: leaf.date('Date of the rehearsal that needs it.'),
  ordered: leaf.date('Date it was ordered.'),
  promised: leaf.date('Date the supplier promised.'),
  received: leaf.date('Date it came.'),
  checked: leaf.date('Date it was found right.'),
  ready: leaf.date('Date all work on it was done.'),
  paid: leaf.amount('Paid, with tax. Once it is here or has a receipt, this is its price.'),
  owed: leaf.amount('What is still to be paid of it, where a part is paid.'),
  'paid on': leaf.date('Date it was paid.'),
  'paid by': leaf.line('Who paid.'),
  receipt: leaf.line('Number of the receipt.'),
  refund: leaf.amount('Money that came back.'),
  'refund on': leaf.date('Date it came back.'),
  problem: leaf.word('What went wrong with the order.', ['late', 'wrong', 'broken', 'cancelled']),
  replaces: leaf.line('Id of the thing this one stands in for.'),
  box: leaf.line('The box or bag it travels in.'),
  label: leaf.line('What is written on its copies; the tool adds -1, -2 …'),
  who: leaf.line('Id of the helper who looks after it.'),
  pictures: leaf.lines('Names of picture files.'),
  words: leaf.line('The exact words on a letter, sign, label or screen.'),
  weapon: weapon.nullish().describe('Filled in for anything that is a weapon or blade, toy or not.'),
  note: leaf.line('Anything else.'),
};

export const elementShape = z.strictObject(elementFields, {
  error: 'lines of its own, such as { get: buy, price: 12.50 }',
});

export const kitShape = z.strictObject(
  {
    name: leaf.line('How it prints.'),
    need: leaf.whole('How many are needed in all.'),
    ...elementFields,
  },
  { error: 'lines of its own, such as { get: buy, price: 12.50 }' },
);

/** One entry of `elements` as written. */
export type WrittenElement = z.output<typeof kitShape>;
