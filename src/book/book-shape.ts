import { z } from 'zod';
import { backgroundShape } from './background-shape.js';
import { elementShape, kitShape } from './element-shape.js';
import * as leaf from './leaf-shapes.js';

const entries = <S extends z.ZodType>(shape: S, about: string) =>
  z.record(z.string(), shape.nullish(), { error: 'names, each with its own lines below it' }).nullish().describe(about);

const otherCost = z.strictObject(
  {
    what: z.string({ error: 'what it is for' }).describe('What it is for.'),
    cost: leaf.amount('The amount.'),
    per: leaf.word('How often.', ['once', 'day', 'head and day']),
    paid: leaf.amount('What of it is paid.'),
    'paid on': leaf.date('Date it was paid.'),
  },
  { error: 'what, cost, per' },
);

const money = z.strictObject(
  {
    currency: leaf.currency('Currency of the budget, as ISO 4217 writes it: EUR, USD, JPY.'),
    budget: leaf.amount('All the money there is.'),
    contingency: leaf.percent('Put aside on what is not yet paid: 10%, or 15% with water, animals or children.'),
    tax: leaf.percent('Rate of tax on prices without tax: 20%.'),
    'prices include tax': leaf.yesNo('Do prices include tax unless a line says otherwise?'),
    rates: z
      .record(z.string(), z.union([z.string(), z.number()]), { error: 'currency codes, each with a rate' })
      .nullish()
      .describe('Other currencies: what one unit is worth, and when: "USD: 0.92 on 2027-02-01".'),
    'other costs': leaf.listOf(
      otherCost,
      'Money no line of the script causes: crew food, fuel, parking.',
      'a list of costs',
    ),
  },
  { error: 'currency, budget, contingency, tax' },
);

const day = z.strictObject(
  {
    date: leaf.date('Date of the shooting day.'),
    call: leaf.clock('When work starts: 7:30.'),
    wrap: leaf.clock('When work ends: 18:00; past midnight as 1:30.'),
    at: leaf.lines('Real locations, by their id, in the order of the day.'),
    scenes: leaf.lines('Scenes in the order they are shot, by id or by number.'),
    meal: leaf.clock('When everyone eats.'),
    shot: leaf.yesNo('Is this day done?'),
    note: leaf.line('Anything else.'),
  },
  { error: 'a shooting day: date, call, wrap, at, scenes' },
);

/** Facts about a real location that print as they stand. */
export const locationFacts = [
  'contact',
  'permission',
  'parking',
  'power',
  'toilets',
  'warm room',
  'drying',
  'phone signal',
  'hospital',
  'noise',
  'note',
] as const;

const location = z.strictObject(
  {
    name: leaf.line('How it prints.'),
    address: leaf.line('Address for the call sheet.'),
    coordinates: leaf.coordinates('Latitude, longitude: 55.61, 12.34. Needed for sunrise and sunset.'),
    zone: leaf.line('Time zone: Europe/Copenhagen.'),
    contact: leaf.line('Who opens the door, and their number.'),
    permission: leaf.line('yes, no, or until when.'),
    parking: leaf.line('Where cars go.'),
    power: leaf.line('Sockets, and what they bear.'),
    toilets: leaf.line('Where.'),
    'warm room': leaf.line('Where wet people get warm.'),
    drying: leaf.line('Where wet things dry.'),
    'phone signal': leaf.line('Is there any?'),
    hospital: leaf.line('The nearest, with its address.'),
    noise: leaf.line('What spoils sound, and when.'),
    note: leaf.line('Anything else.'),
  },
  { error: 'a real location: name, address, coordinates, zone' },
);

const place = z.strictObject(
  {
    was: leaf.lines('Earlier ids of this place.'),
    at: leaf.lines('Ids of the real locations that play it.'),
    note: leaf.line('Anything else.'),
  },
  { error: 'at: the real locations that play it' },
);

const person = z.strictObject(
  {
    was: leaf.lines('Earlier ids of this person.'),
    'played by': leaf.line('The actor.'),
    phone: leaf.line('Private: printed only for whoever needs it.'),
    email: leaf.line('Private.'),
    minor: leaf.yesNo('Is the actor under age?'),
    'hours a day': leaf.hoursOfDay('Hours a day this person may work, as you were told by who decides it.'),
    transport: leaf.line('How they come.'),
    food: leaf.line('What they eat.'),
    sizes: z
      .record(z.string(), z.union([z.string(), z.number()]), { error: 'sizes, such as chest: 96 cm' })
      .nullish()
      .describe('Private: height, chest, waist, hip, inside leg, neck, head, glove, shoe.'),
    allergies: leaf.lines('Private: food, wool, latex, dye, make-up, animals.'),
    owns: leaf.lines('Own clothes that may be used.'),
    agreement: leaf.line('Signed, or what is open.'),
  },
  { error: 'a person: played by, phone, sizes, allergies' },
);

