import { type Cue, noun, phrase, state, verb } from './implications/cue.js';

/** What raises the hazards of water, cold, heat, power and bad places. */
export const cuesOfElements: Readonly<Record<string, readonly Cue[]>> = {
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
    verb('swim wade drown', {
      subject: 'PERSON NONE',
      notNear:
        'sorrow vision head eyes paperwork papers file files forms emails mud snow grass corn rubbish nettles bracken crowd leaves',
    }),
    verb('wade', { subject: 'PERSON', near: 'WET' }),
    noun('swimmer surfer bathwater surf gangplank spillway stepping-stones belly-flop'),
    // An oar on the wall of a room is no boat.
    noun('oar oars', { setting: 'EXT' }),
    noun('marsh swamp bog dam lock wharf weir', { heading: 'only', notNext: 'keeper house road smith' }),
    phrase(
      'stepping stones|belly flop|head into the toilet|under the bathwater|comes down in sheets|in the bog|water seep',
      { notNear: 'path garden' },
    ),
    noun('water waters', { heading: 'only', notNext: 'tower treatment works mill park company' }),
    phrase('break the surface|breaks the surface|up to ~ waist|up to ~ chest|cut ~ off', {
      near: 'water sea tide river head flood pool',
    }),
    noun('fountain', { heading: true, notNear: 'pen chocolate soda drinking photo' }),
    noun('hydrant', { near: 'water gushes burst jet sprays' }),
    noun('tide', { near: 'cut in rising rises comes round ankles knees turning' }),
    verb('surf', { subject: 'PERSON', notNear: 'net internet web channel channels crowd' }),
    verb('overflow', { subject: 'bath tub sink basin pool gutter river' }),
    verb('gush burst pour', { subject: 'water', notNear: 'kettle jug glass cup' }),
    noun('slipway quayside waterfront riverbank riverside lakeside lakeshore poolside lido mudflat sandbank rapids', {
      heading: true,
      notNext: 'flat apartment hotel school cafe café bar road',
    }),
    noun('ford', { near: 'water current river stream wheels cross crosses across' }),
    noun('current', {
      near: 'water river thigh thighs waist swim swims swept cross sea boat drags tugs pulls',
      notNear: 'electric affairs account',
    }),
    noun('hose hosepipe', {
      near: 'water spray sprays jet turns turn soak soaks drench drenches aims nozzle full burst bursts dripping',
      notNear: 'vacuum stockings coiled gas petrol watering flowers roses',
    }),
    noun('nozzle', { near: 'hose water', notNear: 'petrol fuel' }),
    phrase(
      'jet of water|jets of water|pipe burst|burst main|burst water main|bucket of water over|sprays water|water spray',
    ),
    phrase(
      'face into ~ sink|face into ~ basin|face into ~ water|head into ~ sink|head into ~ water|head under the tap|head under the water',
    ),
    phrase('head under|face under|held under|hold PERSON under|hold ~ head in', {
      near: 'WET tap sink basin tub bucket bath',
      notNear: 'towel pillow',
    }),
    noun('BOAT raft', {
      heading: true,
      notNear: 'model toy paper gravy',
      notNext: 'train',
      notPrev: 'top wheel ski cable cable-car',
    }),
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
      subject: 'water river sea tide rain machine washing-machine bath sink pipe',
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
    verb('shower bathe', {
      subject: 'PERSON',
      notObject: 'BODY wound cut graze',
      notNear: 'praise gifts confetti sparks light',
    }),
    noun('rain downpour rainstorm', {
      notNear: 'window forecast coat smell stopped',
      notNext: 'has had coat',
      setting: 'EXT',
    }),
    verb('rain', { setting: 'EXT', notSubject: 'PERSON blow' }),
    phrase(
      'overboard|through the ice|into the water|in the water|under water|underwater|knee-deep|waist-deep|swept away|in the shallows|falls overboard|fall overboard|man overboard|burst pipe',
    ),
    verb('dive', { subject: 'PERSON', notNear: 'bag pocket cover book ball bed table behind' }),
  ],
  H16: [
    verb('spit crackle fizz hiss spark', { subject: 'socket plug wire cable fuse-box switch adapter amplifier' }),
    noun('socket', { near: 'plugs cable cables spits spark sparks adapter six overloaded' }),
    noun('amplifier drill grinder sander', { near: 'rain bucket water puddle wet', notNear: 'well' }),
    phrase('fuse box|power line|overhead line|jump leads|bare wire|bare bulb swings', {}),
    noun('hairdryer hair-dryer toaster heater fuse-box socket socket-board extension fan kettle-lead', {
      modifier: true,
      near: 'water bath bathtub tub pool puddle puddles sink basin wet flood flooded fork screwdriver paperclip',
      notNear: 'basket swimming',
    }),
    phrase('hair dryer|hair drier|extension lead|extension cord|electric fire|electric heater|bare wires', {
      near: 'water bath bathtub tub pool puddle puddles sink basin wet flood flooded rain drip drips',
    }),
    noun('radio lamp television', { near: 'tub bathtub', notNear: 'water-lily' }),
    noun('cable cables wires', { near: 'puddle puddles wet rain mud flooded flood' }),
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
    verb('hail sleet', { subject: 'it NONE', setting: 'EXT', notNear: 'taxi cab' }),
    phrase(
      'begins to hail|starts to hail|begins to snow|starts to snow|stamp their feet|breath smokes|breath steams|knee-deep snow|wind knock|wind takes ~ feet|shiver ~ cold',
      {
        setting: 'EXT',
      },
    ),
    noun('frost hail sleet snowball snowman', { setting: 'EXT', notNear: 'window glass bullets praise glance cake' }),
    noun('sunstroke heatstroke hypothermia frostbite sunburn'),
    phrase(
      'sun beat down|blistering sun|snow plough|snow plow|wind howl|howling wind|wind scream|roaring wind|biting wind|biting cold|bitter cold|ice-cold water|snow chains',
      { notNear: 'window' },
    ),
    state('sunburnt sunburned frostbitten', { object: 'PERSON BODY' }),
    noun('desert blizzard snowstorm heatwave glacier snowdrift hailstorm hurricane tornado', {
      heading: true,
      notNear: 'food',
      modifier: true,
      notNext: 'boot boots lamp lantern',
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
    noun('freezer coffin crypt vault', { heading: 'only', notNext: 'aisle shop maker' }),
    phrase(
      'under the stage|crawl space|under the floorboards|beneath the floorboards|priest hole|between floors|locked in the freezer|cold room ~ locked',
      {
        heading: true,
      },
    ),
    phrase('floor gives way|floor give way|stairs give way|ceiling gives way|ceiling give way'),
    noun('well', { heading: 'only', notNext: 'street road lane house' }),
    phrase('down the well|into the well|in the well|bottom of the well|lower ~ into the', {
      near: 'well shaft hole pit grave rope',
      notNear: 'bucket coffin coin stone pebble',
    }),
    phrase('in the boot|in the trunk|into the boot|into the trunk|inside the wardrobe', {
      subject: 'PERSON',
      near: 'lies lie curled tied locked hides hide gagged squeezes climbs shut bound',
    }),
    phrase(
      'in the grave|into the grave|in the open grave|into the hole|in the hole|in the pit|into the pit|in the trench',
      {
        subject: 'PERSON',
        near: 'stands stand climbs climb waist chest deep lies lie jumps jump falls fall digs dig shoulder',
      },
    ),
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
