import { type Cue, noun, phrase, state, verb } from './implications/cue.js';
import { fights, shotHeard, shots, weaponDrawn } from './implications/shared-cues.js';

/** Cues that count only where passers-by may see. */
function outside(cues: readonly Cue[]): Cue[] {
  return cues.map((cue) => ('limits' in cue ? { ...cue, limits: { ...cue.limits, setting: 'EXT' } } : cue));
}

const abstract = 'silence peace dream dreams heart hopes hope life illusion record nerve calm';

/** Glass and crockery that break, and their shards. */
const glass: readonly Cue[] = [
  verb('shatter', {
    subject: 'PERSON NONE GLASSY it jar test-tube tube',
    notSubject: abstract,
    notObject: abstract,
    notNear: abstract,
  }),
  verb('smash', { object: 'GLASSY', notObject: 'door guitar phone clock chair table radio', notNear: abstract }),
  verb('smash', { subject: 'GLASSY', notSubject: 'door chair table', object: 'NONE' }),
  verb('break', {
    object: 'glass window bottle mirror vase jar plate pane bowl bulb',
    notSubject: 'sun dawn light day',
    notNext: 'down up into off out in free',
  }),
  verb('break', {
    subject: 'glass window bottle mirror vase jar plate pane bowl bulb',
    object: 'NONE',
    notNext: 'down up into off out in free',
  }),
  noun('shard shards', {}),
  phrase('through the glass', { near: 'crash crashes falls smash smashes fist hand arm punches throws' }),
  phrase('broken pane|cracked pane|smashed pane'),
  phrase('throw ~ through ~ window|hurl ~ through ~ window|fling ~ through ~ window|brick through', {
    subject: 'PERSON',
  }),
  phrase(
    'broken glass|broken bottle|broken bottles|jagged neck|glass everywhere|smashed glass|smashed window|broken window|broken mirror|pieces of glass|splinters of glass|piece of glass|sliver of glass',
    { notNear: 'stares looks gazes watches seen sees' },
  ),
  noun('glass', { near: 'shatter shatters shattered splinters dustpan barefoot', notNear: 'whisky wine water' }),
];

/** What raises the hazards of weapons, and of crime in view. */
export const cuesOfForce: Readonly<Record<string, readonly Cue[]>> = {
  H1: [
    noun('WEAPON musket blunderbuss luger derringer holster ammunition cartridge squib silencer', {
      modifier: true,
      notPrev: 'glue staple nail radar water ink big jump',
      notNext: 'metal dog fire',
    }),
    noun('sniper gunman'),
    noun('gunshot gunfire', { notNear: 'dog horse strap' }),
    noun('bullet bullets', { notPrev: 'silver magic', notNext: 'point points train' }),
    ...shots,
    ...shotHeard,
    ...weaponDrawn,
    phrase('at gunpoint|starting pistol'),
    phrase(
      'drop the gun|drop the rifle|drop the pistol|put the gun down|put down the gun|put that gun|lower the gun|drop that gun|give me the gun|put the rifle down',
      {
        spoken: true,
      },
    ),
    state('armed', {
      object: 'PERSON guard guards officer men man soldier robber robbers police',
      notNear: 'forces tattooed',
    }),
  ],
  H2: [
    noun('BLADE', {
      near: 'fork forks',
      notNear: 'lay lays plate plates napkin set sets tray eat eats cutlery supper dinner',
    }),
    noun('pin pins needle needles', { near: 'mouth mouthful teeth lips', notNear: 'rolling drill tooth' }),
    phrase('jagged neck|jagged edge|jagged glass'),
    noun('slingshot catapult', { near: 'shoot shoots aims aim fires fire stone pulls lets' }),
    noun('billhook javelin cut-throat cut-throats fencer fencers meat-hook tomahawk'),
    phrase(
      'meat hook|craft knife|cut-throat razor|cut-throat|paper knife ~ throat|glass cutter|barbed wire|box cutter',
      {
        notNear: 'business competition world',
      },
    ),
    verb('strop bone', { subject: 'PERSON' }),
    noun('chainsaw hacksaw bandsaw scalpel boxcutter box-cutter crossbow'),
    noun('BLADE lance rapier cutlass dagger bayonet stiletto harpoon pitchfork', {
      notNear: 'propeller fan wiper grass shoulder ice coat crochet fork forks',
      notNext: 'of block',
      notPrev: 'grappling coat cup curtain picture',
    }),
    noun('saw', { near: 'cut cuts blade wood hand teeth log logs bench' }),
    verb('sharpen', { subject: 'PERSON', notNear: 'pencil pencils crayon senses focus' }),
    verb('stab slash', { subject: 'PERSON NONE', notObject: 'finger button air key price prices budget' }),
    verb('cut', {
      subject: 'PERSON',
      object: 'FOODS rope string tape cord loaf ribbon net lace laces',
      notNear: 'scissors',
    }),
    verb('slice chop carve fillet gut', { subject: 'PERSON', notObject: 'NONE air way path name' }),
    phrase('slit ~ throat|knife to ~ throat|at knifepoint|cut ~ throat'),
    phrase(
      'drop the knife|put the knife down|put down the knife|put that knife|give me the knife|drop that knife|lower the knife|put that blade',
      {
        spoken: true,
      },
    ),
  ],
  H24: glass,
  H21: [
    phrase(
      'break into a car|break into the car|break into a house|break into the shop|smash the window of|pick the lock|picks the lock',
      {
        subject: 'PERSON',
        setting: 'EXT',
      },
    ),
    phrase('through the window with|in through the window', {
      subject: 'PERSON',
      setting: 'EXT',
      near: 'sack swag mask torch bag',
    }),
    verb('snatch grab', { subject: 'PERSON', object: 'handbag purse', setting: 'EXT' }),
    phrase('masked man|masked men|masked figure|masked gunman|in handcuffs', { setting: 'EXT' }),
    verb('rob mug burgle abduct kidnap', { subject: 'PERSON NONE', notNear: 'cradle sleep' }),
    noun('robbery heist hostage kidnapper robber burglar mugging hold-up', {}),
    noun('policeman policewoman constable policemen cop cops patrolman patrolmen', {}),
    noun('siren', { setting: 'EXT', notNear: 'song FARAWAY far away', notNext: 'song call' }),
    phrase(
      'police officer|police officers|police car|patrol car|squad car|police uniform|armed police|balaclava|ski mask|bank robbery|held at gunpoint|prison uniform|army uniform',
    ),
    noun('police', { modifier: true, heading: true, notNear: 'grammar' }),
    noun('uniform', { near: 'police army guard soldier officer security paramedic military' }),
    noun('soldier paramedic', { notNear: 'toy lead tin toast egg eggs' }),
    verb('handcuff arrest', { object: 'PERSON wrist wrists' }),
    ...outside([
      noun('WEAPON musket blunderbuss luger derringer', {
        modifier: true,
        notPrev: 'glue staple nail radar water ink big flare',
        notNext: 'metal dog fire',
      }),
      ...shots,
      ...weaponDrawn,
      ...fights,
      verb('stab slash', { subject: 'PERSON', object: 'PERSON' }),
      noun('gunman sniper'),
    ]),
  ],
};
