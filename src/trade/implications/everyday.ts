import { phrase, verb } from './cue.js';
import { caution, certain, type Implication, implies, likely, task } from './implication.js';

const who = { subject: 'PERSON' } as const;

/** Row 65 and additions: verbs that hold a tool nobody names. */
export const everyday: readonly Implication[] = [
  implies(
    65,
    'digging',
    [
      verb('dig', {
        ...who,
        notNext: 'them it out into',
        notObject: 'key keys phone wallet note coin cash photo card ring letter heel nail nails',
        notNear: 'pocket bag purse handbag rucksack drawer heels past heel nails pockets ribs food elbow',
      }),
      verb('bury', {
        ...who,
        notObject: 'face head hand hands nose BODY herself himself',
        notNear: 'face pillow book shoulder paperwork',
      }),
      phrase('open grave|shallow grave|freshly dug|a hole in the ground|fills in the hole|fill in the grave'),
    ],
    {
      elements: [certain('spade', 'props', 'spade shovel trowel digger fork pickaxe bare hands grave', true)],
      tasks: [
        task('Digging: leave of the owner, soil loosened, refill, dirty doubles.'),
        caution('Cables and pipes in the ground: ask before the first spade; nobody in a deep hole.'),
      ],
    },
  ),
  implies(
    102,
    'sweeping',
    [
      verb('sweep', {
        ...who,
        object: 'floor yard step steps path leaf leaves room glass crumbs pavement street porch NONE',
        notNext: 'in past out into across through',
        notNear: 'hair arm hand eyes gaze torch beam cape gown',
      }),
    ],
    {
      elements: [likely('broom', 'props', 'broom brush besom', true)],
    },
  ),
  implies(102, 'mopping', [verb('mop', { ...who, notObject: 'brow forehead face neck' })], {
    elements: [certain('mop and bucket', 'props', 'mop', true)],
  }),
  implies(102, 'vacuuming', [verb('vacuum hoover', who)], {
    elements: [certain('vacuum cleaner', 'props', 'vacuum hoover cleaner', true)],
  }),
  implies(102, 'ironing', [verb('iron', { ...who, notNext: 'out' })], {
    elements: [certain('iron and board', 'props', 'iron', true)],
    tasks: [caution('A cold iron and a little steam from elsewhere will do.')],
  }),
  implies(102, 'hot-iron', [phrase('hot iron|iron hisses|iron steams|steam iron')], {
    tasks: [caution('A cold iron and a little steam from elsewhere will do.')],
  }),
  implies(
    102,
    'laundry',
    [
      phrase(
        'hangs out the washing|hang out the washing|hangs the washing|pegs out|folds laundry|does the laundry|hanging washing|hanging out washing',
      ),
    ],
    {
      elements: [likely('washing with line and pegs', 'props', 'peg line basket clothesline laundry', true)],
    },
  ),
  implies(
    103,
    'hammering',
    [
      verb('hammer nail', {
        ...who,
        notObject: 'door horn piano table key fist keys down',
        notNear: 'fist fists door keyboard horn typewriter piano glass',
      }),
    ],
    {
      elements: [certain('hammer and nails', 'props', 'hammer mallet', true)],
    },
  ),
  implies(103, 'sawing', [verb('saw', { ...who, object: 'wood plank log branch pipe leg board timber beam bars' })], {
    elements: [certain('saw', 'props', 'saw hacksaw chainsaw', true)],
  }),
  implies(103, 'drilling', [verb('drill', { ...who, notObject: 'troops recruits PERSON' })], {
    elements: [certain('drill', 'props', 'drill', true)],
  }),
  implies(
    103,
    'chopping',
    [phrase('chop wood|chops wood|chopping wood|splits logs|split logs|splitting logs|chops logs')],
    {
      elements: [certain('axe and logs', 'props', 'axe hatchet', true)],
      tasks: [caution('A swung axe: empty ground around it, and practised hands.')],
    },
  ),
  implies(103, 'painting', [verb('paint', { ...who, notObject: ' smile nails toenails face lips' })], {
    elements: [certain('paintbrush and paint', 'props', 'brush paintbrush roller spray paint', true)],
    tasks: [task('How far is it painted in each shot? Paint that wipes off.')],
  }),
  implies(103, 'sewing', [verb('sew stitch darn', { ...who, notNear: 'wound' })], {
    elements: [certain('needle and thread', 'props', 'needle thread machine', true)],
  }),
  implies(103, 'knitting', [verb('knit', { ...who, notObject: 'brow brows' })], {
    elements: [certain('knitting needles and wool', 'props', 'knitting needle needles wool yarn', true)],
  }),
  implies(
    103,
    'measuring',
    [verb('measure', { ...who, notObject: 'word words flour sugar dose breath', notNear: 'eyes glance' })],
    {
      elements: [likely('tape measure', 'props', 'tape ruler measure yardstick stick', true)],
    },
  ),
  implies(
    104,
    'watering',
    [
      phrase(
        'water the plants|waters the plants|watering the plants|waters the flowers|watering the flowers|waters the garden|waters the roses|waters a plant|waters the geraniums',
      ),
    ],
    {
      elements: [certain('watering can', 'props', 'can hose jug bottle watering-can sprinkler', true)],
    },
  ),
  implies(104, 'mowing', [phrase('mows the lawn|mow the lawn|mowing the lawn|mows the grass|cuts the grass')], {
    elements: [certain('lawnmower', 'props', 'mower lawnmower scythe', true)],
  }),
  implies(104, 'raking', [verb('rake', { ...who, notObject: 'hair eyes money', notNear: 'hair fingers hand' })], {
    elements: [certain('rake', 'props', 'rake', true)],
  }),
  implies(
    104,
    'fishing',
    [
      phrase('casts his line|casts a line|casts her line|reels in|goes fishing|is fishing|reel in', {
        notNear: 'horror',
      }),
      verb('fish', { ...who, object: 'NONE', notNext: 'out for in around', notNear: 'pocket bag drawer net' }),
    ],
    {
      elements: [certain('fishing rod', 'props', 'rod line net', true)],
    },
  ),
  implies(
    105,
    'stamping',
    [verb('stamp', { ...who, object: 'form passport card book ticket document papers permit letter' })],
    { elements: [certain('rubber stamp and ink pad', 'props', 'stamp', true)] },
  ),
  implies(
    105,
    'weighing',
    [
      verb('weigh', { ...who, notObject: 'word words option options anchor it', notNear: 'hand hands palm' }),
      verb('weigh', {
        ...who,
        object: 'it',
        near: 'scale scales gram grams ounce ounces kilo kilos pound pounds flour counter',
      }),
    ],
    { elements: [likely('scales', 'props', 'scale scales balance', true)] },
  ),
  implies(105, 'wrapping', [verb('wrap', { ...who, object: 'present gift parcel box' })], {
    elements: [certain('wrapping paper', 'props', 'paper foil newspaper cloth', true)],
    tasks: [task('Wrapped on camera: paper and tape for every take.', 'certain')],
  }),
  implies(105, 'blown-nose', [phrase('blows his nose|blows her nose|blow his nose|blow her nose|blows their nose')], {
    elements: [likely('tissue or handkerchief', 'props', 'tissue handkerchief hankie sleeve kleenex', true)],
  }),
  implies(
    105,
    'make-up-put-on',
    [
      phrase(
        'does her make-up|puts on make-up|puts on her make-up|applies make-up|paints her nails|does her makeup|applies her makeup|puts on makeup',
      ),
    ],
    {
      elements: [likely('make-up kit', 'props', 'lipstick mascara powder compact polish varnish brush', true)],
    },
  ),
  implies(106, 'nappy', [phrase('changes a nappy|changes the nappy|changes the baby|changes a diaper')], {
    elements: [certain('nappy and wipes', 'props', 'nappy diaper', true)],
  }),
  implies(106, 'vape', [phrase('vapes|vaping', who), verb('vape', who)], {
    elements: [certain('e-cigarette', 'props', 'vape e-cigarette', true)],
    tasks: [caution('Vapour is smoke to a fire alarm, and to asthma.')],
  }),
  implies(
    107,
    'till',
    [phrase('ring up ~ sale|ring up ~ purchase|ring up the|at the till|opens the till|behind the till')],
    {
      elements: [likely('till', 'props', 'till register cash-register', true)],
      tasks: [task('Till: does the drawer open, and what change lies in it?', 'ask')],
    },
  ),
  implies(
    108,
    'spoilt-copies',
    [
      verb('spill knock tip', {
        near: 'contract letter paper papers book map drawing drawings document photograph',
        object: 'LIQUID',
      }),
      phrase(
        'crumples ~ letter|crumple ~ paper|crumples ~ paper|crumples ~ note|screws up ~ paper|scrunches ~ paper|crumples it',
      ),
    ],
    { tasks: [task('Spoilt on camera: a copy for every take and rehearsal.', 'certain')] },
  ),
];
