import { noun, phrase, verb, voice } from './cue.js';
import { type Implication, implies, likely, question, task } from './implication.js';

const spoken = { onlySpoken: true } as const;

/** Rows 68, 74 to 77, 79, 80 and 82: mirrors, recorded voices, montage, flashback, views from above, pronouns, things only spoken of. */
export const telling: readonly Implication[] = [
  implies(
    68,
    'mirror',
    [
      noun('mirror reflection', { notNear: 'rear-view rearview wing thought', notNext: 'image' }),
      phrase('reflected in|reflects in ~ window|reflects in ~ glass|in the shop window'),
    ],
    {
      tasks: [task('Reflection: camera place first, cover cloth, a third more time.', 'ask')],
    },
  ),
  implies(74, 'recorded-voice', [voice('voice-over')], {
    tasks: [task('Voice-over: record it, and time it against the picture.')],
  }),
  implies(
    74,
    'letter-read-over',
    [phrase('voice reads|letter is read|we hear PERSON read|reads the letter aloud|hear ~ voice')],
    {
      tasks: [task('Read over the picture: record it, and time it with the shots.')],
    },
  ),
  implies(
    75,
    'montage',
    [phrase('montage|series of shots|series of images|quick cuts|time-lapse', { heading: true })],
    {
      tasks: [task('Montage: list each image as a set-up, with place, costume, props.')],
    },
  ),
  implies(
    76,
    'intercut',
    [phrase('intercut|intercutting|cutting between|split screen|split-screen', { heading: true })],
    {
      tasks: [task('Intercut: eyelines, someone to read the other side, props twice.')],
    },
  ),
  implies(
    77,
    'flashback',
    [
      phrase('flashback|dream sequence|nightmare sequence|years earlier|years later|years before', {
        heading: true,
        notNear: 'card stick lane loss blurred field peripheral',
      }),
    ],
    {
      tasks: [task('Another time: its own costume day, newer things.')],
    },
  ),
  implies(77, 'memory', [phrase('memory|dream|fantasy|vision|nightmare', { heading: 'only' })], {
    tasks: [task('In the mind: a look of its own, and its own costume day.')],
  }),
  implies(
    79,
    'from-above',
    [
      phrase(
        "aerial view|aerial shot|bird's-eye view|bird 's eye view|seen from above|from high above|drone shot|overhead shot|high above the town|high above the city",
        { heading: true },
      ),
    ],
    {
      elements: [likely('drone or high window', 'gear', 'drone crane helicopter', false)],
      tasks: [task('From above: would a high window or a hill do?')],
    },
  ),
  implies(
    80,
    'what-is-it',
    [
      verb('pick grab take hand pass open drop throw lift carry pull pocket hide burn', {
        object: 'it them',
        nothingBefore: true,
        subject: 'PERSON',
        notNear: 'easy turns in hand hands breath',
      }),
      phrase('the other one|the others', {
        nothingBefore: true,
        near: 'pick pulls takes hands opens throws grabs carries',
      }),
    ],
    {
      questions: [question('what-is', 'What is meant by "{object}"? Nothing before in this scene answers it.', '')],
    },
  ),
  implies(
    82,
    'only-spoken',
    [
      noun('gun rifle pistol revolver shotgun knife sword bomb', spoken),
      noun('dog horse snake', spoken),
      noun('helicopter ambulance tractor motorbike', spoken),
    ],
    {
      tasks: [task('Only spoken of: {head}. Get nothing unless a later draft shows it.', 'ask')],
    },
  ),
];
