import { type Cue, category, noun, phrase, verb } from './implications/cue.js';
import { blows, climbing, fights } from './implications/shared-cues.js';

const dropFrom =
  'roof wall window balcony tree ledge bridge cliff branch ladder scaffold loft hayloft rafters beam gallery gantry';

const machineParts =
  'chain belt roller rollers gear gears cog cogs press mangle propeller winch conveyor loom lathe spokes machine machinery drill baler thresher harvester mincer';

/** Machines that run, and what they catch. */
const machines: readonly Cue[] = [
  verb('catch snag tangle', { subject: 'BODY GARMENT hair scarf apron', near: machineParts, notNear: 'bicycle toy' }),
  verb('catch trap drag pull suck crush mangle', {
    object: 'BODY GARMENT hair scarf PERSON',
    near: machineParts,
    notNear: 'toy',
  }),
  noun('conveyor lathe winch baler thresher mangle harvester loom mincer', {
    modifier: true,
    near: 'run runs turn turns spin spins grind grinds roar roars start starts hand hands feeds fingers rattle rattles',
  }),
  phrase(
    'conveyor belt|drive chain|drive belt|moving machinery|cement mixer|wood chipper|meat grinder|printing press',
    {
      heading: true,
      notNear: 'catalogue model museum sushi',
    },
  ),
  noun('waltzer carousel merry-go-round dodgem dodgems rollercoaster roller-coaster', {
    heading: true,
    modifier: true,
    notNear: 'poster photo emotions baggage distant tarpaulin',
  }),
  phrase('big wheel|ferris wheel|roller coaster|ghost train|big dipper', {
    heading: true,
    notNear: 'poster photo photograph emotions distant distance',
  }),
];

/** What raises the hazards of fights, falls, machines and height. */
export const cuesOfFalls: Readonly<Record<string, readonly Cue[]>> = {
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
      'come to blows|fight break out|thrown against|thrown from|thrown to|knock PERSON down|knock PERSON over|knocked to|knocked down|struggle with PERSON|lose ~ footing|drag PERSON',
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
    verb('slip', {
      subject: 'PERSON',
      object: 'NONE',
      notNext: 'into out off past away by through between behind in over under round around from inside to up',
      notNear: 'pocket hand coat dress GARMENT unseen door mind',
    }),
    verb('drop', { subject: 'PERSON', object: 'NONE', near: dropFrom }),
    phrase(
      'go down hard|go down heavily|go down on ~ back|go down like|head first|headfirst|head over heels|head-first|miss ~ step|misses ~ step|miss ~ footing',
      { subject: 'PERSON', notNear: 'love bed pillow blanket well' },
    ),
    phrase(
      'swing ~ at PERSON|hurl ~ at PERSON|throw ~ at PERSON|fling ~ at PERSON|lunge at PERSON|fly at PERSON|lash out',
      {
        subject: 'PERSON',
        notNear:
          'look glance kiss smile question insult word words paper snowball pillow flower flowers confetti rice sock socks towel cushion himself herself popcorn ball bread petals',
      },
    ),
    phrase('topple ~ onto|topple over on|fall on top of|fall onto PERSON|come down on PERSON|crash ~ onto'),
    phrase(
      'smash ~ over ~ head|break ~ over ~ head|bring ~ down on ~ head|over the head with|elbow into|knee into ~ groin|knee into ~ stomach|knee on ~ chest|knee on ~ neck|foot on ~ neck|by the hair|by the throat|by the scruff',
      { notNear: 'cat kitten puppy' },
    ),
    noun('headlock stranglehold chokehold armlock', {}),
    verb('bite', {
      subject: 'PERSON',
      object: 'PERSON hand arm ear leg wrist shoulder neck',
      notObject: 'FOODS lip nail',
      notNear: 'apple sandwich bread biscuit own',
    }),
    verb('elbow knee', { subject: 'PERSON', object: 'PERSON BODY' }),
    verb('somersault backflip', { subject: 'PERSON' }),
    noun('somersault backflip handspring pratfall trapeze acrobat fire-eater'),
    noun('boxer', {
      near: 'ring circle circles gloves chin punch punches bell corner sparring',
      notNear: 'shorts dog',
    }),
    phrase('strapped to the|strapped to a|chained to the|chained to a', {
      subject: 'PERSON',
      notNear: 'dog bike boat',
    }),
    phrase('topple toward|topple onto|plummet from|crash down on|comes down on top of'),
    phrase('tie PERSON to|tied to a|tied to the|bind ~ wrists|bind ~ hands|plastic bag over|noose around', {
      notNear: 'boat dog horse apron post rope',
    }),
    category('stunts', 'flip slip drop toss clatter chase shoot fire choke throw plunge plunges', {
      notObject: 'BODY',
    }),
  ],
  H25: machines,
  H11: [
    phrase('high up|far below|a long way down|way below|high above', {
      notNear: 'shelf shelves cupboard sun sky bird birds moon plane star stars cloud clouds window',
    }),
    phrase("do n't look down|don't look down|never look down", { spoken: true }),
    noun('gondola', { near: 'top wheel ski mountain cable', modifier: true }),
    phrase('top gondola|cable car|ski lift|chair lift|lift shaft|elevator shaft', { heading: true }),
    phrase('in the branches|up the tree|up a tree|down the tree|top of the tree|in the treetop', {
      subject: 'PERSON',
      notNear: 'bird birds cat lights light wind owl crow nest lantern lanterns squirrel',
    }),
    verb('lean hang', {
      subject: 'PERSON',
      near: 'upstairs balcony rail railing parapet window',
      next: 'far out over right',
      notNear: 'car van truck lorry cab taxi bus train bar counter table boat ship deck',
    }),
    verb('balance', {
      subject: 'PERSON',
      near: 'wall beam rail railing edge roof ledge rope plank wire parapet fence branch',
    }),
    phrase('along the top of', { near: 'wall roof fence dam scaffold cliff' }),
    noun('hayloft', { near: 'jump jumps edge falls hatch leans ladder climbs' }),
    noun('catwalk', { notNear: 'model models fashion' }),
    noun('battlement battlements rampart ramparts rung rungs', { heading: true }),
    verb('shin shinny', { subject: 'PERSON', next: 'up down' }),
    phrase('leg over', {
      near: 'rim rail railing sill parapet edge wall balcony bridge ledge gondola windowsill',
      notNear: 'horse saddle bike bicycle motorbike chair bed',
    }),
    phrase('upstairs window|attic window|window ledge|bedroom window', {
      near: 'climbs climb drops jumps out leans sheets rope',
    }),
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
    phrase('over the edge|edge of the|over the railing|over the balcony|at the top of the tower|out of ~ window', {
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
};
