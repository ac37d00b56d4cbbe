import { noun, phrase, verb } from './cue.js';
import { certain, type Implication, implies, likely, question, task } from './implication.js';

/** Rows 29, 37 to 39 and 81: what is broken, paid, locked, packed. */
export const inTheHand: readonly Implication[] = [
  implies(
    29,
    'shattered',
    [
      verb('smash shatter', {
        subject: 'PERSON GLASSY',
        object: 'GLASSY NONE window',
        notObject: 'PERSON record silence dream nose face door phone radio',
        notNear: 'record silence dream hopes heart',
      }),
      verb('break', { object: 'GLASSY', notSubject: 'sun dawn light day', notNext: 'down up into off out in free' }),
      verb('break', { subject: 'GLASSY', notNext: 'down up into off out in free', object: 'NONE' }),
      verb('break shatter smash', { subject: 'it', object: 'NONE', next: '.' }),
      phrase(
        'brick ~ through|stone ~ through|throw ~ through ~ window|hurl ~ through ~ window|to smithereens|glass breaks|glass shatters|sound of breaking glass',
      ),
    ],
    {
      elements: [
        certain('broken pieces', 'props', 'shard piece fragment splinter pieces shards fragments debris', false),
      ],
      tasks: [task('Breakaway copies for every take, a whole one; pieces stay for the next scene.', 'certain')],
    },
  ),
  implies(
    29,
    'lies-broken',
    [
      phrase(
        'glass everywhere|in pieces on|lies in pieces|in shards|broken glass|broken pane|broken bottle|broken plate',
      ),
    ],
    {
      tasks: [task('Broken pieces: soft or blunt where anyone walks; counted after every take.', 'certain')],
    },
  ),
  implies(
    29,
    'snapped',
    [
      verb('break snap smash', {
        subject: 'PERSON',
        object: 'stick pencil pen twig chair cane broom oar key violin guitar ruler phone door lock seal bread-stick',
      }),
    ],
    {
      tasks: [task('Broken on camera: one {object} for every take, and a whole one.', 'certain')],
    },
  ),
  implies(
    37,
    'paying',
    [
      verb('tip', { subject: 'PERSON', object: 'waiter driver porter waitress him her them barman bellboy' }),
      verb('pay bribe', {
        subject: 'PERSON',
        notObject:
          'attention respect mind heed visit tribute price compliment hat cap head bucket bin glass cup lorry wheelbarrow chair table water balance',
        notNext: 'over off up out backward back',
        notNear: 'attention heed mind over',
      }),
      phrase(
        'hands over ~ change|counts out ~ change|counts ~ money|drops ~ coin|small change|gives PERSON change|pays with',
      ),
    ],
    {
      elements: [
        certain(
          'money or card',
          'props',
          'cash note coin card wallet purse money change bill banknote coins notes cheque pound dollar fiver tenner token fare',
          true,
        ),
      ],
      tasks: [task('Prop money by your country’s rules; how much, and what change?')],
    },
  ),
  implies(
    37,
    'cash',
    [
      noun('cash banknote banknotes money', { notNear: 'register machine box laundering point' }),
      phrase('wad of notes|bundle of notes|stack of bills|roll of notes|wad of bills|wad of cash'),
    ],
    {
      tasks: [task('How much, in what notes? Copies must not pass for real: the law says how.')],
    },
  ),
  implies(
    38,
    'locking',
    [
      verb('unlock', {
        subject: 'PERSON',
        object:
          'NONE it door gate box chest drawer car cupboard padlock cabinet safe case trunk shed cell boot handcuffs shop shutter bike desk',
        notObject: 'phone screen mystery',
        notNear: 'code keypad combination bolt latch bolts fingerprint',
      }),
      verb('lock', {
        subject: 'PERSON',
        object: 'it door gate box chest drawer car cupboard cabinet safe case trunk shed cell shop shutter bike',
        notObject: 'eye eyes arm arms gaze horns',
        notNear: 'eyes gaze code bolt latch bolts',
      }),
    ],
    {
      elements: [likely('key', 'props', 'key keys keycard fob keyring', true)],
      tasks: [task('A lock that works with this key; a spare; one keeper.', 'ask')],
    },
  ),
  implies(
    39,
    'packing',
    [
      verb('pack unpack', {
        subject: 'PERSON',
        notNext: 'up in it',
        notObject:
          'tram train room hall pub bar house stadium lorry court handcart cart van car boat punch punches heat lunch meat gun pistol',
      }),
      phrase('packs a bag|packs his bag|packs her bag|packs a suitcase|throws clothes into|stuffs clothes into'),
    ],
    {
      elements: [likely('bag or suitcase', 'props', 'BAG boxes cardboard van car', true)],
      tasks: [task('List what goes in; the same contents later.')],
    },
  ),
  implies(
    39,
    'luggage',
    [
      noun('suitcase trunk holdall rucksack', {
        near: 'heavy drag drags heave heaves lug lugs carries carry haul hauls packed',
        notNear: 'tree elephant swimming car',
      }),
    ],
    {
      tasks: [task('What is in the {head}? Weight it to look full.')],
    },
  ),
  implies(
    81,
    'vague-plural',
    [
      phrase(
        'the usual|his things|her things|their things|the tools|his stuff|her stuff|their stuff|the supplies|her belongings|his belongings|their belongings|all the gear|the equipment|odds and ends|bits and pieces|the essentials|personal effects|assorted junk',
        { notNear: 'way thinks' },
      ),
      noun('belongings paraphernalia bric-a-brac knick-knacks', { notPrev: 'his her their' }),
    ],
    {
      questions: [question('list-what', 'What exactly are "{head}"? List each thing.', 'such including')],
    },
  ),
];
