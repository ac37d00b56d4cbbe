import { noun, phrase, state, verb } from './cue.js';
import { caution, certain, type Implication, implies, likely, question, task } from './implication.js';

const notEaten =
  'PERSON tobacco matchstick straw toothpick cud matter lip nail nails tongue cheek fist words word pen pencil gum mile road distance heart thumb knuckle finger hook';

/** Rows 27, 28 and 67: eating, drinking, alcohol; with cooking. */
export const food: readonly Implication[] = [
  implies(
    27,
    'eating',
    [
      verb('eat devour gobble nibble munch', { subject: 'PERSON', notObject: notEaten }),
      verb('chew', { subject: 'PERSON', notObject: notEaten, notNear: 'lip nail pen pencil thoughtfully gum over' }),
      phrase(
        'bite into|take a bite|takes a bite|takes another bite|mouth full|mouthful of|wolfs down|wolf down|spoons ~ into ~ mouth|licks ~ ice-cream',
        { notNear: 'drink wine water pins nails pegs needles toothpaste' },
      ),
      verb('bite', { subject: 'PERSON', object: 'FOODS' }),
    ],
    {
      tasks: [task('Portions: takes times set-ups; level on the plate; allergies? Spit cup.')],
    },
  ),
  implies(27, 'eating-what', [verb('eat', { subject: 'PERSON', object: 'NONE', notNear: 'FOODS restaurant' })], {
    elements: [],
    questions: [question('what-food', 'What do they eat here?', 'FOODS', 'FOODS')],
  }),
  implies(
    27,
    'spooned',
    [
      verb('eat spoon sip slurp', {
        subject: 'PERSON',
        object: 'soup stew porridge cereal broth yoghurt yogurt ice-cream',
      }),
    ],
    {
      elements: [
        certain('spoon', 'props', 'spoon', true),
        likely('bowl', 'props', 'bowl plate tin can cup mug tub carton pan', true),
      ],
    },
  ),
  implies(
    28,
    'drinking',
    [
      verb('drink sip gulp swig guzzle', {
        subject: 'PERSON',
        notObject: 'view sight air silence breath scene blood poison bleach acid petrol hemlock arsenic potion',
        notNext: 'in',
      }),
      verb('drain', { subject: 'PERSON', object: 'VESSEL ALCOHOL' }),
      verb('toast', {
        subject: 'PERSON',
        notObject: 'FOODS bun marshmallow crumpet bagel teacake muffin hand hands foot feet',
        notNear: 'fire stick sticks fork flame grill toaster',
      }),
      phrase(
        'take a sip|takes a sip|take a swig|takes a gulp|raise ~ glass|raises ~ glass|clink glasses|clinks glasses|downs ~ pint|downs ~ glass',
      ),
    ],
    {
      elements: [likely('glass or cup', 'props', 'VESSEL', true)],
      tasks: [task('Drink: refill to one level, a spare glass.', 'ask')],
    },
  ),
  implies(
    28,
    'fizz',
    [
      noun('champagne prosecco lager beer cider cola lemonade soda tonic', {
        near: 'pour pours drink drinks sip sips toast glass glasses open opens pop pops cork',
        notNear: 'can cans crate crates empty',
      }),
    ],
    { tasks: [task('Fizz dies: open a fresh one for every take.', 'ask')] },
  ),
  implies(
    28,
    'drinks-poison',
    [
      phrase(
        'drink ~ bleach|drink ~ poison|drinks ~ poison|drinks bleach|drink ~ acid|swallow ~ poison|swallows ~ poison|drinks ~ potion',
      ),
    ],
    {
      tasks: [caution('Drunk as poison: water in a clean new container; the real thing stays off the set.', 'certain')],
    },
  ),
  implies(28, 'drinking-what', [verb('drink', { subject: 'PERSON', object: 'NONE it', notNext: 'in from to' })], {
    elements: [],
    questions: [question('what-drink', 'What is drunk here?', 'LIQUID', 'LIQUID')],
  }),
  implies(
    67,
    'alcohol',
    [
      phrase('downs ~ ALCOHOL|knocks back ~ ALCOHOL|finishes ~ ALCOHOL'),
      noun('ALCOHOL', { notNear: 'vinegar port-hole harbour ship', notNext: 'cellar crate crates gums' }),
      state('drunk tipsy drunken', { object: 'PERSON', notNear: 'power', notNext: 'on with' }),
      phrase('champagne cork|orders a round|at the bar|props up the bar', {
        notNear: 'snack steel metal',
        notNext: 'of',
      }),
    ],
    {
      tasks: [task('No alcohol on set: cold tea or coloured water, invented labels.')],
    },
  ),
  implies(
    67,
    'which-glass',
    [verb('drink sip gulp', { subject: 'PERSON', object: 'ALCOHOL' }), phrase('downs ~ ALCOHOL|knocks back ~ ALCOHOL')],
    {
      elements: [certain('glass', 'props', 'VESSEL', true)],
    },
  ),
  implies(
    97,
    'cooking',
    [
      verb('cook fry simmer roast', {
        subject: 'PERSON',
        notObject: 'feeling blood trouble heart ash ashes tea coffee',
        notNear: 'sleep bed chair uneasily awake slightly',
      }),
      verb('stir whisk', { subject: 'PERSON', near: 'pan pot saucepan stove hob soup stew sauce boil boils cauldron' }),
    ],
    {
      elements: [
        likely('pan', 'props', 'pan pot saucepan kettle wok skillet oven bowl frying-pan cauldron cup mug tin', true),
      ],
      tasks: [caution('Hot pan: a cold stove if you can; lid and fire blanket if not.')],
    },
  ),
  implies(
    97,
    'whisking',
    [
      verb('whisk', {
        subject: 'PERSON',
        object: 'it egg eggs cream batter NONE white whites',
        notNext: 'away off out',
      }),
    ],
    {
      elements: [
        likely('whisk or fork', 'props', 'whisk fork beater', true),
        likely('bowl', 'props', 'bowl jug pan saucepan basin', true),
      ],
    },
  ),
  implies(
    97,
    'boiling',
    [
      verb('boil', { subject: 'kettle pan pot saucepan water milk NONE', notNear: 'blood anger rage temper' }),
      phrase('boils over|boiling water|boiling oil|scalding'),
    ],
    { tasks: [caution('Boiling near people: cold water, steam from elsewhere; a dry floor.')] },
  ),
  implies(
    98,
    'opened-bottle',
    [
      phrase(
        'uncork ~ bottle|uncork the wine|opens a bottle|opens the wine|opens a beer|open a bottle|pops the cork|pop the cork|uncorks a bottle|uncorks the wine',
      ),
    ],
    {
      elements: [likely('corkscrew or bottle opener', 'props', 'corkscrew opener bottle-opener', true)],
      tasks: [task('One sealed bottle for every take.', 'certain')],
    },
  ),
  implies(98, 'popped-cork', [phrase('cork pop|champagne cork|pop ~ cork')], {
    tasks: [task('Cork: never at a face; a fresh bottle for every take, wipes.')],
  }),
  implies(
    98,
    'kettle',
    [
      phrase(
        'make tea|makes tea|make coffee|makes coffee|brews tea|making tea|making coffee|makes a pot of tea|makes a cup of tea|makes PERSON tea',
      ),
    ],
    {
      elements: [
        likely('kettle', 'props', 'kettle pot teapot urn machine cafetiere', true),
        likely('cups', 'props', 'cup mug glass teacup flask', true),
      ],
    },
  ),
  implies(
    27,
    'meal-laid',
    [
      noun('dinner lunch breakfast supper picnic feast banquet buffet', {
        near: 'table eat plate eats plates laid set serve serves spread blanket',
      }),
    ],
    {
      questions: [question('what-meal', 'What stands on the table for the {head}?', 'FOODS', 'FOODS')],
    },
  ),
];
