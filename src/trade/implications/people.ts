import { noun, phrase, state, verb } from './cue.js';
import { caution, certain, type Implication, implies, likely, question, task } from './implication.js';

const exact =
  'one two three four five six seven eight nine ten eleven twelve fifteen twenty thirty forty fifty hundred single lone another no';

const extras = 'Extras: the least number, looks, release forms, food, toilets.';

/** Rows 46, 47 and 50 to 54: children, crowds, parties, song and dance. */
export const people: readonly Implication[] = [
  implies(
    46,
    'child',
    [
      noun('child kid boy girl toddler schoolboy schoolgirl teenager schoolchild pupil infant', {
        notNear: 'delivery old poster photo photograph portrait statue doll',
        notPrev: 'old delivery wonder golden bad',
      }),
      state('-year-old', {}),
    ],
    {
      tasks: [task('Child: licence, hours and chaperone weeks ahead; the performer’s real age?')],
    },
  ),
  implies(
    47,
    'baby',
    [
      noun('baby newborn infant', {
        notNear:
          'tomato corn grand shower monitor photo photograph tooth next upstairs distance somewhere audience crowd',
        notNext: 'monitor shower grand blue carriage powder bottle clothes grow',
      }),
    ],
    {
      elements: [likely('rehearsal doll', 'props', 'doll', false)],
      tasks: [task('Baby: minutes only, parent beside the camera, the cry recorded apart.')],
    },
  ),
  implies(
    50,
    'group',
    [
      noun('CROWD', {
        notNear: 'toast egg eggs toy lead tin',
        notPrev: 'one two three four five six a an another single lone each every the',
      }),
    ],
    {
      tasks: [task(extras)],
    },
  ),
  implies(
    51,
    'some-people',
    [
      phrase(
        'several PEOPLE|a few PEOPLE|some PEOPLE|a handful of PEOPLE|dozens of PEOPLE|a group of PEOPLE|a couple of PEOPLE|a line of PEOPLE|a dozen PEOPLE|many PEOPLE|a crowd of PEOPLE|various PEOPLE|other PEOPLE',
        {
          notNear: 'minutes hours days times others half pot drawer',
        },
      ),
      noun('crowd audience congregation mob gang choir'),
    ],
    {
      tasks: [task(extras)],
    },
  ),
  implies(
    52,
    'occasion',
    [
      phrase('wedding reception', { heading: true }),
      noun('party wedding funeral wake banquet feast', {
        heading: true,
        notPrev: 'search third political rescue labour conservative',
        notNear: 'election politics search',
        notNext: 'ring dress invitation photo photograph leader line',
      }),
    ],
    {
      tasks: [task('Occasion: dress of extras, tables, food for all takes, music rights.')],
    },
  ),
  implies(
    52,
    'flowers',
    [noun('wedding funeral', { heading: true, modifier: true, notNext: 'ring dress invitation photo photograph' })],
    {
      elements: [likely('flowers', 'plants', 'flower wreath bouquet rose lily confetti bloom', false)],
    },
  ),
  implies(
    53,
    'song-or-dance',
    [
      verb('sing croon', { subject: 'PERSON', notNear: 'praises' }),
      phrase('slow-dance|slow-dances|slow-dancing'),
      verb('dance waltz', { subject: 'PERSON', notNear: 'around-the eyes' }),
      verb('hum whistle', { subject: 'PERSON', notObject: 'dog', notNear: 'for taxi kettle engine dog' }),
    ],
    {
      elements: [
        likely(
          'song or tune to be cleared',
          'music',
          'song tune music melody hymn waltz lullaby anthem carol band record aria ballad radio',
          false,
        ),
      ],
      tasks: [task('Which song? Rights (a hummed tune counts), playback, rehearsal.')],
    },
  ),
  implies(
    54,
    'instrument',
    [
      verb('play strum pluck practise practice', {
        subject: 'PERSON',
        near: 'PLAYABLE',
        object: 'chord scale note tune something nothing NONE song waltz',
      }),
      verb('play strum pluck practise practice', {
        subject: 'PERSON',
        object: 'PLAYABLE',
        notObject: 'game card part role',
      }),
      phrase('at the piano|at the organ|at the drums', { subject: 'PERSON' }),
    ],
    {
      elements: [
        likely(
          'music for playback',
          'music',
          'song tune music melody hymn waltz scale scales chord chords sonata nocturne prelude',
          false,
        ),
      ],
      tasks: [task('Can the performer play? Tuned instrument, hand double, playback.')],
    },
  ),
  implies(54, 'which-instrument', [verb('strum', { subject: 'PERSON', object: 'NONE chord' })], {
    elements: [likely('guitar', 'props', 'PLAYABLE', true)],
  }),
  implies(
    99,
    'cards',
    [
      phrase(
        'play cards|plays cards|playing cards|deals the cards|deal the cards|shuffles the cards|play poker|playing poker',
      ),
    ],
    {
      elements: [certain('pack of cards', 'props', 'card deck', true)],
      tasks: [task('Fix the order of the cards for every take.')],
    },
  ),
  implies(
    99,
    'board-game',
    [phrase('play chess|plays chess|playing chess|play draughts|playing draughts|play dominoes|playing dominoes')],
    {
      elements: [certain('game set', 'props', 'board chessboard chess-set dominoes draughts chess', true)],
      tasks: [task('Photograph the position for every set-up.')],
    },
  ),
  implies(
    99,
    'ball',
    [
      phrase(
        'play football|plays football|playing football|plays catch|play catch|kick about|playing tennis|play tennis|playing basketball|plays basketball|shoots hoops',
      ),
    ],
    {
      elements: [certain('ball', 'props', 'ball football basketball racket', true)],
    },
  ),
  implies(
    46,
    'child-age',
    [state('young', { object: 'boy girl child PERSON', near: 'school schoolbag satchel playground pigtails' })],
    {
      questions: [{ ...question('what-age', 'How old is the {object}?', exact), answeredBy: 'the script' }],
      tasks: [caution('Young performer? Ask the age early; the law on hours follows it.', 'ask')],
    },
  ),
];
