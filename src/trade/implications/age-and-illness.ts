import { noun, phrase, state, verb } from './cue.js';
import { caution, certain, type Implication, implies, likely, question, task } from './implication.js';

/** Rows 48, 49, 63, 64 and 66: pregnancy, age, dirt, death, medicine. */
export const ageAndIllness: readonly Implication[] = [
  implies(
    48,
    'pregnant',
    [state('pregnant', { notObject: 'pause silence moment' }), phrase('months gone|expecting a baby|baby bump')],
    {
      elements: [certain('pregnancy belly', 'costumes', 'belly bump', true)],
      tasks: [task('Belly: a bigger costume, and rehearse the walk.')],
      questions: [
        {
          ...question(
            'which-month',
            'Which month of the pregnancy is it here?',
            'eight nine seven six five four months 8 9 7 6',
          ),
          answeredBy: 'the script',
        },
      ],
    },
  ),
  implies(
    49,
    'age-changed',
    [
      phrase(
        'years younger|years older|now old|visibly aged|aged by|as a young man|as a young woman|younger self|older self|younger version|older version|ten years on|grown old',
      ),
      phrase('a younger PERSON|an older PERSON|young version of|the younger PERSON', {
        notNear: 'brother sister son daughter',
      }),
    ],
    {
      tasks: [task('Another age: hair, hands and neck too; things new then look new.')],
      questions: [question('same-performer', 'Is it the same performer made up, or another one?', '')],
    },
  ),
  implies(
    63,
    'dirtied',
    [
      state(
        'muddy mud-caked mud-spattered mud-covered dust-covered filthy grimy ragged tattered threadbare grubby oil-stained sooty soot-covered paint-spattered flour-covered',
        {
          object: `GARMENT PERSON`,
        },
      ),
      phrase(
        'caked in mud|covered in mud|covered in dust|covered in dirt|covered in flour|covered in soot|streaked with mud|spattered with mud|caked in dirt|covered in paint|covered in oil',
        {
          notNear: 'table furniture sofa shelf shelves car',
        },
      ),
    ],
    {
      elements: [likely('broken-down costume double', 'costumes', 'costume-double', true)],
      tasks: [task('Write down the dirt recipe; is the clean version needed before or after?')],
    },
  ),
  implies(
    64,
    'faint-or-death',
    [
      verb('faint', { subject: 'PERSON' }),
      verb('die', { subject: 'PERSON', notNear: 'laughter laughing inside to engine' }),
      phrase(
        'pass out|lies dead|lie dead|dead man|dead woman|dead boy|dead girl|drop dead|dead body|the body of|loses consciousness|goes limp|stops breathing',
        {
          notNear: 'flyer flyers leaflet leaflets paper papers drink drinks water',
        },
      ),
      noun('corpse cadaver'),
      state('unconscious lifeless dead', {
        object: 'PERSON body',
        notObject: 'phone battery',
        notNear: 'phone battery tired on',
      }),
      noun('body', {
        near: 'drag drags carries grave sheet trunk boot cold still wrapped covered river canal stretcher morgue slab floor',
        notNear: 'own language warm',
      }),
    ],
    {
      tasks: [task('Lying still: cushions, mark the position, few long takes.')],
    },
  ),
  implies(
    66,
    'injection',
    [
      verb('inject', { subject: 'PERSON NONE' }),
      noun('syringe hypodermic catheter'),
      noun('drip', { near: 'arm hospital stand bag iv vein bed hook stretcher', notNear: 'tap gutter ceiling' }),
    ],
    {
      elements: [certain('syringe without a needle', 'props', 'syringe hypodermic drip', true)],
      tasks: [caution('No needle on set; fake the angle. Nothing goes into a body.', 'certain')],
    },
  ),
  implies(
    66,
    'medicine',
    [
      noun('pill pills medicine medication painkiller painkillers aspirin inhaler cough-syrup'),
      noun('tablet tablets', { near: 'swallow take bottle water two blister packet doctor' }),
    ],
    {
      tasks: [
        task('Sugar or vitamin copies, invented label: swallowed or hidden? Count per take.'),
        caution('Keep real medicine off the set; ask about allergies and sugar.'),
      ],
    },
  ),
  implies(
    93,
    'tears',
    [
      verb('cry sob weep', { subject: 'PERSON', notSubject: 'baby infant newborn', notObject: 'out' }),
      phrase('tears run|tears stream|tears roll|in tears|wipes away a tear'),
    ],
    {
      tasks: [task('Tears: tissues, make-up repair after each take.', 'ask')],
    },
  ),
  implies(
    94,
    'sweat',
    [
      state('sweating sweaty', { object: 'PERSON GARMENT BODY' }),
      phrase('beads of sweat|drenched in sweat|soaked in sweat|slick with sweat'),
    ],
    {
      elements: [certain('sprayed sweat', 'makeup', 'sweat', true)],
      tasks: [task('Sweat: glycerine and water sprayed; match it between takes.')],
    },
  ),
];
