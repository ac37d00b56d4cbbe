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
      tasks: [
        task(
          'Reflection: find the camera place first, cover cloth, crew in dark clothes; allow a third more time.',
          'ask',
        ),
      ],
    },
  ),
  implies(74, 'recorded-voice', [voice('voice-over')], {
    tasks: [
      task(
        'Voice-over: a recording session, timed against the picture; a voice is not a person on set unless also seen.',
      ),
    ],
  }),
  implies(
    74,
    'letter-read-over',
    [phrase('voice reads|letter is read|we hear PERSON read|reads the letter aloud|hear ~ voice')],
    {
      tasks: [task('A text is read over the picture: record it, and time it with the shots.')],
    },
  ),
  implies(
    75,
    'montage',
    [phrase('montage|series of shots|series of images|quick cuts|time-lapse', { heading: true })],
    {
      tasks: [
        task('Every image is a set-up of its own: list place, costume and props for each; few lines hide hours.'),
      ],
    },
  ),
  implies(
    76,
    'intercut',
    [phrase('intercut|intercutting|cutting between|split screen|split-screen', { heading: true })],
    {
      tasks: [
        task(
          'Both places at the same story time: eyelines, someone to read the other side; props twice if shot the same day.',
        ),
      ],
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
      tasks: [
        task(
          'Another time: its own costume day, younger or newer things; the scene after goes on where the last one stopped.',
        ),
      ],
    },
  ),
  implies(77, 'memory', [phrase('memory|dream|fantasy|vision|nightmare', { heading: 'only' })], {
    tasks: [
      task(
        'Inside a head: agree on a look that tells it apart; its own costume day; the scene after goes on where the last one stopped.',
      ),
    ],
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
      elements: [likely('high window, pole or drone', 'gear', 'drone crane helicopter', false)],
      tasks: [
        task(
          'View from above: would a high window or a hill do? A drone needs leave, a licensed pilot and little wind.',
        ),
      ],
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
      questions: [question('what-is-it', 'What is meant by "{object}"? Nothing before in this scene answers it.', '')],
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
