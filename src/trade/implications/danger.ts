import { noun, phrase, verb } from './cue.js';
import { caution, certain, type Implication, implies, likely, task } from './implication.js';
import { blows, climbing, fights } from './shared-cues.js';

/** Rows 11 to 14 and 43: fights, falls, climbing, running, crashes. */
export const danger: readonly Implication[] = [
  implies(11, 'fight', fights, {
    elements: [likely('mats and body pads', 'gear', 'mat pad', false)],
    tasks: [task('Fight: two hours of slow rehearsal, cleared floor, first aid.', 'certain')],
  }),
  implies(11, 'blow', blows, {
    tasks: [task('The blow misses: find the angle, rehearse slowly, agree a stop word.')],
  }),
  implies(
    12,
    'fall',
    [
      verb('collapse topple', {
        subject: 'PERSON',
        notNear: 'chair sofa couch bed armchair seat bench cot bunk laughter laughing pillows pillow deckchair',
      }),
      verb('tumble', { subject: 'PERSON', near: 'GROUND down over off' }),
      verb('trip', { subject: 'PERSON', notNear: 'switch alarm wire' }),
      phrase(
        'fall down|fall to the GROUND|fall off|fall over|fall against|fall from|fall backwards|fall headlong|fall through|crash to the GROUND|go sprawling|hits the floor|hit the floor|knock PERSON down|knocks PERSON over|lose ~ footing|falls flat',
        {
          subject: 'PERSON',
        },
      ),
      verb('slip', {
        subject: 'PERSON',
        near: 'ice mud wet GROUND',
        notObject: 'key note ring letter coin hand',
        notNear: 'hand pocket bag into past out',
      }),
    ],
    {
      tasks: [task('Fall: pad out of frame, floor cleared, cut before the landing.')],
    },
  ),
  implies(
    12,
    'hard-fall',
    [
      phrase(
        'fall from|fall off|fall through|fall down the stairs|fall down the steps|fall downstairs|tumble down|thrown from|go over the edge|fall backwards',
        { subject: 'PERSON', notNear: 'bicycle bike horse chair ice' },
      ),
      verb('collapse', { subject: 'PERSON', near: 'floor ground road street pavement dead unconscious' }),
    ],
    { elements: [likely('crash mat', 'gear', 'mat mattress', false)] },
  ),
  implies(
    13,
    'climb',
    [
      ...climbing,
      noun('ladder', { notNear: 'tights career social rope-ladder', notNext: 'back' }),
      phrase(
        'on the roof|edge of the roof|edge of the cliff|onto the roof|onto the ledge|over the edge|on the ledge|hangs from|dangle from|dangles from|on the scaffolding|over the railing|over the balcony|over the fence|over the wall',
        {
          subject: 'PERSON',
        },
      ),
    ],
    {
      tasks: [task('Height: shoot low and cheat it; ask the insurer.')],
    },
  ),
  implies(
    14,
    'jump-or-sprint',
    [
      verb('sprint vault leap gallop', { subject: 'PERSON', notNear: 'feet heart conclusion', notObject: 'heart' }),
      verb('jump', {
        subject: 'PERSON',
        near: 'from off over into onto across down out',
        notNear: 'sound noise bang voice startled conclusion queue rope skin',
      }),
      verb('run', {
        subject: 'PERSON',
        notObject:
          'hand finger tap bath thumb shop comb brush cloth eye water errand fingers hands palm business test bar place',
        near: 'down along across towards through up after away from out past off toward over for',
        notNear: 'tap engine',
        notNext: 'into out a his her low',
      }),
      verb('chase', { subject: 'PERSON', notObject: 'ball story money dream' }),
    ],
    {
      tasks: [task('Running or jumping: grip, walked floor, warm-up, few takes.', 'ask')],
    },
  ),
  implies(
    43,
    'crash',
    [
      verb('crash collide ram plough flip overturn', {
        subject: 'VEHICLE bike bicycle motorcycle train cart',
        notNear: 'door sack',
      }),
      verb('hit knock', { subject: 'VEHICLE motorcycle', object: 'PERSON dog tree wall post cyclist' }),
      phrase('runs PERSON over|run over by|crash into|crashes the car|car crash'),
    ],
    {
      elements: [likely('crash debris', 'dressing', 'wreck wreckage debris glass', false)],
      tasks: [caution('Do not stage a collision: cut around it, with sound and the aftermath.', 'certain')],
    },
  ),
  implies(85, 'restrained', [verb('handcuff cuff', { subject: 'PERSON', object: 'PERSON wrist hand' })], {
    elements: [certain('handcuffs with a quick release', 'props', 'handcuffs cuffs cuff', true)],
    tasks: [caution('Handcuffs: a spare key in two pockets; never locked to a fixed thing.')],
  }),
  implies(
    86,
    'tied-up',
    [
      verb('tie bind', {
        subject: 'PERSON',
        object: 'PERSON wrist hand ankle',
        notNear: 'lace shoelace hair apron tie bow',
      }),
      phrase('tied to a|tied to the', { notNear: 'boat dog horse rope dinghy post' }),
    ],
    {
      elements: [likely('soft rope', 'props', 'rope tape cord string cable-tie belt scarf', true)],
      tasks: [caution('Tied up: quick-release knot, scissors at hand, nothing on neck or mouth.')],
    },
  ),
  implies(
    87,
    'choking',
    [
      phrase('gag ~ PERSON|plastic bag over|noose'),
      verb('hang', { subject: 'PERSON', object: 'himself herself' }),
      verb('smother suffocate choke', { subject: 'PERSON', object: 'PERSON' }),
    ],
    {
      tasks: [caution('Nothing may tighten on neck or breath: fake it, agree a stop sign.', 'certain')],
    },
  ),
];
