import { noun, phrase, verb } from './cue.js';
import { certain, type Implication, implies, likely, question, task } from './implication.js';

const pens = 'pen pencil marker chalk quill crayon biro felt-tip ballpoint stylus charcoal paintbrush typewriter';

/** Rows 30 to 33 and 36: what is torn, written, read, opened, photographed. */
export const paper: readonly Implication[] = [
  implies(
    30,
    'torn',
    [
      verb('tear rip shred', { subject: 'PERSON', object: 'PAPER', notNext: 'down into at through along past' }),
      phrase(
        'tear up|tears up|rips up|tear ~ in half|tears ~ in two|tear ~ to pieces|tears ~ in half|rips ~ in half|tears ~ to pieces|rips ~ to pieces|tears a page|rips a page',
        { notNear: 'eyes road street' },
      ),
    ],
    {
      tasks: [task('Torn on camera: a copy for every take and rehearsal, scored to tear alike.', 'certain')],
    },
  ),
  implies(
    31,
    'writing',
    [
      verb('write scribble scrawl jot', {
        subject: 'PERSON',
        notNext: 'off',
        notNear:
          'screen keyboard email text types song play phone laptop computer stick finger lipstick spray sand steam',
      }),
      verb('sign', {
        subject: 'PERSON',
        object: 'WRITTEN NONE it',
        notNext: 'off to for in',
        notNear: 'language hands deaf',
      }),
      verb('draw sketch doodle', {
        subject: 'PERSON',
        object: 'picture map face line plan sketch circle cross house heart shape portrait arrow diagram cartoon horse',
      }),
      phrase('takes notes|take notes|fills in ~ form|fills out ~ form|signs ~ name|signs on the|signs for ~ parcel', {
        notNear: 'mental',
      }),
    ],
    {
      elements: [certain('pen', 'props', pens, true)],
      tasks: [task('Writing: blank copies for every take and a finished one; left-handed?')],
    },
  ),
  implies(
    31,
    'written-on',
    [
      verb('write scribble scrawl jot', { subject: 'PERSON', object: 'NONE', notNext: 'off' }),
      phrase('takes notes|take notes'),
    ],
    {
      elements: [
        likely(
          'notebook or paper',
          'props',
          'WRITTEN window glass mirror sand wall hand blackboard screen keyboard laptop typewriter phone desk pad exercise-book clipboard computer',
          true,
        ),
      ],
    },
  ),
  implies(
    32,
    'read-on-camera',
    [
      verb('read', { subject: 'PERSON', object: 'READABLE', notObject: 'face mind room lip future thought' }),
      verb('scan study skim', {
        subject: 'PERSON',
        object: 'letter note newspaper form menu telegram list contract document report',
      }),
    ],
    {
      tasks: [task('Write its exact words; print one for the hand, one for the close shot.', 'certain')],
    },
  ),
  implies(
    32,
    'reading-what',
    [
      verb('read', {
        subject: 'PERSON',
        object: 'NONE',
        notNext: 'out aloud the his her',
        notNear: 'READABLE face mind',
      }),
    ],
    {
      questions: [question('what-is-read', 'What is being read?', 'READABLE screen phone', 'READABLE')],
    },
  ),
  implies(
    33,
    'opened-seal',
    [
      verb('open unwrap unseal', {
        subject: 'PERSON',
        object: 'envelope letter parcel package packet present gift crate telegram',
      }),
      phrase(
        'tear open|rips open|breaks the seal|slits ~ envelope|tears ~ open|rips ~ open|rip open|break the seal|peel off ~ tape',
        { notNear: 'shirt door blouse wound' },
      ),
    ],
    {
      tasks: [task('A sealed copy for every take; what opens it?', 'certain')],
    },
  ),
  implies(
    33,
    'what-is-inside',
    [verb('open unwrap unseal', { subject: 'PERSON', object: 'parcel package packet present gift crate' })],
    {
      questions: [
        question('what-is-in', 'What is in the {object}?', 'inside contain contains reveal reveals find finds out'),
      ],
    },
  ),
  implies(
    36,
    'picture-of-someone',
    [
      noun('photograph photo portrait snapshot polaroid', {
        notNear: 'take takes album landscape passport',
        notNext: 'album booth',
        notPrev: 'a',
      }),
      phrase(
        'framed photograph|framed photo|a photograph of|a photo of|portrait of|picture of PERSON|wedding photo|family photo',
      ),
    ],
    {
      tasks: [task('Take this photograph before the shoot, in that age and costume.')],
    },
  ),
  implies(
    36,
    'taking-a-picture',
    [
      phrase(
        'take a photo|takes a photo|take a picture|takes a picture|takes a photograph|takes photos|takes pictures|snaps a picture|snaps a photo|takes a selfie|take a selfie|takes PERSON picture',
      ),
      verb('photograph', { subject: 'PERSON' }),
    ],
    {
      elements: [certain('camera or phone', 'props', 'camera phone mobile smartphone polaroid tablet', true)],
    },
  ),
];
