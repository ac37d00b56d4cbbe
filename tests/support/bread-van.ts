import { eighths } from '../../src/base/eighths.js';
import type { Breakdown } from '../../src/breakdown/types.js';
import type { PurchaseLine } from '../../src/plan/types.js';
import {
  makeBreakdown,
  makeCast,
  makeChange,
  makeElement,
  makeEntry,
  makeExtra,
  makeGarment,
  makeHazard,
  makePerson,
  makePlace,
  makePurchase,
  makeQuestion,
  makeScene,
  makeTime,
  mention,
} from './make-breakdown.js';

const nora = (part = {}) =>
  makeCast({ id: 'nora', name: 'Nora', mentions: [mention('NORA (50), flour to the elbows', 5)], ...part });
const tomi = (part = {}) => makeCast({ id: 'tomi', name: 'Tomi', age: '16', minor: true, ...part });

const apron = (part = {}) => makeGarment({ name: 'white apron', stateIn: 'clean', ...part });
const jumper = makeGarment({ name: 'grey jumper', carried: true, from: 'scene-1' });
const noScarf = makeGarment({ name: 'scarf', absent: true });

const bakery = makeScene({
  order: 1,
  id: 'bakery-kneading',
  place: 'Bakery - back room',
  placeId: 'bakery',
  placeParts: ['Bakery', 'back room'],
  time: 'NIGHT',
  light: 'night',
  synopsis: 'Nora kneads the last dough; Tomi cannot find the van key.',
  cast: [nora(), tomi()],
  elements: [
    makeElement({ name: 'bread dough', category: 'food', by: 'Nora', line: 6 }),
    makeElement({ name: 'van key', by: 'Tomi', line: 8, stateOut: 'in Tomi’s pocket' }),
    makeElement({ name: 'wall clock', category: 'dressing', known: 'found', confidence: 0.8, rules: ['untouched'] }),
    makeElement({ name: 'radio song', category: 'music', known: 'noted' }),
  ],
  wears: [
    {
      person: 'Nora',
      change: 1,
      changeOut: 1,
      garments: [apron({ action: 'put on' }), makeGarment({ name: 'grey jumper' }), noScarf],
    },
    { person: 'Tomi', change: 1, changeOut: 1, garments: [makeGarment({ name: 'rain jacket' })] },
  ],
  goesTo: [{ scene: 'yard', what: ['van key (in Tomi’s pocket)', 'Nora change 1'] }],
});

const yard = makeScene({
  order: 2,
  id: 'yard',
  setting: 'EXT',
  place: 'Yard',
  time: 'CONTINUOUS',
  light: 'night',
  eighths: eighths(11),
  screenTime: makeTime(85, 82.5),
  synopsis: 'Rain. The van will not start; the dog guards the crates.',
  cast: [nora(), tomi({ presence: 'heard', voice: 'off-screen' })],
  elements: [
    makeElement({
      name: 'storm lantern',
      by: 'Nora',
      stateIn: 'lit',
      stateOut: 'broken',
      line: 22,
      description: 'brass',
    }),
    makeElement({ name: 'bread van', category: 'vehicles', line: 20 }),
    makeElement({ name: 'yard dog', category: 'animals', line: 23 }),
    makeElement({ name: 'crate', count: 6, line: 24, known: 'found', confidence: 0.9, rules: ['number'] }),
    makeElement({
      name: 'matches',
      known: 'implied',
      strength: 'likely',
      confidence: 0.6,
      words: 'lights the lantern',
      line: 22,
      rules: ['I20'],
    }),
    makeElement({ name: 'rain', category: 'effects', line: 19 }),
    makeElement({ name: 'van key', carried: true, from: 'bakery-kneading', by: 'Tomi', stateIn: 'in Tomi’s pocket' }),
  ],
  wears: [
    {
      person: 'Nora',
      change: 1,
      changeOut: 1,
      garments: [apron({ carried: true, from: 'bakery-kneading', stateOut: 'soaked' }), jumper, noScarf],
    },
  ],
  hazards: [makeHazard({ id: 'H9', title: 'Rain and electricity', words: 'Rain', line: 19 })],
  questions: [
    makeQuestion({
      id: 'yard-matches',
      text: 'Does Nora light the lantern with matches?',
      settle: 'No: "> no: matches".',
      kind: 'element',
      element: 'matches',
      line: 22,
    }),
    makeQuestion({ id: 'yard-dog', text: 'Who brings and handles the dog?', line: 23 }),
  ],
  comesFrom: [{ scene: 'bakery-kneading', what: ['van key (in Tomi’s pocket)'] }],
});

