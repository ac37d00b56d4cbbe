import { type Cue, noun, phrase, state, verb } from './implications/cue.js';
import { lightingUp, smoking } from './implications/shared-cues.js';

const fuels =
  'petrol gasoline diesel kerosene paraffin fuel turpentine turps meths methylated-spirits white-spirit lighter-fluid';
/** Fuel that is let out of its can: fumes, and a flame not far. */
const fuelPoured: readonly Cue[] = [
  verb('pour splash slosh douse drench spill tip sprinkle leak drip spray', {
    object: fuels,
    notNear: 'pump forecourt nozzle',
  }),
  verb('leak drip gurgle spill pour', { subject: fuels }),
  phrase(
    `pour ~ petrol|pours ~ petrol|douse ~ petrol|douse ~ gasoline|soaked in petrol|doused in petrol|soaked in gasoline|pour gas|splash gas|smell of gas|smells of gas|can of petrol over|can of gasoline over`,
  ),
];

const flameNouns =
  'candle candles candlelight firelight taper bonfire campfire torchlight brazier blowtorch sparkler lighter matchbox matchstick inferno blaze embers oil-lamp tealight candelabra incense hearth';

/** What raises the hazards of fire and of what is in the air. */
export const cuesOfFire: Readonly<Record<string, readonly Cue[]>> = {
  H4: [
    verb('explode burst', {
      subject: 'cooker pressure-cooker kettle bottle canister cylinder tyre',
      notNear: 'laughter',
    }),
    phrase('pressure cooker|rock face lift|banger goes off|banger go off|let off a banger|throw a banger'),
    noun('banger bangers', {
      near: 'off bang lights throws explodes fuse street',
      notNear: 'mash sausage sausages car',
    }),
    phrase(
      'party popper|gas explosion|go up with a whoomph|goes up with a whoomph|goes off with a bang|letter bomb|car backfire|gas bottle explode',
    ),
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
  H5: [
    phrase(
      'camping ring|gas hob|deep fryer|deep fat fryer|fat spits|hot fat|boiling fat|boiling oil|oil drum ~ fire|curling tongs smoke|burning bin|roast marshmallows|roasts marshmallows|toast marshmallows',
    ),
    verb('flambé flambe braze', { subject: 'PERSON' }),
    noun('oven', {
      near: 'open opens heat rolls smoke smokes bread loaves loaf peel baker',
      notNear: 'cold glove gloves clean cleans off microwave',
    }),
    noun('censer thurible brazier tiki-torch'),
    verb('burn', { subject: 'bin toast tyre tire tyres pallet rubbish', notNear: 'tongue' }),
    noun('bunsen primus', { modifier: true }),
    noun('whump whoomph', {}),
    noun('boiler', { near: 'light lights match lit pilot flame gas glow' }),
    phrase('fire blanket|light the gas|lights the gas|over the flame|in the grate|brushes the heater'),
    phrase('bunsen burner|lick of flame|tongue of flame|camping stove|primus stove|gas stove ~ lit|chip pan'),
    noun('barbecue', { notNext: 'sauce', notNear: 'unlit cold rusty folded' }),
    verb('weld solder', { subject: 'PERSON', notObject: 'eyes' }),
    state('alight ablaze aflame', { notNext: 'from at', notNear: 'bus tram eyes face faces' }),
    noun('spark', { near: 'sawdust straw hay petrol gas curtain rags shavings grinder weld welding land lands' }),
    ...fuelPoured,
    noun(flameNouns, { notNear: 'electric led moth', notNext: 'company' }),
    noun('match matches', {
      notPrev: 'burnt spent dead used',
      near: 'strike strikes light lights lit box burn burns flame flares flare candle cigarette head',
      notNear: 'football tennis cricket boxing referee',
    }),
    noun('match', { prev: 'a', next: '.', notPrev: 'burnt spent dead used', notNear: 'football tennis cricket' }),
    noun('torch', { near: 'flame flames burn burns burning flaming pitch', notNear: 'battery electric' }),
    noun('fire flame flames', {
      notPrev: 'under open opens friendly rapid cease old',
      notNear: 'eyes heart belly engine alarm escape drill brigade truck rifle pistol moth electric extinguisher',
      notNext: 'question questions escape engine alarm door exit station drill truck extinguisher brigade hydrant',
    }),
    noun('pipe', { near: 'smoke smokes puff puffs tobacco light lights lit clench teeth stem relights mouth' }),
    noun('cigarette cigar cigarillo cheroot zippo', {
      notNear: 'drain water gas leak burst plumbing radiator sewer under',
      notNext: 'machine packet case',
    }),
    noun('lantern', { notNear: 'electric led battery' }),
    noun('stove', {
      near: 'lit burn burns burning roaring crackling glow glows flame light lights embers log logs hot',
    }),
    noun('pan saucepan wok skillet griddle', {
      near: 'stove hob fire flame boil boils fry fries spit spits sizzle sizzles smoke smokes hot oil fat',
      notNear: 'bang bangs beat beats bathroom',
    }),
    noun('stove hob hotplate', {
      modifier: true,
      near: 'above over cook cooks fry fries boil boils spit spits pan pot kettle drip drips dries dry feed feeds steam steams warm warms',
      notNear: 'cold unlit dead off',
    }),
    noun('oven', { near: 'brick wood-fired roars roaring glow glows ember embers flame flames shovel shovels' }),
    noun('forge kiln', { heading: true, notNear: 'cold signature' }),
    noun('fireplace furnace woodburner wood-burner', { notNear: 'empty cold bricked unlit' }),
    verb('burn ignite', {
      notNear: 'shame eyes toast calories cheeks desire rage anger lungs sun',
      notObject: 'toast calorie bridge hand hands tongue lip finger mouth himself herself',
      notSubject: 'eye cheek lung throat face skin sun',
    }),
    verb('light relight', { object: 'FLAME flare' }),
    verb('light relight', { object: 'it', near: 'FLAME flare' }),
    verb('strike fire ignite wave', { object: 'flare' }),
    noun('flare', {
      near: 'light lights lit burn burns burning hiss hisses red orange distress smoke sea sky',
      notNear: 'trousers jeans nostrils temper skirt pistol gun',
    }),
    state('burning flaming blazing smouldering smoldering', {
      notObject: 'question desire cheek cheeks eyes eye shame ambition need sensation issue sun heat face row',
    }),
    ...lightingUp,
    ...smoking,
    phrase(
      'incense stick|paraffin heater|oil heater|gas heater|gas fire|coal fire|log fire|breathe fire|catch fire|on fire|set fire to|set ~ alight|set ~ ablaze|burst into flames|oil lamp|paraffin lamp|storm lantern|strike a match|gas burner|gas ring',
      {},
    ),
  ],
  H6: [
    verb('burn smoke', { subject: 'toast toaster pan oven food' }),
    noun('exhaust', { near: 'fills fumes cloud coughs smoke blue black' }),
    noun('censer thurible'),
    noun('fumes', { notNear: 'perfume coffee' }),
    noun('powder plaster', {
      near: 'cough coughs everywhere sneeze sneezes ceiling cloud chokes',
      notNear: 'bun face compact gun washing',
    }),
    noun('extinguisher', {
      modifier: true,
      near: 'empties empty sprays spray cloud powder foam blasts discharge discharges hisses lets aims fires',
    }),
    noun('smoke fog mist haze', {
      notPrev: 'breath',
      notNext: 'alarm detector screen signal of',
      notNear: 'breath perfume memory eyes',
    }),
    noun('dust', {
      near: 'rolls roll over wraps wrapped blinds cloud clouds storm billow billows swirls swirl raise raises explode explosion flour throws choking ceiling collapses rubble cough coughs',
      notNear: 'dustbin cover',
    }),
    noun('dust', { next: '.', notPrev: 'plaster' }),
    noun('flour powder chaff sawdust ash', {
      near: 'cloud clouds air light billow billows swirls fills choking',
      notNear: 'gun puff fire face compact hearth',
    }),
    noun('sandstorm smog'),
    noun('steam', {
      near: 'fill fills billow billows cloud clouds pipe burst hiss hisses sauna vent bathroom scald scalds',
      notNext: 'engine train iron',
    }),
    phrase('dry ice|tear gas|smoke bomb|smoke machine|cloud of dust|clouds of dust|cloud of flour'),
    verb('smoke', { subject: 'PERSON', setting: 'INT', notObject: 'fish ham salmon' }),
  ],
};
