import { type Cue, noun, phrase, state, verb } from './implications/cue.js';
import { fights, shotHeard, shots, weaponDrawn } from './implications/shared-cues.js';

/** Cues that count only where passers-by may see. */
function outside(cues: readonly Cue[]): Cue[] {
  return cues.map((cue) => ('limits' in cue ? { ...cue, limits: { ...cue.limits, setting: 'EXT' } } : cue));
}

/** What raises the hazards of weapons, and of crime in view. */
export const cuesOfForce: Readonly<Record<string, readonly Cue[]>> = {
  H1: [
    noun('WEAPON musket blunderbuss luger derringer holster ammunition cartridge squib silencer', {
      modifier: true,
      notPrev: 'glue staple nail radar water ink big',
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
    noun('BLADE lance rapier cutlass dagger bayonet stiletto harpoon pitchfork', {
      notNear: 'propeller fan wiper grass shoulder ice coat crochet',
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
  H21: [
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
