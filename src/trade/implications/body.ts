import { noun, phrase, state, verb } from './cue.js';
import { ask, certain, type Implication, implies, likely, question, questionOnce, task } from './implication.js';
import { blood } from './shared-cues.js';

const worn = 'PERSON GARMENT hair BODY';
const double = (kind: string) => likely(`${kind} costume double`, 'costumes', 'costume-double', true);

const stained = 'lap dress blouse shirt bodice tie skirt trousers front suit jacket apron sleeve';
const staining =
  'ALCOHOL tea coffee soup sauce gravy paint oil ketchup milk juice cocoa cream syrup ink mustard glass cup mug bowl';

/** A clean copy of what is dirtied on camera; whose it is only where the verb's subject is dirtied. */
const cleanCopies = (bySubject: boolean) => ({
  elements: [likely('clean costume double', 'costumes', 'costume-double', bySubject)],
  tasks: [task('Dirtied on camera: a clean copy for every take, and a wash between.')],
});

/** Rows 3, 9, 10 and 26: wet, blood, wounds, sickness. */
export const body: readonly Implication[] = [
  implies(
    3,
    'soaked',
    [
      state('soaked drenched sodden sopping waterlogged rain-soaked wet-through bedraggled', {
        object: worn,
        notNear: 'light sunlight sun blood sweat moonlight',
      }),
      state('dripping', { object: 'PERSON GARMENT hair', notNear: 'tap blood sarcasm sweat candle gutter' }),
      state('wet', {
        object: 'GARMENT',
        notObject: 'shoe shoes boot boots sock socks glove gloves hat cap scarf stocking tie',
        notNear: 'paint blood radiator line hang hangs hanging peg hook drying dry wrings pile basket',
      }),
      phrase('soaking wet|wet through|soaked to the skin|wet hair|wet clothes|wet coat', {
        notNear: 'light blood radiator line hang hangs hanging peg hook drying pile basket',
      }),
      verb('drip', { subject: 'PERSON GARMENT hair', object: 'NONE', notNear: 'sweat blood sarcasm paint' }),
    ],
    {
      elements: [double('dry')],
      tasks: [task('Wet: sprayer, towels, warm room, hair matched, floor covered.')],
    },
  ),
  implies(
    3,
    'made-wet',
    [
      verb('drench douse splash', { object: 'PERSON GARMENT', notNear: 'petrol gasoline perfume light blood face' }),
      verb('hose soak', { object: 'PERSON GARMENT', notNear: 'petrol sun bath' }),
      phrase(
        'bucket of water over|jug of water over|water over ~ head|jet of water ~ PERSON|land in ~ puddle|lands in ~ puddle|falls in ~ puddle',
        {
          notNear: 'cup',
        },
      ),
      phrase('head first into|headfirst into|backwards into', { near: 'WET water fountain trough', subject: 'PERSON' }),
    ],
    {
      elements: [likely('dry costume double', 'costumes', 'costume-double wetsuit', false)],
      tasks: [task('Wet: sprayer, towels, warm room, hair matched, floor covered.')],
    },
  ),
  implies(
    63,
    'dirtied-on-camera',
    [
      verb('fall slide roll crawl wade wallow kneel slip land sink sprawl', {
        subject: 'PERSON',
        near: 'mud muck slurry bog dung soot tar clay ditch',
        notNear: 'boots tyre tyres past edge beside by near along above over towards',
      }),
      verb('spill slop dribble upset', { subject: 'PERSON', near: 'herself himself', object: staining }),
      phrase('over himself|over herself|down himself|down herself', { subject: 'PERSON', near: staining }),
    ],
    cleanCopies(true),
  ),
  implies(
    63,
    'dirt-on-clothes',
    [
      verb('spill slop dribble upset', { subject: 'PERSON', near: stained, object: staining }),
      verb('slop splash drip', { subject: `it ${staining}`, near: stained }),
      phrase('down the front of|down the bodice', { notNear: 'house shop building button buttons' }),
      phrase('into ~ table of cakes|into the cake|into ~ trifle|covered in icing|covered in cake|custard pie'),
    ],
    cleanCopies(false),
  ),
  implies(9, 'bleeding', blood, {
    elements: [certain('stage blood', 'makeup', 'blood bleed bleeds bleeding nosebleed', true)],
    tasks: [task('Stage blood: test it on skin and cloth; wet or dried? Photograph each stain.', 'certain')],
  }),
  implies(
    9,
    'blood-on-clothes',
    [
      state('bloody bloodied blood-soaked bloodstained blood-stained blood-spattered blood-smeared', {
        object: 'GARMENT',
      }),
      phrase(
        'blood ~ GARMENT|blood soaks|blood spreads|blood seeps|blood on his GARMENT|blood on her GARMENT|blood drips|blood spatters',
        { notNear: 'floor' },
      ),
    ],
    { elements: [double('clean')], tasks: [task('Never stain a hired garment.', 'certain')] },
  ),
  implies(
    9,
    'is-it-blood',
    [
      noun('stain smear trickle drop droplet patch', {
        near: 'dark red crimson scarlet sticky',
        notNear: 'wine tea coffee ink paint lipstick oil rust water',
      }),
      noun('red', { near: 'hand shirt cloth water fingers bandage snow spreads seeps', prev: 'the' }),
    ],
    { questions: [question('is-it-blood', 'Is it blood that shows here?', 'BLOODY')] },
  ),
  implies(
    9,
    'is-it-hurt',
    [
      phrase(
        'press ~ to ~ side|clutch ~ side|hold ~ side|hand to ~ side|pressed to his side|pressed to her side|clutches ~ stomach',
        { subject: 'PERSON', notNear: 'laughter laughing laughs bag' },
      ),
    ],
    { questions: [question('is-there-blood', 'Is there a wound, and is blood seen?', 'BLOODY')] },
  ),
  implies(10, 'open-wound', [noun('wound gash graze', { notNear: 'pride ego car old healed' })], {
    elements: [ask('stage blood', 'makeup', 'blood bandage', true)],
  }),
  implies(
    10,
    'wound',
    [
      noun('wound gash graze bruise bruises black-eye scar scars burn burns blister cuts scratch scratches welt', {
        notNear: 'pride ego car table door paint landscape hillside record itch engine bridge rubber toast calories',
        notPrev: 'from',
      }),
      state('bruised wounded bandaged scarred grazed swollen battered scratched', {
        object: worn,
        notNear: 'pride ego',
      }),
      phrase('black eye|split lip|bloody nose|broken nose|swollen lip'),
      noun('stitches', { notNear: 'knit sew needle wool' }),
    ],
    {
      tasks: [task('Wound make-up, 15 to 40 minutes: its stage here? Photograph it.')],
    },
  ),
  implies(
    10,
    'side-of-wound',
    [
      noun('wound gash graze bruise scar burn scratch welt black-eye', {
        notNear: 'pride ego car table door paint landscape record itch engine rubber toast palm',
      }),
      phrase('black eye|split lip'),
    ],
    {
      questions: [
        questionOnce(
          'which-side',
          'On which side is the {head}?',
          'left right chin forehead nose both nape stomach chest back',
        ),
      ],
    },
  ),
  implies(
    10,
    'bandaging',
    [verb('bandage', { subject: 'PERSON' }), phrase('dress ~ wound|clean ~ wound|patch ~ up', { notNear: 'road' })],
    {
      elements: [certain('bandage', 'props', 'bandage bandages dressing plaster gauze', true)],
      tasks: [task('Fresh dressings for every take.')],
    },
  ),
  implies(
    26,
    'vomit',
    [
      verb('vomit puke', { subject: 'PERSON' }),
      phrase('throw up', { subject: 'PERSON', notObject: 'hand hands arm arms window dust' }),
      phrase('is sick|be sick|being sick|get sick', {
        near: 'into over bucket bowl toilet basin sink side rail gutter bag floor',
        notNear: 'of',
      }),
    ],
    {
      elements: [certain('edible vomit', 'food', 'vomit', true)],
      tasks: [task('A portion for every take; bowl and wipes out of frame.')],
    },
  ),
  implies(
    26,
    'spitting',
    [
      verb('spit', {
        subject: 'PERSON',
        notObject: 'word words line name question rain feather feathers fire insult',
        notNear: 'rain fat engine pan word words',
      }),
    ],
    { tasks: [task('Spitting: what, and onto what? Wipes ready.', 'ask')] },
  ),
];
