import { noun, phrase, state, verb } from './cue.js';
import { caution, certain, type Implication, implies, likely, questionUnlessSeenLater, task } from './implication.js';

const uniform = 'uniform costume robe robes suit jacket tunic plain-clothes plainclothes overcoat';

/** One trade that is known by its dress. */
function dressOf(id: string, trade: string, garment: string, unless: string, strength = certain): Implication {
  return implies(
    60,
    id,
    [
      noun(trade, {
        notNear: 'photo portrait statue poster series locomotive coal tender toast egg eggs toy tin',
        notNext: 'station car office bag appointment surgery officer record dog',
      }),
    ],
    {
      elements: [strength(garment, 'costumes', `${uniform} ${unless}`, false)],
    },
  );
}

/** Rows 60 to 62, 69 and 70: uniforms, changes, borrowed clothes, pockets, jewellery. */
export const costume: readonly Implication[] = [
  dressOf(
    'police-dress',
    'policeman policewoman constable policemen cop cops patrolman',
    'police uniform',
    'detective',
  ),
  dressOf('nurse-dress', 'nurse nurses', "nurse's uniform", 'scrubs tunic apron'),
  dressOf('doctor-dress', 'doctor surgeon', 'white coat or scrubs', 'coat scrubs gown stethoscope', likely),
  dressOf('paramedic-dress', 'paramedic paramedics', "paramedic's uniform", 'hi-vis vest overalls', likely),
  dressOf('priest-dress', 'priest vicar bishop', 'clerical collar or vestments', 'collar cassock vestment vestments'),
  dressOf('nun-dress', 'nun nuns', "nun's habit", 'habit veil'),
  dressOf('soldier-dress', 'soldier soldiers sentry', "soldier's uniform", 'fatigues helmet'),
  dressOf('waiter-dress', 'waiter waitress waiters waitresses', "apron or waiter's jacket", 'apron waistcoat', likely),
  dressOf('chef-dress', 'chef', "chef's whites", 'whites apron hat'),
  dressOf('fire-dress', 'firefighter fireman firemen firefighters', 'fire service clothing', 'helmet'),
  dressOf('bride-dress', 'bride', 'wedding dress', 'dress gown veil'),
  implies(60, 'judge-dress', [noun('judge', { near: 'court bench gavel courtroom chambers robe verdict sentence' })], {
    elements: [likely("judge's robe", 'costumes', `${uniform} wig gown`, false)],
  }),
  dressOf(
    'builder-dress',
    'builder builders scaffolder',
    'work clothes with helmet',
    'helmet vest overalls hi-vis',
    likely,
  ),
  implies(
    60,
    'uniform-in-public',
    [
      noun('policeman policewoman constable cop paramedic soldier firefighter sentry patrolman', {
        notNear: 'toast egg toy tin',
      }),
      phrase('police officer|police officers|police uniform|army uniform|in uniform', {
        notNear: 'photograph photo picture portrait painting',
      }),
      noun('uniform', {
        near: 'police army guard soldier officer prison paramedic military',
        notNear: 'photograph photo picture portrait painting',
      }),
    ],
    {
      tasks: [task('Uniform: what does the law allow? Invented badges, a coat over it between takes.')],
    },
  ),
  implies(60, 'officer-dress', [phrase('police officer|police officers')], {
    elements: [certain('police uniform', 'costumes', `${uniform} detective`, false)],
  }),
  implies(
    61,
    'garment-moves',
    [
      verb('remove shed don', { subject: 'PERSON', object: 'GARMENT' }),
      phrase(
        'take off ~ GARMENT|takes ~ off ~ GARMENT|put on ~ GARMENT|puts on ~ GARMENT|pulls on ~ GARMENT|pull on ~ GARMENT|slip off ~ GARMENT|slips off ~ GARMENT|shrug off ~ GARMENT|hands PERSON ~ GARMENT|drapes ~ GARMENT|kicks off ~ GARMENT|throws ~ GARMENT over|takes ~ GARMENT off|hang up ~ GARMENT|hang his GARMENT|hang her GARMENT|hang the GARMENT',
        { subject: 'PERSON' },
      ),
    ],
    {
      tasks: [task('On or off on camera: where does it go, and who has it next?', 'ask')],
    },
  ),
  implies(
    62,
    'wrong-size-or-owner',
    [
      state('oversized borrowed ill-fitting outgrown hand-me-down', { object: 'GARMENT PERSON' }),
      phrase(
        'hangs off ~ shoulders|swims in the GARMENT|swims in his GARMENT|swims in her GARMENT|too big for|too large for|too small for|sizes too big|sizes too large|sizes too small|several sizes too|two sizes too|much too big|far too big',
        { near: 'GARMENT' },
      ),
      phrase('in his GARMENT|wearing his GARMENT|wears his GARMENT|wrapped in his GARMENT', { subject: 'she her' }),
      phrase('in her GARMENT|wearing her GARMENT|wears her GARMENT', { subject: 'he him' }),
    ],
    { tasks: [task('Whose garment, in what size, and who has it next?')] },
  ),
  implies(
    69,
    'from-the-pocket',
    [
      phrase(
        'from ~ pocket|out of ~ pocket|into ~ pocket|in ~ breast pocket|from inside ~ coat|from inside ~ jacket|from under ~ coat|from ~ sleeve|out of ~ sleeve|up ~ sleeve|inside ~ jacket|into ~ coat|tucks ~ into ~ belt|into his sock|into her sock|down his sock|down her sock|from his sock|from her sock',
        {
          notNear: 'hand hands fists',
        },
      ),
      verb('pocket', { subject: 'PERSON' }),
    ],
    { tasks: [task('A working pocket of that size; try weight and noise.', 'ask')] },
  ),
  implies(
    69,
    'hidden-thing',
    [
      verb('hide conceal', {
        subject: 'PERSON',
        object: 'letter gun knife key money ring note phone bag box envelope bottle photograph book package diary it',
        notNear: 'smile face feelings',
      }),
    ],
    {
      tasks: [task('Hidden on camera: does the place take the {object}, and quietly?')],
    },
  ),
  implies(
    70,
    'jewellery-or-glasses',
    [
      noun('necklace bracelet locket earring earrings brooch pendant wristwatch spectacles', {
        notNear: 'key keys gas stones tree',
        notPrev: 'it a-the',
      }),
      noun('ring', {
        near: 'finger fingers hand hands wedding engagement gold silver diamond ruby jewel jeweller wears wearing slides twists velvet box shines',
        notNear:
          'kettle hob gas-ring boils boxing phone bell key keys circus tent goat horse bath smoke onion telephone doorbell tree stone gas stones fairy finger-food',
        notNext: 'road binder main pull tone fingers',
        notPrev: 'boxing bullfighting across',
      }),
      noun('ring', { prev: 'his her my wedding engagement gold diamond', notNear: 'phone bell doorbell' }),
      noun('glasses', {
        near: 'nose wear wears wearing reading face eyes polish polishes pushes removes puts lens thick takes',
        notNear: 'wine champagne beer pint tray water drink drinks clink fill fills bar',
      }),
    ],
    {
      tasks: [task('Small worn thing: a duplicate, size tried on, glare.', 'ask')],
    },
  ),
  implies(
    70,
    'checked-watch',
    [
      phrase(
        'check ~ watch|checks ~ watch|looks at ~ watch|glances at ~ watch|look at ~ wrist|checks the time|taps ~ wrist',
      ),
    ],
    {
      elements: [likely('watch or phone', 'props', 'watch phone wristwatch clock mobile', true)],
      tasks: [task('What time does it show? Set it to the story and stop it.', 'ask')],
    },
  ),
  implies(
    100,
    'chained-owner',
    [
      phrase(
        'puts ~ coat around|puts ~ jacket around|puts ~ coat round|puts ~ jacket round|puts ~ coat over|drapes ~ coat over|drapes ~ jacket over|wraps ~ scarf around|gives ~ coat to|lends ~ coat',
        { near: 'PERSON' },
      ),
    ],
    {
      questions: [questionUnlessSeenLater('who-keeps', 'Who has the garment after this scene?')],
    },
  ),
  implies(
    100,
    'armed-guard',
    [state('armed', { object: 'PERSON guard guards officer men man soldier robber', notNear: 'tattooed forces' })],
    {
      elements: [certain('replica weapon', 'props', 'WEAPON BLADE baton truncheon club', true)],
      tasks: [caution('Armed with what? Every weapon goes on the weapon list.', 'certain')],
    },
  ),
];
