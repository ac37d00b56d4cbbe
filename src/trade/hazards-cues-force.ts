import { type Cue, category, noun, phrase, state, verb } from './implications/cue.js';
import { blows, climbing, fights, shotHeard, shots, weaponDrawn } from './implications/shared-cues.js';

/** Cues that count only where passers-by may see. */
function outside(cues: readonly Cue[]): Cue[] {
  return cues.map((cue) => ('limits' in cue ? { ...cue, limits: { ...cue.limits, setting: 'EXT' } } : cue));
}

/** What raises the hazards of force: weapons, fights, explosions, height, crime in view. */
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
  H3: [
    ...fights,
    ...blows,
    verb('push choke', { subject: 'PERSON', object: 'PERSON', notNear: 'wheelchair swing pram trolley' }),
    verb('struggle', {
      subject: 'PERSON',
      notNear:
        'lock jar lid zip bag bags words breath key suitcase button umbrella tears tie box boxes corkscrew luggage trolley',
      notNext: 'to up into',
    }),
    verb('collapse tumble topple', {
      subject: 'PERSON',
      notNear: 'chair sofa couch bed armchair seat laughter laughing pillows pillow bench',
    }),
    verb('trip stumble', { subject: 'PERSON', near: 'GROUND down over fall falls forward on root', notNear: 'words' }),
    verb('fall', {
      subject: 'PERSON',
      near: 'GROUND down off over from backwards through headlong onto into overboard',
      notNear: 'asleep love silent silence step bed sofa place behind habit chair pillow',
    }),
    verb('jump leap dive vault plunge', {
      subject: 'PERSON',
      near: 'from off over into onto across through out down',
      notNear: 'conclusion queue skin sound noise bed joy rope fridge pocket bag page',
      notObject: 'BODY',
    }),
    verb('chase', { subject: 'PERSON', object: 'PERSON VEHICLE thief dog horse bull' }),
    verb('faint', { subject: 'PERSON' }),
    phrase(
      'throw PERSON ~ against|throw PERSON ~ into|throw PERSON ~ onto|throw PERSON ~ off|throw PERSON ~ through|throw PERSON ~ over|throw PERSON ~ to|throw PERSON ~ down|hurl PERSON ~ against|hurl PERSON ~ across|hurl PERSON ~ through|hurl PERSON ~ into|fling PERSON ~ against|fling PERSON ~ onto',
      { subject: 'PERSON', notNear: 'kiss look glance' },
    ),
    phrase(
      'come to blows|fight break out|thrown against|thrown from|thrown to|knock PERSON down|knock PERSON over|knocked to|knocked down|struggle with PERSON|slip on|lose ~ footing|drag PERSON',
    ),
    phrase(
      'roof come down|ceiling come down|cave-in|rockfall|landslide|hang upside down|hang by ~ wrist|hang by ~ wrists|hang by ~ ankles|carry ~ off ~ feet|knock ~ off ~ feet|lift ~ off ~ feet|sweep ~ off ~ feet|hang himself|hang herself|choke on|collapse on PERSON|collapse onto PERSON|wall fall on PERSON|ceiling fall on PERSON|swept off ~ feet|take ~ legs|takes ~ legs|hit each other|slides to the stern|slides across the deck|slides down the roof|bang ~ head|bangs ~ head',
    ),
    phrase(
      'hang from|dangle from|swing ~ bat|swing ~ club|swing ~ axe|swing ~ hammer|swing ~ sledgehammer|swing ~ pick|swing ~ pickaxe|swing ~ mallet|swing ~ spade|swing ~ shovel|swing ~ crowbar|swing ~ poker',
      {
        subject: 'PERSON',
      },
    ),
    noun('stunt'),
    phrase('strapped to the|strapped to a|chained to the|chained to a', {
      subject: 'PERSON',
      notNear: 'dog bike boat',
    }),
    phrase('topple toward|topple onto|plummet from|crash down on|comes down on top of'),
    phrase('tie PERSON to|tied to a|tied to the|bind ~ wrists|bind ~ hands|plastic bag over|noose around', {
      notNear: 'boat dog horse apron post rope',
    }),
    category('stunts', 'flip slip toss clatter chase shoot fire choke throw plunge plunges', { notObject: 'BODY' }),
  ],
  H4: [
    verb('explode detonate blow', {
      notNear: 'laughter applause nose candle candles kiss anger rage whistle smoke wind horn hair dust',
      notObject: 'nose candle kiss whistle horn bubble',
      subject: 'car bomb building house bridge NONE van truck shed grenade device PERSON boiler gas tank shell',
      notSubject: 'wind PERSON breeze',
    }),
    verb('detonate', {}),
    noun('blast', { notNear: 'music horn radio whistle', notNext: 'of' }),
    noun(
      'explosion explosive grenade dynamite gunpowder detonator firecracker pyrotechnics fireball landmine fireworks firework',
      {
        notPrev: 'population',
        notNear: 'population',
      },
    ),
    noun('rocket', {
      near: 'fuse cord sky burst bursts light lights launch launches distress goes flare',
      notNear: 'salad toy space spaceship lettuce',
    }),
    noun('bomb bombs', { notPrev: 'bath photo cherry', notNext: 'shelter' }),
    phrase(
      'light ~ fuse|blow up ~ car|blow up ~ bridge|blow up ~ house|petrol bomb|glitter cannon|confetti cannon|sets off a banger|sparkler',
    ),
    noun('flare', { near: 'fire fires light lights distress red sea' }),
  ],
  H11: [
    noun(
      'rooftop ledge scaffold scaffolding precipice parapet cliff clifftop gantry crane quarry ravine gorge chasm crag',
      {
        heading: true,
        modifier: true,
        notNear: 'paper bird',
        notNext: 'office company garden restaurant bar pool',
      },
    ),
    phrase(
      'very edge|the brink|to the drop|over the drop|into the drop|at the drop|the drop below|sheer drop|long drop|steep drop|drop falls away|edge of the cliff|edge of the quay|edge of the pier|edge of the platform|edge of the roof|edge of the quarry|edge of the ravine|edge of the canyon|edge of the bridge|tightrope|high wire|abseil|rappel|fire escape|rope bridge',
      {
        heading: true,
        notNext: 'of',
        notNear:
          'bed table desk seat chair bath page crowd field wood woods tears war madness sleep ruin bankruptcy glass pipette sofa',
      },
    ),
    phrase('very edge of|brink of', {
      near: 'cliff roof quay pier platform quarry ravine canyon bridge rock water ledge',
    }),
    noun('roof', {
      heading: true,
      notNear: 'rain car mouth sound convertible sun van leak leaks under collapses caves tunnel pit comes down',
      modifier: true,
      notNext: 'of rack garden tile tiles box light',
    }),
    noun('ladder stepladder', { notNear: 'tights stockings career social', notNext: 'back' }),
    noun('balcony bridge', {
      heading: true,
      notNear: 'nose guitar violin card loan dental club captain',
      notNext: 'of',
    }),
    noun('cliff peak crest mountain mountainside', { heading: 'only' }),
    noun('ridge summit', {
      near: 'along walk walks climb climbs rope roped crest top',
      notNear: 'binoculars telescope talks meeting',
    }),
    noun('ridge summit crevasse viaduct', {
      heading: 'only',
      modifier: true,
      notNear: 'meeting talks leaders nose roof-tile',
      notNext: 'meeting tent talks road street way',
    }),
    phrase(
      'roped together|roped to|climbing rope|climbing harness|safety line|crampons|behind her , roped|behind him , roped',
      {
        notNear: 'wardrobe boat horse mast car',
      },
    ),
    ...climbing,
    phrase('over the edge|edge of the|over the railing|over the balcony|at the top of the tower|out of the window', {
      near: 'windowsill sill gutter branch beam rope drainpipe mast cliff quay pier roof platform building ledge drop quarry window railing balcony leans climbs climb jump jumps lean hangs dangles hang dangle bridge sits fall falls',
      notNear:
        'bed table desk seat chair bath stage lake river look looks stare stares gaze gazes town village field wood woods page crowd frame',
    }),
    phrase('hang from|dangle from', {
      subject: 'PERSON leg legs foot feet',
      near: 'windowsill sill gutter branch beam rope drainpipe mast cliff quay pier roof platform building ledge drop quarry window railing balcony bridge crane ladder',
    }),
    phrase(
      'metres up|meters up|feet up|metres above|feet above|storeys up|stories up|floors up|walk the wire|on the wire|trapeze',
      {
        notNear: 'puts put phone telephone table stool desk sofa barbed bird birds sparrow crow',
      },
    ),
    noun('treehouse lighthouse steeple belfry', { heading: true, near: 'climb climbs top roof ledge ladder ext' }),
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
