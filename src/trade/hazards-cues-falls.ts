import { type Cue, category, noun, phrase, verb } from './implications/cue.js';
import { blows, fights } from './implications/shared-cues.js';

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
  noun('crane hoist winch forklift digger excavator jib', {
    near: 'swings swing lifts lowers load rises hook engine strap straps hangs under raises raised lowered dangles',
    notNear: 'bird paper lake nest neck washing laundry',
  }),
  noun('press mill slicer shredder mixer mincer combine sawmill', {
    near: 'hands hand fingers feed feeds thumps thump sleeve glove turns jams jammed',
    notNear: 'printing-room coffee pepper button bench flowers release conference',
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

/** What raises the hazards of fights, falls and machines. */
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
      { subject: 'PERSON', notNear: 'kiss look glance work task' },
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
          'look glance kiss smile question insult word words paper snowball pillow flower flowers confetti rice sock socks towel dishtowel tea-towel cushion coin coins himself herself popcorn ball bread petals',
      },
    ),
    phrase('topple ~ onto|topple over on|fall on top of|fall onto PERSON|come down on PERSON|crash ~ onto'),
    phrase(
      'smash ~ over ~ head|break ~ over ~ head|bring ~ down on ~ head|over the head with|elbow into|knee into ~ groin|knee into ~ stomach|knee on ~ chest|knee on ~ neck|foot on ~ neck|by the hair|by the throat|by the scruff',
      { notNear: 'cat kitten puppy' },
    ),
    phrase(
      'come crashing down|comes crashing down|come down together|go in for the tackle|both go down|fly through the air|throw the first punch|throw a punch|go over the barrier|slam together|slam into|crash into',
      { notNear: 'bird ball kite plane paper letter door drawer' },
    ),
    phrase('fall on PERSON|fall onto PERSON|topple on PERSON', {
      notNear: 'light shadow shadows eye eyes gaze silence knee knees neck luck suspicion rain snow',
    }),
    phrase(
      'hands round ~ neck|hands around ~ neck|hands round ~ throat|hands around ~ throat|tighten ~ throat|round ~ throat|around ~ throat|pillow over ~ face|hand over ~ mouth|plastic bag over',
      { notNear: 'scarf necklace arms hug locket pearls kisses kiss stethoscope collar tie yawn' },
    ),
    noun('wrestler', { near: 'circle slam slams ring throw throws hold holds grapple mat' }),
    phrase(
      'land on ~ back|land on ~ head|land on ~ face|land hard|land badly|land heavily|throw ~ at each other|throw himself at|throw herself at|throws himself at|go flying|goes flying|come off the horse|come off the bike|off the moving|arm behind ~ back|clamp over ~ mouth|connect with ~ jaw|connect with ~ chin|claw at each other|clawing at each other|by ~ lapels|go sprawling|into the glass door|over the bonnet|stagger and go down|chased by',
      { notNear: 'work birds feet plane bird' },
    ),
    verb('deck knee floor', { subject: 'PERSON', object: 'PERSON', notNear: 'holly question questions tree' }),
    verb('toss butt gore', { subject: 'bull cow goat horse ram', object: 'PERSON' }),
    verb('convulse', { subject: 'PERSON' }),
    verb('double', { subject: 'PERSON', next: 'up over', notNear: 'laughter laughing laughs' }),
    verb('sprawl', { subject: 'PERSON', notNear: 'sofa bed chair couch grass deckchair asleep' }),
    verb('collapse', { subject: 'chair bench table ladder bed swing shelf stage', notNear: 'laughter' }),
    verb('crash fall', {
      subject: 'chandelier flowerpot bookcase wardrobe scaffold sign statue piano',
      notNear: 'asleep',
    }),
    noun('wheelchair', { near: 'runs rolls hill slope tips tip faster brake kerb ramp races stairs steps' }),
    verb('land', {
      subject: 'PERSON',
      near: 'bed bush hedge heap bin pile hay back knees hard badly awkwardly',
      notNear: 'plane job airport island',
    }),
    verb('break collapse', {
      subject: 'table chair bench bed branch step stair banister shelf',
      near: 'under beneath',
    }),
    phrase('go down among|goes down among|go down with a|goes down with a|go down in a heap', { subject: 'PERSON' }),
    verb('jump leap clear', {
      subject: 'PERSON',
      object: 'gap fence wall ditch stream barrier turnstile hedge railing counter gate crack canal',
      notNear: 'table debt throat',
    }),
    phrase('each other ~ throat|each other ~ throats|at each other with', {}),
    verb('fall collapse', { subject: 'roof ceiling wall beam rafter rafters tree mast' }),
    verb('tip topple overturn capsize', {
      subject: 'caravan van car boat cart wagon lorry truck tractor trailer bus coach canoe dinghy raft',
      notNear: 'toy model',
    }),
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
      notNear: 'stockings sleeves eyes lets',
    }),
  ],
  H25: machines,
};
