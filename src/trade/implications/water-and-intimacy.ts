import { noun, phrase, state, verb } from './cue.js';
import { caution, certain, type Implication, implies, likely, question, task } from './implication.js';
import { closeness } from './shared-cues.js';

/** Rows 22 to 25 and 59: water, bath, closeness, bed. */
export const waterAndIntimacy: readonly Implication[] = [
  implies(
    22,
    'poured-or-spilt',
    [
      verb('pour', {
        subject: 'PERSON',
        object: 'LIQUID NONE',
        notNear: 'scorn heart crowd',
        notNext: 'out over into',
      }),
      verb('spill', {
        subject: 'PERSON LIQUID VESSEL NONE jar box bag basket',
        object: 'LIQUID NONE',
        notObject: 'secret secrets bean beans gut guts',
        notSubject: 'light crowd people passenger moonlight sunlight GARMENT',
      }),
      verb('splash', { subject: 'PERSON water', notNear: 'colour headline' }),
      phrase(
        'top up ~ glass|top up ~ cup|refill ~ glass|refill ~ cup|fill ~ kettle|knocks over ~ glass|knocks over ~ cup|pour ~ down|pours himself|pours herself|pours PERSON a',
      ),
    ],
    {
      tasks: [task('Poured or spilt: refill and wipe for every take; dry cuffs.', 'ask')],
    },
  ),
  implies(
    23,
    'into-the-water',
    [
      verb('swim', { subject: 'PERSON', notNear: 'eyes head vision' }),
      verb('wade', {
        subject: 'PERSON',
        notNear: 'paper papers paperwork argument crowd mud snow grass corn leaves nettles rubbish',
      }),
      verb('dive plunge jump fall leap step walk drop slide', {
        subject: 'PERSON',
        next: 'into in off',
        near: 'river lake sea pond pool canal water harbour tide',
        notNear: 'boat bag pocket',
      }),
      phrase(
        'break the surface|over the side|overboard|through the ice|up to ~ chin|up to ~ waist|up to ~ neck|into the river|into the lake|into the sea|into the pond|into the pool|into the water|in the shallows|waist-deep|knee-deep|chest-deep|treads water|under water|underwater|swept away',
        {
          subject: 'PERSON',
          notNear: 'stone pebble stares looks gazes stare look gaze throws tosses flings skims',
        },
      ),
      verb('drown', { subject: 'PERSON', notNear: 'sorrow paperwork noise' }),
      noun('water waters', { heading: 'only', notNext: 'tower treatment works mill park company' }),
    ],
    {
      elements: [certain('dry costume double', 'costumes', 'costume-double wetsuit', true)],
      tasks: [
        task('Into water: rescuer, wetsuit under the costume, hot drink, short takes.'),
        caution('Must it be open water? Depth, cold and current decide, not this line.'),
      ],
    },
  ),
  implies(
    24,
    'bath-or-shower',
    [
      verb('shower bathe', {
        subject: 'PERSON',
        notObject: 'gift kiss PERSON insult praise wound dog baby cat BODY cut graze',
        notNear: 'light praise gifts confetti sparks',
      }),
      phrase(
        'in the bath|in the bathtub|in the tub|in the shower|from the shower|into the bath|into the tub|into the shower|out of the bath|out of the shower|under the shower|run a bath|runs the bath',
        {
          notNear:
            'dog duck clothes shirt dishes sleep sleeps asleep hide hides dress suit coat clothed dressed empty dry',
        },
      ),
    ],
    {
      elements: [
        likely('modesty wear', 'costumes', 'swimsuit trunks underwear costume', true),
        likely('towel', 'props', 'towel', true),
      ],
      tasks: [
        task('Warm water for every take, a dry robe, steam on the lens.'),
        caution('Closed set; agree beforehand what is seen.'),
      ],
    },
  ),
  implies(25, 'closeness', closeness, {
    tasks: [caution('Talk it through before the day; consent in writing; closed set.', 'certain')],
  }),
  implies(
    25,
    'undressed',
    [
      verb('undress strip', {
        subject: 'PERSON',
        object: 'NONE himself herself PERSON',
        notNear: 'wallpaper bed paint',
      }),
      state('naked nude topless', { object: 'PERSON body back shoulder NONE' }),
      phrase('make love|makes love|having sex'),
    ],
    { elements: [likely('cover garments and a robe', 'costumes', 'robe', true)] },
  ),
  implies(
    59,
    'in-bed',
    [
      phrase(
        'in bed|into bed|out of bed|lies on ~ bed asleep|under the covers|under the duvet|under the blankets|pulls back the covers|pull the covers',
        { subject: 'PERSON', notNear: 'flower garden river' },
      ),
      verb('sleep wake doze', { subject: 'PERSON', near: 'bed bunk cot mattress duvet pillow sheets covers bedroom' }),
    ],
    {
      elements: [
        likely(
          'nightwear',
          'costumes',
          'pyjamas pajamas nightgown nightdress nightshirt t-shirt underwear naked nightclothes shirt dress coat suit clothed dressed',
          true,
        ),
        likely(
          'bedding',
          'dressing',
          'bed bunk cot mattress bedding sheet sheets duvet blanket blankets quilt pillow pillows covers',
          false,
        ),
      ],
      tasks: [task('In bed: photograph bedding and hair; bare shoulders, cover garments.')],
    },
  ),
  implies(
    59,
    'asleep',
    [
      verb('sleep doze', { subject: 'PERSON', notObject: 'foot' }),
      state('asleep', { object: 'PERSON' }),
      phrase('wakes up|wake up|wakes with a start', { subject: 'PERSON' }),
    ],
    {
      tasks: [task('Asleep or waking: hair and creases match.', 'ask')],
    },
  ),
  implies(
    95,
    'washing-up',
    [phrase('wash ~ dishes|washes up|washing up|scrubs ~ pan|dries ~ dishes|does the dishes')],
    {
      elements: [likely('dishes and washing-up bowl', 'props', 'dish dishes sponge cloth', true)],
      tasks: [task('Washing up: does the tap work, and where does it drain?')],
    },
  ),
  implies(96, 'hair-or-face', [verb('shave', { subject: 'PERSON', notObject: 'cheese seconds', notNear: 'tried' })], {
    elements: [
      certain('razor without a blade', 'props', 'razor shaver clippers', true),
      likely('shaving foam', 'props', 'foam lather soap', true),
    ],
    tasks: [task('Shaving: growth is gone after one real shave; fake it, or shoot it last.')],
  }),
  implies(96, 'hair-cut', [verb('cut trim', { subject: 'PERSON', object: 'hair fringe beard' })], {
    elements: [certain('scissors', 'props', 'scissors clippers razor shears', true)],
    tasks: [task('Hair cannot be cut twice: a hairpiece, or one take after the long-hair scenes.')],
  }),
  implies(
    96,
    'hair-brush',
    [
      verb('brush comb', {
        subject: 'PERSON',
        object: 'hair beard mane',
        notNear: 'hand fingers fingertips eyes face strand lock aside',
      }),
    ],
    {
      elements: [certain('hairbrush or comb', 'props', 'brush comb hairbrush', true)],
    },
  ),
  implies(96, 'teeth', [verb('brush', { subject: 'PERSON', object: 'tooth teeth' })], {
    elements: [certain('toothbrush and toothpaste', 'props', 'toothbrush toothpaste', true)],
    tasks: [task('Teeth: water, spit cup, paste for every take.')],
  }),
  implies(24, 'which-bath', [noun('bath', { near: 'sit sits lie lies lying soak soaks', notNear: 'bird mat' })], {
    questions: [question('bath-seen', 'What is seen of the person in the bath?', 'clothed dressed empty')],
  }),
];
