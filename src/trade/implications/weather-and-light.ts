import { heading, noun, phrase, state, verb } from './cue.js';
import { caution, type Implication, implies, likely, question, task } from './implication.js';

const rainfall = 'rain downpour rainstorm drizzle cloudburst monsoon thunderstorm';

/** Rows 4 to 8, 55 to 58 and 72: weather, night, low sun, moving light, breath. */
export const weatherAndLight: readonly Implication[] = [
  implies(
    4,
    'rain-outside',
    [
      verb('rain drizzle', { setting: 'EXT', subject: 'it NONE', notNear: 'cats' }),
      noun(rainfall, {
        setting: 'EXT',
        notPrev: 'since after before of',
        notNext: 'has had coat',
        notNear: 'window radio forecast smell stopped',
      }),
      noun('storm', { setting: 'EXT', notNear: 'lantern cellar drain door porch shelter', notNext: 'in out off past' }),
      verb('pour', { subject: 'it sky heavens', setting: 'EXT' }),
    ],
    {
      tasks: [task('Rain: hose, water point, ground wetted down; covers, dry clothes.')],
      questions: [
        question(
          'rain-or-cover',
          'Must it rain in the picture, or may it be dry on the day?',
          'soaked drenched wet dripping beats hammers lashes face hair',
          'umbrella umbrellas raincoat puddle downpour',
        ),
      ],
    },
  ),
  implies(
    5,
    'rain-heard',
    [
      verb('rain drizzle', { setting: 'INT', subject: 'it NONE', notNear: 'cats' }),
      noun(`${rainfall} thunder`, { setting: 'INT', notNear: 'coat' }),
      noun('storm', { setting: 'INT', notNear: 'lantern cellar drain', notNext: 'in out off past' }),
    ],
    {
      elements: [likely('rain at the window', 'sound', `${rainfall} thunder`, false)],
      tasks: [task('Rain only heard or on the pane: lay in the sound, hose the glass.')],
    },
  ),
  implies(
    6,
    'snow',
    [
      verb('snow', { notSubject: 'PERSON' }),
      noun('snow snowflakes snowstorm blizzard snowdrift', { notNear: 'television globe tv screen' }),
      state('snow-covered snowy'),
    ],
    {
      elements: [likely('snow material', 'effects', 'snow snowflakes snowstorm blizzard snowdrift', false)],
      tasks: [task('Snow: real, material, or added later? Flakes on coats for every take.')],
    },
  ),
  implies(
    7,
    'wind',
    [
      noun('wind gale gust breeze', { notPrev: 'second', notNear: 'instrument chimes farm hear court' }),
      state('windswept windblown wind-blown'),
    ],
    {
      tasks: [task('Wind: cover the microphone, weight papers, pin hair.', 'ask')],
    },
  ),
  implies(
    7,
    'blown-about',
    [
      verb('billow flutter flap', {
        subject: 'curtain curtains sheet sheets dress skirt coat flag sail sails hair scarf cloak tarpaulin washing',
      }),
      phrase('blow away|blow off|blow across|in the wind|by the wind', { notNear: 'smoke whistle dust head' }),
      verb('blow', {
        subject: 'wind gale breeze gust',
        object: 'hair paper papers hat curtain curtains door leaves dust page pages',
      }),
    ],
    {
      elements: [likely('fan', 'gear', 'fan leaf-blower', false)],
      tasks: [task('Blown on cue: a fan or a thread; a fan ruins the sound.')],
    },
  ),
  implies(
    8,
    'fog',
    [
      noun('fog mist haze', {
        notNext: 'of',
        notNear: 'breath visor perfume spray war sleep memory brain mind red eyes drink pain',
        notPrev: 'red',
      }),
      phrase('dry ice|ground fog|wreathed in mist'),
      state('foggy misty hazy', {
        object: 'street moor hill morning field harbour river night road wood woods air valley quay',
      }),
    ],
    {
      elements: [likely('fog machine and fluid', 'gear', 'fog-machine hazer', false)],
      tasks: [task('Fog: still air, neighbours told, or wait for a misty morning.')],
    },
  ),
  implies(55, 'night-outside', [heading('EXT', 'night')], {
    tasks: [task('Night outside: lamps, power, warm room, a way home. Would dusk do?')],
  }),
  implies(56, 'low-sun', [heading('EXT', 'dawn dusk')], {
    tasks: [task('Half an hour of this light: rehearse before; one such scene a day.')],
    source: 'common practice; length of twilight: US Naval Observatory definitions',
  }),
  implies(57, 'night-inside', [heading('INT', 'night')], {
    tasks: [task('If shot by day: blackout cloth and tape on the windows; keep air coming in.', 'ask')],
  }),
  implies(
    58,
    'moving-light',
    [
      noun('headlights headlamps searchlight', { notNear: 'bonnet switch' }),
      noun('lightning', { notNext: 'rod fast', notNear: 'like' }),
      phrase('torch beam ~ window|lights sweep|light sweeps|beams sweep'),
    ],
    {
      elements: [likely('moving lamp with an operator', 'gear', 'VEHICLE helicopter', false)],
      tasks: [task('Light on cue: who moves the lamp, on what word?', 'ask')],
    },
  ),
  implies(58, 'lightning-notice', [noun('lightning', { notNext: 'rod fast' })], {
    tasks: [caution('Flashing light can start a seizure: warn everyone.')],
  }),
  implies(
    72,
    'breath-or-steam',
    [
      verb('cloud steam fog mist plume smoke', { subject: 'breath' }),
      phrase(
        'breath ~ white|white breath|breath clouds|breath steams|breath fogs|breath mists|breath smokes|see ~ breath|breath hangs|breath visible|breath in the cold',
      ),
      noun('steam', { notNear: 'engine iron locomotive train room' }),
      verb('steam', { subject: 'tea coffee soup kettle cup mug bowl pan bath plate food', notObject: 'PERSON' }),
      state('steaming', { object: 'tea coffee soup kettle cup mug bowl pan bath plate food mugs cups' }),
    ],
    {
      tasks: [task('Steam or breath: hot liquid renewed each take, light from behind.', 'ask')],
    },
  ),
  implies(92, 'dust-in-light', [phrase('dust motes|dust hangs|dust dances|shafts of light|beam of light')], {
    tasks: [task('A beam shows only in haze: mind the alarm.', 'ask')],
  }),
];
