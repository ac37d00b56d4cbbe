import { inside, noun, phrase, state, verb } from './cue.js';
import { caution, certain, type Implication, implies, likely, question, task } from './implication.js';
import { lightingUp, smoking } from './shared-cues.js';

const lighting = 'lighter match matchbox lighters matches flint tinderbox zippo';

/** Rows 1, 2 and 19 to 21: tobacco, fire, candles, stoves. */
export const smokeAndFlame: readonly Implication[] = [
  implies(
    1,
    'lighting-up',
    [
      ...lightingUp,
      verb('light', { object: 'cigarette cigarettes cigar cigarillo pipe smoke joint roll-up fag cheroot' }),
      verb('light relight', {
        subject: 'PERSON NONE',
        object: 'it',
        near: 'cigarette cigar cigarillo pipe joint cheroot',
      }),
    ],
    { elements: [likely('matches or lighter', 'props', lighting)] },
  ),
  implies(1, 'smoking', [...lightingUp, ...smoking, noun('cigarette roll-up cheroot')], {
    elements: [certain('herbal cigarettes', 'props', 'cigarette roll-up cigar pipe joint vape e-cigarette')],
    tasks: [task('Herbal cigarettes, about five a set-up; ashtray; does the performer agree?')],
  }),
  implies(1, 'smoking-indoors', inside([...lightingUp, ...smoking, noun('cigarette roll-up cheroot')]), {
    tasks: [caution('Smoking indoors may be against the law.', 'ask')],
  }),
  implies(
    2,
    'pipe-or-cigar',
    [
      verb('smoke puff light relight chew fill', { subject: 'PERSON', object: 'pipe cigar cheroot' }),
      verb('light relight fill', { subject: 'PERSON NONE', object: 'it', near: 'pipe cigar cheroot' }),
      phrase('puff on ~ pipe|puff on ~ cigar|draw on ~ pipe|draw on ~ cigar|suck on ~ pipe'),
    ],
    {
      elements: [likely('tobacco substitute', 'props', 'tobacco cigar cheroot pouch', true)],
      tasks: [task('Tobacco substitute, tamper, spare matches; slow to light again.')],
    },
  ),
  implies(
    19,
    'fire',
    [
      phrase('catch fire|on fire|burst into flames|goes up in flames|set fire to|set ~ alight|set ~ ablaze'),
      verb('burn', {
        subject: 'fire letter paper photo photograph house car barn building candle log wood lamp torch stove flame',
        notObject: 'calorie',
      }),
      verb('burn torch ignite incinerate', {
        subject: 'PERSON',
        object: 'PAPER letter photo photograph book house car barn shed evidence file candle',
      }),
      verb('burn', { subject: 'PERSON', object: 'it them', near: 'PAPER letter file book' }),
      verb('light', {
        subject: 'PERSON',
        object:
          'corner tarpaulin curtain curtains paper edge letter rag half halves bonfire campfire fire fuse newspaper photograph',
        notObject: 'face',
      }),
      noun('bonfire campfire blaze inferno brazier'),
      state('burning flaming blazing', {
        object: 'car house barn orchard building wreck torch can bin paper letter van wood boat field forest room',
      }),
      noun('flame flames', { notNear: 'old eternal moth candle lamp lantern lighter match wick' }),
      noun('fire', {
        notNext: 'question questions escape door exit extinguisher',
        notPrev: 'under open ceasefire friendly rapid cease and',
        notNear: 'eyes heart belly engine alarm escape drill brigade truck gun guns rifle pistol electric',
      }),
    ],
    {
      elements: [certain('fire extinguisher', 'gear', 'extinguisher', false)],
      tasks: [task('Flame: written leave of the owner, and a base that cannot burn.')],
    },
  ),
  implies(
    19,
    'burnt-copies',
    [verb('burn torch ignite incinerate', { subject: 'PERSON', object: 'PAPER letter photo photograph book file' })],
    { tasks: [task('One copy to burn for every take and rehearsal: {object}.', 'certain')] },
  ),
  implies(
    20,
    'candle-lit-on-camera',
    [
      verb('light relight', {
        subject: 'PERSON',
        object: 'candle candles lantern lamp wick taper stove fire bonfire campfire fuse incense match',
        notNear: 'street electric bedside desk switch torch',
      }),
      verb('light relight', {
        subject: 'PERSON NONE',
        object: 'it',
        near: 'candle candles lantern lamp wick taper stove fire bonfire campfire fuse incense',
      }),
    ],
    { elements: [likely('matches or lighter', 'props', lighting)] },
  ),
  implies(
    20,
    'candle',
    [
      noun('candle candles candlelight oil-lamp taper tealight tea-light candelabra candlestick'),
      phrase('oil lamp|paraffin lamp|kerosene lamp|storm lantern|paper lantern'),
    ],
    {
      tasks: [task('Electric flicker, or spare candles burnt to matching lengths.')],
    },
  ),
  implies(
    21,
    'lit-stove',
    [
      noun('hearth embers fireside woodstove wood-burner'),
      noun('fireplace stove', {
        near: 'fire burn burning lit glow glows glowing crackle crackles crackling roar roars roaring log logs ember embers flame flames',
      }),
      phrase('smoke ~ chimney|chimney smokes|light ~ stove|light ~ gas'),
    ],
    {
      tasks: [
        task('Lit stove: a hidden lamp gives the glow; a real fire is heard in every line.'),
        caution('A real stove indoors: carbon monoxide alarm, aired room.', 'ask'),
      ],
    },
  ),
  implies(
    88,
    'birthday-cake',
    [phrase('blow out ~ candles|blow out ~ candle|blows the candles out'), noun('birthday-cake')],
    {
      elements: [likely('birthday cake', 'food', 'cake', false)],
      tasks: [task('One cake or set of candles for every take, candles of one length.')],
    },
  ),
  implies(89, 'blue-lights', [phrase('blue lights|blue light ~ flash|flashing blue|police lights|emergency lights')], {
    elements: [likely('flashing blue lamp', 'gear', 'police-car ambulance', false)],
    tasks: [caution('Flashing light can start a seizure: warn everyone.')],
  }),
  implies(
    90,
    'light-goes',
    [
      phrase(
        'lamp ~ dies|light ~ dies|lights die|lamp goes out|torch dies|lights go out|light goes out|power goes out|power cuts out|plunged into darkness|goes dark',
        {
          notNear: 'screen phone sky',
        },
      ),
      noun('blackout power-cut', { notNear: 'curtain blind' }),
    ],
    {
      tasks: [task('Light change on cue: who throws which switch?')],
    },
  ),
  implies(
    91,
    'strobe',
    [noun('strobe'), phrase('lights strobe|flickering lights'), state('strobing', { object: 'light lights' })],
    { tasks: [caution('Flashing light can start a seizure: warn everyone, later the audience too.')] },
  ),
  implies(
    2,
    'which-pipe',
    [noun('pipe', { prev: 'his', notNear: 'smoke light puff water drain gas leak plumber burst radiator' })],
    {
      questions: [
        question(
          'which-pipe',
          'Is the pipe a smoking pipe, and is it lit?',
          'tobacco smoke match fill light puff draw cough',
        ),
      ],
    },
  ),
];
