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

/** What raises the hazards of fire, air, water, cold, power and bad places. */
export const cuesOfElements: Readonly<Record<string, readonly Cue[]>> = {
  H5: [
    ...fuelPoured,
    noun(flameNouns, { notNear: 'electric led moth', notNext: 'company' }),
    noun('match matches', {
      near: 'strike strikes light lights lit box burn burns flame flares flare candle cigarette head',
      notNear: 'football tennis cricket boxing referee',
    }),
    noun('match', { prev: 'a', next: '.', notNear: 'football tennis cricket' }),
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
    noun('smoke fog mist haze', {
      notPrev: 'breath',
      notNext: 'alarm detector screen signal of',
      notNear: 'breath perfume memory eyes',
    }),
    noun('dust', {
      near: 'cloud clouds storm billow billows swirls swirl raise raises explode explosion flour throws choking ceiling collapses rubble cough coughs',
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
  H7: [
    noun(
      'river lake sea ocean canal pond pool reservoir dock quay jetty pier harbour harbor weir waterfall beach shore marina swimming-pool estuary creek',
      {
        heading: true,
        notNear: 'painting postcard photograph photo map poster blood',
        notNext: 'of table view hall cue room bird street road front',
        notPrev: 'car motor gene',
      },
    ),
    phrase('river bank|river edge|lake shore|lake side|sea wall|canal bank|canal path|pool side|river path', {
      heading: true,
    }),
    verb('swim wade drown', { subject: 'PERSON NONE', notNear: 'sorrow vision head eyes paperwork papers' }),
    noun('BOAT raft', { heading: true, notNear: 'model toy paper gravy', notNext: 'train' }),
    noun('flood floodwater', { notNear: 'light memories tears', notPrev: 'in' }),
    phrase('water rise|water creep|water pour in|water rush|rising water|water come in|water close over', {
      notNear: 'kettle tea lock jug',
    }),
    phrase('over the side|go under|goes under', {
      near: 'wave waves water oar oars boat dinghy ship deck sea splash swims net rope anchor rail',
      notNear: 'cot bed crib pram sofa',
    }),
    phrase('go in', {
      near: 'overbalances overbalance splash oar boat quay pier ice water headfirst',
      notNear: 'house door',
    }),
    verb('flood', {
      subject: 'water river sea tide rain',
      object: 'NONE GROUND room house kitchen lino deck cabin cellar',
    }),
    noun('sprinkler sprinklers', { notNear: 'lawn garden grass sugar chocolate' }),
    noun('wave', {
      near: 'side deck boat ship rail hull breaks crashes washes sweeps over knocks sea shore',
      notNear: 'hand hair radio goodbye',
    }),
    verb('wash sweep', { subject: 'wave waves sea tide current', object: 'PERSON leg legs' }),
    noun('deck', { heading: 'only', setting: 'EXT', notNear: 'park roof sun pool garden car' }),
    noun('bathtub jacuzzi aquarium', {}),
    noun('bath shower', {
      near: 'sit sits lie lies water steam soak in run runs step steps out',
      notNear: 'bird sparks confetti curtain mat robe',
    }),
    verb('shower bathe', { subject: 'PERSON', notNear: 'praise gifts confetti sparks light' }),
    noun('rain downpour rainstorm', { notNear: 'window forecast coat smell', setting: 'EXT' }),
    verb('rain', { setting: 'EXT', notSubject: 'PERSON blow' }),
    phrase(
      'overboard|through the ice|into the water|in the water|under water|underwater|knee-deep|waist-deep|swept away|in the shallows|falls overboard|fall overboard|man overboard|wet floor|burst pipe',
    ),
    verb('dive', { subject: 'PERSON', notNear: 'bag pocket cover book ball bed table behind' }),
  ],
  H16: [
    noun('generator pylon substation fuse-box fusebox transformer', { notNear: 'random idea' }),
    noun('cable cables wires', {
      near: 'bare live spark sparks power electric extension trailing',
      notNear: 'car knit television',
    }),
    noun('wire', { near: 'touch touches bare live spark sparks electric' }),
    verb('electrocute short-circuit', {}),
    noun('neon', {
      modifier: true,
      near: 'spark sparks sparking broken hang hangs falls mend mends fix fixes climb climbs rain wet puddle',
    }),
    noun('sprinkler sprinklers', { notNear: 'lawn garden grass sugar chocolate' }),
    noun('spark', {
      notNear: 'fire eyes fly conversation',
      near: 'socket wire wires cable plug switch lamp panel fuse grinder weld welding electric motor winch machine engine mixer throws blue bulb rail',
    }),
    phrase(
      'electric shock|live wire|power line|power lines|extension lead ~ water|toaster ~ bath|hairdryer ~ bath|radio ~ bath|electric fence|extension lead|welding torch',
    ),
    verb('spark', { subject: 'socket wire cable plug switch lamp panel fuse motor winch machine engine generator' }),
    verb('rewire weld', { subject: 'PERSON' }),
    phrase('rewired it|wrong voltage', { spoken: true }),
  ],
  H17: [
    noun('desert blizzard snowstorm heatwave glacier snowdrift hailstorm hurricane tornado', {
      heading: true,
      notNear: 'food',
      modifier: true,
      notNext: 'boot boots',
    }),
    noun('snow ice', {
      setting: 'EXT',
      notNear: 'drink cream glass whisky cube cubes lolly bucket globe',
      notNext: 'cream cube white',
    }),
    noun('heat', { setting: 'EXT', notNear: 'argument moment kitchen oven fire stove race body heart dead passion' }),
    noun('lightning thunderstorm', { setting: 'EXT', notNext: 'rod fast' }),
    noun('storm gale', { setting: 'EXT', notNext: 'lantern drain cellar door', notNear: 'lantern' }),
    verb('snow', { notSubject: 'PERSON', setting: 'EXT' }),
    phrase(
      'through the ice|freezing cold|bitterly cold|scorching heat|blazing sun|baking heat|frozen lake|heat haze|walk-in freezer|cold store',
    ),
    state('freezing', { setting: 'EXT', object: 'PERSON water river lake sea rain wind' }),
  ],
  H18: [
    state('abandoned derelict disused ruined boarded-up burnt-out crumbling condemned', {
      heading: true,
      notObject:
        'dog baby child cup plate meal bike toy car plan attempt trolley dinner coffee sandwich shoe newspaper woman man reputation career evening dress',
    }),
    noun('duct shaft', { heading: true, near: 'crawl crawls climb climbs squeeze squeezes ventilation air int' }),
    noun('sewer cave mineshaft catacomb crypt crawlspace bunker silo culvert', {
      heading: true,
      notNear: 'golf',
      notPrev: 'coal fuel sand coke man batman',
    }),
    noun('tunnel', { heading: true, notNear: 'vision carpal', notNext: 'vision' }),
    noun('mine', { heading: true, notNear: 'is yours', near: 'ext int shaft coal tin old enters entrance' }),
    noun('pit colliery coalface mine', { heading: 'only', setting: 'INT', notNext: 'stop lane village yard' }),
    noun('cellar basement', { heading: 'only', notNext: 'flat conversion apartment' }),
    noun('cellar basement attic loft', {
      near: 'flooded damp rot rotten rotting collapsed collapsing mould joist joists hatch crawl crawls rafters droppings asbestos',
    }),
    noun('wreck', { heading: true, notNear: 'nervous' }),
    state('rotten rotting collapsing', { object: 'joist floorboard floor beam stair stairs ceiling roof plank step' }),
    noun('ruin ruins wreck rubble', {
      heading: true,
      notNear: 'career life financial reputation nervous',
      notPrev: 'in',
    }),
    phrase(
      'buried alive|play in the fridge|hide in the fridge|hide in the freezer|hide in the boot|hide in the trunk|lie in the coffin|lie in a coffin|inside the fridge|inside the freezer|in the boot of the|in the trunk of the|lift shaft|mine shaft|manhole|air vent|coal face|pit cage|pit shaft|cave-in|roof come down|ventilation shaft|caved in|rotten floorboards|building site|construction site|demolition site',
      { heading: true },
    ),
  ],
};