const memory = makeScene({
  order: 3,
  id: 'kitchen-1974',
  place: 'Family kitchen',
  time: 'DAY',
  qualifiers: ['FLASHBACK', '1974'],
  storyDay: { label: 'F1', series: 'F', number: 1, reason: 'FLASHBACK in the heading', sure: true },
  eighths: eighths(2),
  screenTime: makeTime(20, 15),
  synopsis: 'A girl tears up a letter.',
  cast: [nora({ age: '9', minor: true, speaks: false })],
  elements: [makeElement({ name: 'letter', category: 'graphics', by: 'Nora', stateOut: 'torn', line: 40 })],
  wears: [{ person: 'Nora', change: 2, changeOut: 2, garments: [makeGarment({ name: 'school dress' })] }],
});

const road = makeScene({
  order: 4,
  id: 'road',
  number: '4A',
  setting: 'EXT',
  place: 'Harbour road',
  time: 'DAWN',
  light: 'dawn',
  page: 2,
  eighths: eighths(4),
  screenTime: { ...makeTime(40, 30), noted: true },
  storyDay: { label: 'D2', series: 'D', number: 2, reason: 'night turns to dawn', sure: false },
  synopsis: 'The van passes the fishermen. Tomi’s voice reads the order.',
  cast: [nora(), tomi({ presence: 'heard', voice: 'voice-over' })],
  extras: [makeExtra({ name: 'fishermen', count: 6, line: 51 }), makeExtra({ name: 'passers-by', line: 52 })],
  elements: [makeElement({ name: 'bread van', category: 'vehicles', stateIn: 'muddy', line: 50 })],
  wears: [{ person: 'Nora', change: 3, changeOut: 3, garments: [makeGarment({ name: 'dry coat' }), noScarf] }],
  questions: [makeQuestion({ id: 'road-day', text: 'Is this the morning after scene 2?', settle: 'Type "> day: 2".' })],
  notes: [{ kind: 'free', text: 'Ask the harbour about parking.', line: 53 }],
});

