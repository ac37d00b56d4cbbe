import { type Cue, category, heading, noun, phrase, verb } from './implications/cue.js';
import { blood, closeness } from './implications/shared-cues.js';

const dogs =
  'st bernard|saint bernard|border collie|golden retriever|german shepherd|great dane|jack russell|guide dog|police dog|shetland pony|guinea pig';

/** What raises the hazards of living beings, vehicles, night and the body. */
export const cuesOfLiving: Readonly<Record<string, readonly Cue[]>> = {
  H8: [
    noun('beekeeper hive apiary', { heading: true, notNear: 'activity' }),
    category('animals', 'moth fly gnat midge ladybird butterfly snail slug', { notPrev: 'UNREAL', notNear: 'FARAWAY' }),
    noun('ANIMALS snake spider rat wasp hornet bee bees scorpion python cobra', {
      notNear: 'FARAWAY raining',
      notNext: 'tag mat lead food bed gate of shriek screech hoot caw costume suit outfit onesie',
      notPrev: 'UNREAL hot guinea roast roasted fried grilled boiled cooked smoked tinned canned frozen',
    }),
    phrase(dogs),
    verb('saddle', { subject: 'PERSON' }),
    phrase('horse-drawn|on horseback|out of the saddle|in the saddle|into the saddle|let the dog|drop the dog'),
  ],
  H9: [
    phrase(
      'lets off the handbrake|let off the handbrake|cling to the bonnet|grab the wheel|grabs the wheel|back into a bollard|milk float|golf buggy|car on a jack|lie under a car|lie under the car|under a car|jack slip|brakes scream|brakes screech|tyres scream|tyres screech|step off the kerb|steps off the kerb',
    ),
    verb('drive', {
      notObject: 'nail stake point bargain screw wedge golf fist knife blade sword',
      notNear: 'mad crazy nail golf wild bargain',
      notSubject: 'rain wind snow sleet hail spray sand',
    }),
    noun('VEHICLE', {
      heading: true,
      notNear: 'toy model keys photo photograph magazine advert brochure picture distant wheelbarrow lego insurance',
      notNext: 'key keys park alarm horn insurance battery magazine sale licence registration wash dealer',
      notPrev: 'sack hand toy model matchbox sleeping dining restaurant railway cable basketball football',
    }),
    verb('ride', { subject: 'PERSON', object: 'motorbike motorcycle scooter moped bicycle bike quad' }),
    verb('cycle', { subject: 'PERSON', notNear: 'channels photos' }),
    verb('skid swerve speed accelerate reverse overtake', {
      subject: 'VEHICLE motorcycle bicycle bike',
      notNear: 'decision sentence lens camera',
    }),
    noun('tractor forklift digger excavator motorcycle motorbike bicycle quad-bike go-kart lorry motorhome', {
      heading: true,
      notNear: 'toy model photo',
      notNext: 'clip clips helmet bell pump chain wheel tyre lock shed',
    }),
    phrase(
      'behind the wheel|plough into|mount the kerb|mount the pavement|step on the gas|car crash|run over by|hit by a car|seat belt|car chase|slam on the brakes|start the engine|pull over|traffic ~ road|busy road|dual carriageway',
      { heading: true, notNear: 'boat mower' },
    ),
    noun('traffic', { setting: 'EXT', notNext: 'light lights cone warden sign', notNear: 'far distant hum distance' }),
    noun('headlight headlights', { setting: 'EXT', notNear: 'far distant distance' }),
    phrase(
      'middle of the road|runs into the road|run into the road|steps into the road|step into the road|out into the road',
      {
        notNear: 'music politics',
      },
    ),
    noun('motorway highway', { heading: true, notNext: 'code' }),
    category(
      'vehicles',
      'BOAT TRAINS tank pram wheelchair stroller buggy pushchair trolley sled sledge wheelbarrow handcart cart barrow saloon shuttle spaceship spacecraft rocket drone speedboat aeroplane airplane plane helicopter aircraft glider balloon lifeboat spaceship',
      { notPrev: 'sack toy model clip clips helmet bell pump tyre tire part parts key keys' },
    ),
    noun('tank', { near: 'gun turret army soldier rolls rumbles tracks crushes' }),
  ],
  H10: [
    noun('train railway railroad locomotive', {
      heading: true,
      notNear: 'toy model thought dress wedding whistle distance distant far',
      notNext: 'ticket tickets set timetable of tie cap uniform poster clock sandwich',
      notPrev: 'toy model',
    }),
    noun('platform', {
      heading: true,
      near: 'train station railway tube underground tracks rails ext guard whistle',
      notNear: 'shoe shoes diving political oil',
    }),
    phrase(
      'railway track|railway tracks|railway line|level crossing|train tracks|on the tracks|along the tracks|on the rails|subway platform|tube station|metro station|railway station|train station|across the tracks',
      { heading: true },
    ),
    noun('station', {
      heading: 'only',
      notPrev:
        'police petrol gas service fire radio space bus coach power polling tv television filling ambulance weather pumping lifeboat signal coastguard research',
    }),
    phrase('between the rails|beside the track|beside the line', { notNear: 'tape recording' }),
    noun('platform', {
      near: 'along runs bench waits whistle guard suitcase suitcases',
      notNear: 'diving political oil shoe shoes stage speaker lorry weighing viewing',
    }),
    noun('subway tube', { heading: 'only', notNear: 'paint inner test' }),
    noun('tram', { heading: true, notNear: 'toy model' }),
  ],
  H12: [
    noun('helicopter aeroplane airplane biplane glider parachute paraglider seaplane cockpit propeller', {
      heading: true,
      notNear: 'toy model paper photo photograph distant distance',
      notPrev: 'toy model paper',
    }),
    noun('plane', {
      heading: true,
      notNear: 'fold folds folded toy model paper wood carpenter shaving tree ticket distant',
      notNext: 'tree ticket tickets',
    }),
    phrase('hot-air balloon|hot air balloon'),
    verb('skydive parachute', {}),
  ],
  H13: [
    noun('drone', { notNear: 'bee bees hum engine fridge voice bagpipe bagpipes' }),
    phrase("aerial shot|aerial view|bird's-eye view|drone shot|from high above", { heading: true }),
  ],
  H14: [heading('EXT', 'night dusk dawn')],
  H15: [
    noun('child baby toddler infant newborn schoolboy schoolgirl teenager schoolchild kid pupil', {
      notNear:
        'goat gloves photo photograph portrait doll grand tomato carrot carrots potatoes corn shower monitor statue painting poster',
      notNext: 'monitor shower grand seat clothes bottle powder proof labour',
      notPrev: 'grown wonder',
    }),
    noun('boy girl', {
      notNear: 'photo photograph portrait poster delivery',
      notNext: 'friend band scout',
      notPrev: 'oh golden poster old bad good call weather make-up makeup cover show',
    }),
    noun('schoolchildren', {}),
    noun('playground classroom nursery kindergarten schoolyard', {
      heading: true,
      notNear: 'empty deserted plant plants',
    }),
    phrase('primary school|infant school|nativity play|school play|school trip|school bus', {
      notNear: 'remembers photo',
    }),
    noun('brownie brownies cub scouts girl-guides', {
      near: 'troop pack uniform sing sings march woggle tent leader',
      notNear: 'chocolate plate bake baked lion wolf bear',
    }),
    noun('pram pushchair buggy', { notPrev: 'golf beach', notNear: 'empty doll dolls wheels old rusty' }),
    noun('school', { heading: 'only', modifier: true, notNear: 'night art driving law medical', notNext: 'reunion' }),
  ],
  H19: [
    noun('syringe hypodermic'),
    noun('drip', { near: 'arm hook stretcher stand bag iv vein hospital', notNear: 'tap gutter ceiling' }),
    noun('skull', { near: 'barrel bottle label tin drum crossbones faded warning', notNear: 'grave desk ring tattoo' }),
    noun('liquid', { near: 'smokes fumes hisses bubbles drum barrel leaks', notNear: 'glass soap cup tube' }),
    noun('darkroom', { heading: true }),
    noun('developer fixer', { near: 'print tray darkroom photograph' }),
    noun('needle', {
      notPrev: 'sewing knitting darning compass gauge machine',
      near: 'buzz buzzes ink parlour arm vein syringe skin doctor nurse drip tattoo blood sterile hospital inject',
    }),
    verb('inject', { subject: 'PERSON NONE' }),
    noun(
      'acid poison bleach petrol gasoline kerosene paraffin diesel chemical chemicals arsenic cyanide solvent ammonia turpentine insecticide weedkiller antifreeze chloroform formaldehyde chlorine caustic lye mercury',
      { notNear: 'rain tongue ivy jazz run runs ran engine pay pays price', notNext: 'ivy rain station pump' },
    ),
    noun('jerrycan jerry-can petrol-can pesticide herbicide slurry sulphur phosphorus peroxide fumes', {
      notNear: 'exhaust perfume',
    }),
    noun('chemical', { heading: true, modifier: true }),
    noun('tablet tablets', { near: 'swallow swallows bottle palm foil blister', notNear: 'computer screen stylus' }),
    phrase(
      'petrol can|gas can|fuel can|can of petrol|can of gasoline|can of gas|cans of petrol|drain cleaner|lighter fluid|white spirit|rat poison|bleach|weed killer',
      { notNext: 'blonde bottle' },
    ),
    noun('flask beaker test-tube vial phial', {
      near: 'foam foams bubble bubbles smokes fumes fume fizz fizzes eats hiss hisses boils boil acid chemical chemist',
      notNear: 'tea coffee soup',
    }),
    phrase('eats through|eat through|eats a hole|eat a hole|eats a neat hole'),
    verb('sew stitch', {
      subject: 'PERSON',
      near: 'forehead wound cut gash skin brow scalp cheek lip',
      notNear: 'shirt dress',
    }),
    ...blood,
    noun('pill pills medicine drugs heroin cocaine', { notNear: 'store', notNext: 'store cabinet' }),
  ],
  H20: [
    phrase(
      'bodies move under|move under the sheet|life class|takes off her robe|takes off his robe|drops her robe|in a towel ~ kiss',
      {
        notNear: 'dog cat judge priest',
      },
    ),
    ...closeness,
    phrase(
      'make love|have sex|in ~ underwear|in bed together|in bed with|into bed beside|into bed with|share a bed|out of the shower|in the shower|into the shower|in the bath|in ~ underpants|in ~ boxer shorts|in ~ bra|in ~ knickers',
      { notNear: 'dog birds cat duck child dress suit coat clothes clothed dressed shirt' },
    ),
    verb('grope molest', { subject: 'PERSON', object: 'PERSON' }),
  ],
};
