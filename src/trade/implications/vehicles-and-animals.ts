import { category, noun, phrase, verb } from './cue.js';
import { caution, certain, type Implication, implies, likely, question, task } from './implication.js';

/** Rows 40 to 42, 44 and 45: cars, bicycles, boats and trains, animals, vermin. */
export const vehiclesAndAnimals: readonly Implication[] = [
  implies(
    40,
    'driving',
    [
      verb('drive', {
        subject: 'PERSON',
        notObject: 'fist knife blade nail stake point bargain PERSON cattle herd sheep screw wedge bull golf',
        notNear: 'mad crazy nail stake golf wild cattle tractor herd home-point',
        notNext: 'at',
      }),
      phrase(
        "behind the wheel|at the wheel|in the driver 's seat|starts the engine|start the engine|starts the car|parks the car|reverses out|pulls over|slams on the brakes|hits the brakes|hits the accelerator|puts it in gear|changes gear",
        { notNear: 'boat ship mower lawnmower generator plane helicopter motorbike motorcycle' },
      ),
      verb('park', {
        subject: 'PERSON',
        notObject: 'bike bicycle himself herself pram buggy bag trolley',
        notNear: 'bench bike',
      }),
    ],
    {
      elements: [
        certain(
          'car',
          'vehicles',
          'category:vehicles VEHICLE BOAT tractor bus train hearse motorbike vehicles wagon cart forklift digger kart buggy horse horses carriage',
          true,
        ),
      ],
      tasks: [
        task('Vehicle: whose, insured, plates, fuel, parking; standing, towed or driven?'),
        caution('Whoever drives does not act.', 'ask'),
      ],
    },
  ),
  implies(
    40,
    'in-a-car',
    [
      noun('car taxi cab van truck lorry limousine hearse', {
        notPrev: 'express dining sleeping railway cable freight locomotive engine',
        heading: 'only',
        setting: 'INT',
        notNext: 'park',
      }),
    ],
    {
      elements: [certain('{head}', 'vehicles', 'VEHICLE', false)],
      tasks: [task('Inside a vehicle: standing, towed or driven? Where does the camera go?')],
    },
  ),
  implies(
    40,
    'driver-too',
    [
      noun('taxi cab minicab bus coach', {
        heading: 'only',
        setting: 'INT',
        notNear: 'stop station shelter rank office depot lorry truck van tractor',
      }),
    ],
    {
      questions: [question('driver-seen', 'Is the driver of the {head} seen?', 'driver', 'driver chauffeur cabbie')],
    },
  ),
  implies(
    41,
    'cycling',
    [
      verb('cycle pedal', { subject: 'PERSON', notNear: 'channels options photos menu harmonium organ' }),
      verb('ride', { subject: 'PERSON', object: 'bicycle bike motorbike motorcycle scooter moped tricycle' }),
      phrase(
        'on ~ bike|on ~ bicycle|on his motorbike|on her motorbike|wheels ~ bike|wheels ~ bicycle|on a motorcycle|on a scooter|on ~ motorcycle',
        { notNear: 'exercise' },
      ),
    ],
    {
      elements: [
        certain(
          'bicycle',
          'vehicles',
          'bicycle bike motorbike motorcycle scooter moped tricycle tandem cart rickshaw',
          true,
        ),
      ],
      tasks: [task('Bicycle: right size, brakes tried; a helmet, in this period?')],
    },
  ),
  implies(
    42,
    'public-transport',
    [
      noun('train bus tram ferry subway plane aeroplane airplane ship', {
        heading: 'only',
        setting: 'INT',
        notNext: 'station stop shelter ticket timetable set driver depot terminal platform yard yards crossing',
        notNear: 'station stop shelter depot toy terminal',
      }),
      verb('board', { subject: 'PERSON', object: 'train bus tram ferry plane boat ship' }),
      phrase(
        'on the train|on the bus|gets on the bus|steps off the train|off the bus|gets off the train|boards the|on the ferry|on the plane|train pulls in|train pulls into|bus pulls up|train arrives|bus arrives',
      ),
    ],
    {
      tasks: [task('Public transport: written leave, timetable, tickets; or fake it?')],
      questions: [
        question(
          'how-many-passengers',
          'How many passengers are seen?',
          'empty alone deserted passenger passengers crowded',
          'passenger',
        ),
      ],
    },
  ),
  implies(
    42,
    'boat',
    [
      noun('BOAT', { notNear: 'model toy paper', notNext: 'house shed' }),
      verb('row', {
        subject: 'PERSON',
        object: 'NONE BOAT',
        notNext: 'about with over',
        notNear: 'argue table',
        setting: 'EXT',
      }),
      verb('row', { subject: 'PERSON', near: 'BOAT oar oars WET' }),
      verb('sail', { subject: 'PERSON', notNear: 'exam through air' }),
    ],
    {
      tasks: [caution('On a boat: life vests between takes, everyone counted.')],
    },
  ),
  implies(
    42,
    'rowing',
    [
      verb('row', {
        subject: 'PERSON',
        notObject: 'seat bean chair',
        notNext: 'about with over',
        notNear: 'argue machine',
        setting: 'EXT',
      }),
      verb('row', { subject: 'PERSON', notNext: 'about with over', near: 'oar oars WET' }),
    ],
    {
      elements: [certain('rowing boat with oars', 'vehicles', 'BOAT', true)],
    },
  ),
  implies(
    44,
    'animal',
    [
      category('animals', 'VERMIN fish goldfish bird insect seagull gull pigeon crab shellfish', {
        notPrev: 'UNREAL',
        notNear: 'FARAWAY raining',
      }),
    ],
    {
      tasks: [task('Animal: its owner on the day, water, rest, treats, twice the time.')],
    },
  ),
  implies(
    44,
    'led-animal',
    [verb('walk', { subject: 'PERSON', object: 'dog hound terrier spaniel collie puppy labrador' })],
    {
      elements: [likely('lead and collar', 'props', 'lead leash collar rope', true)],
    },
  ),
  implies(
    44,
    'ridden-animal',
    [
      verb('ride saddle mount', {
        subject: 'PERSON',
        object: 'horse pony donkey mare stallion mule camel',
        notNear: 'bareback',
      }),
      phrase('on horseback'),
    ],
    {
      elements: [certain('saddle and bridle', 'props', 'saddle bridle reins', false)],
      tasks: [task('Riding: horse and rider who know each other; helmet outside the shot.')],
    },
  ),
  implies(
    44,
    'fed-animal',
    [
      verb('feed', {
        subject: 'PERSON',
        object:
          'dog cat puppy kitten chicken hen horse rabbit goat pig duck pigeon bird fish goldfish sheep calf hens ducks pigeons',
      }),
    ],
    {
      elements: [
        likely(
          'animal feed',
          'food',
          'feed bread seed corn grain hay bowl biscuit carrot apple crumbs milk bottle meat scraps',
          true,
        ),
      ],
    },
  ),
  implies(
    44,
    'animal-off',
    [
      phrase(
        'dog barks|dogs bark|cat meows|horse whinnies|cock crows|cockerel crows|owl hoots|dog howls|a dog barking|wolf howls',
        { near: 'off distance distant somewhere outside offscreen o.s. nearby far away unseen next-door' },
      ),
    ],
    {
      tasks: [task('Only heard: record it or take it from a library; none on set.')],
    },
  ),
  implies(
    45,
    'vermin',
    [
      noun('VERMIN', {
        notNear:
          'web computer cricket keyboard screen baseball mouse-mat trouser trousers fishing zip phone pad wall-fly',
        notNext: 'race trap web mat',
        notPrev: 'love you glass plate bottle cup paper hair',
      }),
    ],
    {
      tasks: [task('Insects, rats, snakes: a fake or a specialist; count in and out.')],
    },
  ),
  implies(84, 'pram', [noun('pram buggy pushchair stroller', { notNear: 'empty golf' })], {
    questions: [question('baby-seen', 'Is the baby in the {head} seen?', 'empty doll')],
  }),
];