/** A small night story with every kind of thing a sheet must show. */
export const breadVan: Breakdown = makeBreakdown({
  title: 'The Bread Van',
  draft: 'B',
  date: '2026-11-02',
  author: 'A. Writer',
  pages: 2,
  eighths: eighths(20),
  screenTime: { seconds: 175, low: 140, high: 228, pageRule: 150, noted: true },
  scenes: [bakery, yard, memory, road],
  omitted: ['4'],
  cast: [
    makePerson({
      id: 'nora',
      name: 'Nora',
      names: ['Nora', 'The baker'],
      seen: ['bakery-kneading', 'yard', 'kitchen-1974', 'road'],
      changes: [
        makeChange({
          number: 1,
          scenes: ['bakery-kneading', 'yard'],
          garments: [
            {
              ...apron(),
              states: [
                { scene: 'bakery-kneading', state: 'clean' },
                { scene: 'yard', state: 'soaked' },
              ],
            },
            { ...makeGarment({ name: 'grey jumper' }), states: [] },
            { ...makeGarment({ name: 'work boots', known: 'found' }), states: [] },
            { ...noScarf, states: [] },
          ],
        }),
        makeChange({
          number: 2,
          storyDay: 'F1',
          scenes: ['kitchen-1974'],
          garments: [{ ...makeGarment({ name: 'school dress' }), states: [] }],
        }),
        makeChange({
          number: 3,
          storyDay: 'D2',
          scenes: ['road'],
          garments: [
            { ...makeGarment({ name: 'dry coat' }), states: [] },
            { ...noScarf, states: [] },
          ],
        }),
      ],
    }),
    makePerson({
      id: 'tomi',
      name: 'Tomi',
      age: '16',
      minor: true,
      seen: ['bakery-kneading'],
      heard: ['yard', 'road'],
      changes: [
        makeChange({
          number: 1,
          scenes: ['bakery-kneading'],
          garments: [{ ...makeGarment({ name: 'rain jacket' }), states: [] }],
        }),
      ],
    }),
  ],
  elements: [
    makeEntry({ name: 'bread dough', category: 'food', scenes: ['bakery-kneading'], by: ['Nora'] }),
    makeEntry({
      name: 'van key',
      scenes: ['bakery-kneading', 'yard'],
      by: ['Tomi'],
      states: [{ state: 'in Tomi’s pocket', scene: 'bakery-kneading', onCamera: true }],
    }),
    makeEntry({ name: 'wall clock', category: 'dressing', known: 'found', scenes: ['bakery-kneading'] }),
    makeEntry({ name: 'radio song', category: 'music', known: 'noted', scenes: ['bakery-kneading'] }),
    makeEntry({
      name: 'storm lantern',
      names: ['storm lantern', 'lamp'],
      description: 'brass',
      scenes: ['yard'],
      by: ['Nora'],
      states: [
        { state: 'lit', scene: 'yard', onCamera: false },
        { state: 'broken', scene: 'yard', onCamera: true },
      ],
    }),
    makeEntry({ name: 'bread van', category: 'vehicles', scenes: ['yard', 'road'] }),
    makeEntry({ name: 'yard dog', category: 'animals', scenes: ['yard'] }),
    makeEntry({ name: 'crate', known: 'found', count: 6, scenes: ['yard'] }),
    makeEntry({ name: 'matches', known: 'implied', strength: 'likely', scenes: ['yard'] }),
    makeEntry({ name: 'rain', category: 'effects', scenes: ['yard'] }),
    makeEntry({
      name: 'letter',
      category: 'graphics',
      scenes: ['kitchen-1974'],
      by: ['Nora'],
      states: [{ state: 'torn', scene: 'kitchen-1974', onCamera: true }],
    }),
    makeEntry({
      name: 'white apron',
      category: 'costumes',
      known: 'noted',
      scenes: ['bakery-kneading', 'yard'],
      by: ['Nora'],
      states: [
        { state: 'clean', scene: 'bakery-kneading', onCamera: false },
        { state: 'soaked', scene: 'yard', onCamera: true },
      ],
    }),
  ],
  places: [
    makePlace({
      id: 'bakery',
      name: 'Bakery',
      areas: ['back room'],
      sets: [{ setting: 'INT', place: 'Bakery - back room', scenes: ['bakery-kneading'] }],
      scenes: ['bakery-kneading'],
      dressing: [{ id: 'wall-clock', name: 'wall clock', known: 'found', scenes: ['bakery-kneading'] }],
    }),
    makePlace({ name: 'Yard', settings: ['EXT'], scenes: ['yard'] }),
    makePlace({ name: 'Family kitchen', scenes: ['kitchen-1974'] }),
    makePlace({ name: 'Harbour road', settings: ['EXT'], scenes: ['road'] }),
  ],
});

/** What the bread van's story needs to get. */
export const breadVanPurchases: readonly PurchaseLine[] = [
  makePurchase({
    name: 'white apron',
    department: 'costume',
    category: 'costumes',
    scenes: ['1', '2'],
    states: ['clean', 'soaked'],
    usedBy: ['Nora'],
    known: 'noted',
  }),
  makePurchase({ name: 'bread dough', category: 'food', usedBy: ['Nora'], usedUp: true }),
  makePurchase({
    name: 'storm lantern',
    scenes: ['2'],
    firstScene: '2',
    states: ['lit', 'broken'],
    description: 'brass',
  }),
  makePurchase({ name: 'crate', scenes: ['2'], firstScene: '2', inScript: 6, known: 'found' }),
  makePurchase({
    name: 'letter',
    department: 'art',
    category: 'graphics',
    scenes: ['3'],
    firstScene: '3',
    states: ['torn'],
    usedBy: ['Nora'],
  }),
];