const helper = z.strictObject(
  {
    name: leaf.line('Name.'),
    does: leaf.listOf(
      z.enum(['props', 'costume', 'make-up', 'camera', 'sound', 'light', 'production', 'transport', 'food'], {
        error: 'one of props, costume, make-up, camera, sound, light, production, transport, food',
      }),
      'What they look after.',
      'a list of jobs, such as [props, costume, make-up, camera, sound, light, production, transport, food]',
    ),
    phone: leaf.line('Number.'),
    cash: leaf.amount('Money they were given to spend.'),
    allergies: leaf.lines('Private.'),
  },
  { error: 'a helper: name, does, phone' },
);

const supplier = z.strictObject(
  {
    name: leaf.line('Name.'),
    contact: leaf.line('Number or address.'),
    delivery: leaf.days('Delivery in working days; of "2-4 days" the 4 counts.'),
    delivers: leaf.weekdays('Days on which it delivers, when they differ from the working days: Mon-Sat.'),
    shipping: leaf.amount('Shipping for one order.'),
    'free from': leaf.amount('An order of this much ships free.'),
  },
  { error: 'a supplier: name, delivery, shipping' },
);

const scene = z.strictObject(
  {
    was: leaf.lines('Earlier ids of this scene.'),
    begin: leaf.clock('When it begins on its day, if the light or a guest decides it.'),
    setups: leaf.whole('Camera setups.', 1),
    takes: leaf.whole('Takes of each setup.', 1),
    shots: leaf.lines('One line a setup: what it must show.'),
    'in charge': leaf.line('Id of the helper who answers for its dangers.'),
    reset: leaf.lines('What is put back after each take, in order.'),
    'reset minutes': leaf.whole('Minutes to put everything back.'),
    cold: leaf.yesNo('Below 5 degrees: batteries count twice.'),
    note: leaf.line('Anything else.'),
  },
  { error: 'a scene: setups, takes, reset' },
);

const prep = z.strictObject(
  {
    starts: leaf.date('First day of preparation.'),
    'hours a day': leaf.hoursOfDay('Hours of work on things that one helper manages in a day of preparation.', 0.25),
    drier: leaf.yesNo('Is there a drier machine?'),
  },
  { error: 'starts, hours a day, drier' },
);

const usual = z.strictObject(
  {
    takes: leaf.whole('Takes of each setup.', 1),
    setups: leaf.whole('Setups that see something used up.', 1),
    rehearsals: leaf.whole('Rehearsals with the real thing.'),
    spare: leaf.percent('Spare for what is used up.'),
    call: leaf.clock('When a shooting day starts.'),
    wrap: leaf.clock('When it ends.'),
    'rest hours': leaf.hoursOfDay('Hours between wrap and the next call.'),
    'golden hour': leaf.degrees('Heights of the Sun between which you call it golden: -4 to 6.'),
    zone: leaf.line('Time zone where a location gives none: Europe/Copenhagen.'),
  },
  { error: 'takes, setups, rehearsals, spare' },
);

/** The whole production book as it is written. Nothing in it need be filled in. */
export const bookShape = z
  .strictObject(
    {
      money: money.nullish().describe('Currency, budget and what goes with them.'),
      prep: prep.nullish().describe('The time before the first shooting day.'),
      'working days': leaf.weekdays('Days on which suppliers work: Mon-Fri.'),
      holidays: leaf.listOf(leaf.date('A date.'), 'Dates on which nobody delivers.', 'a list of dates'),
      usual: usual.nullish().describe('Figures that hold where nothing else is said.'),
      days: leaf.listOf(day, 'The shooting days.', 'a list of shooting days'),
      locations: entries(location, 'Real locations, each under an id of your own.'),
      places: entries(place, 'Places of the story, by their id, and the locations that play them.'),
      people: entries(person, 'The cast, by the id of the part.'),
      background: entries(backgroundShape, 'People in the background, by the id of the group.'),
      helpers: entries(helper, 'Helpers, each under an id of your own.'),
      suppliers: entries(supplier, 'Shops, hire firms and lenders, each under an id of your own.'),
      scenes: entries(scene, 'Scenes, by their id.'),
      elements: entries(elementShape, 'Things of the script, by their id.'),
      kit: entries(kitShape, 'Things the script does not name: tape, batteries, towels.'),
      refused: leaf.lines('Ids of things that are not wanted.'),
      answers: z
        .record(z.string(), z.union([z.string(), z.number(), z.boolean()]), {
          error: 'question ids, each with an answer',
        })
        .nullish()
        .describe('Answers to questions, by the id of the question.'),
    },
    { error: 'money, days, places, people, elements …' },
  )
  .describe('The production book of a film: how it is got, made, paid and shot.');

/** The book as written, checked. */
export type WrittenBook = z.output<typeof bookShape>;
