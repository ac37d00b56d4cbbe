import { describe, expect, it } from 'vitest';
import { listPlaceDays, locateScenes } from '../../src/plan/place-days.js';
import { compassWords } from '../../src/plan/sun-position.js';
import { bookOf, planOf, type Sketch, sketch } from './fixture.js';

const scenes: Sketch = {
  scenes: [{ place: 'Yard', setting: 'EXT' }, { place: 'Hall' }, { place: 'Yard', setting: 'EXT' }, { place: 'Attic' }],
};
const breakdown = sketch(scenes);
const text = `
usual: { zone: UTC }
days:
  - { date: 2027-03-20, call: 8:00, wrap: 18:00, scenes: [1, 2, 3] }
locations:
  farm: { name: The farm, coordinates: "0, 0" }
  school: { name: The school }
places:
  yard: { at: farm }
  hall: { at: school }
scenes:
  s1: { begin: 8:00 }
  s3: { begin: 15:00, setups: 2 }
`;
const book = bookOf(text);
const plan = planOf(scenes, text);
const where = locateScenes(breakdown, book, plan);

describe('the real place of a scene', () => {
  it('is that of its day, else the first of its story place, else nobody knows', () => {
    expect([...where]).toEqual([
      ['s1', 'farm'],
      ['s2', 'school'],
      ['s3', 'farm'],
      ['s4', null],
    ]);
  });
});

describe('a day at a place', () => {
  /*
   * On the equator at the equinox the Sun rises in the east, climbs through the zenith and sets in the west, all day on one
   * line; at longitude 0 it crosses the meridian at about 12:07 UTC. It climbs 15 degrees an hour: at 8:00 it stands
   * 90 − 15 × 4.12 = 28° high in the east (90°); the last scene ends by the wrap at 18:00: 90 − 15 × 5.88 = 2° in the west (270°).
   */
  it('has the Sun when the work there begins and when it ends', () => {
    const [day] = listPlaceDays('farm', where, book, plan);
    expect(day?.slots.map((slot) => slot.label)).toEqual(['1', '3']);
    expect(day?.sun[0]).toMatch(/^08:00: in the east \((89|90|91)°\), 28° high\.$/);
    expect(day?.sun[1]).toMatch(/^18:00: in the west \((269|270|271)°\), 2° high\.$/);
  });

  it('says what is missing where the book has no coordinates', () => {
    expect(listPlaceDays('school', where, book, plan)[0]?.sun).toEqual([
      'No sunrise or sunset: write coordinates (55.61, 12.34) for "school" in the book.',
    ]);
  });
});

it('names eight directions, each half a right angle wide', () => {
  expect([0, 22, 23, 90, 181, 247, 248, 315, 359].map(compassWords)).toEqual([
    'north',
    'north',
    'north-east',
    'east',
    'south',
    'south-west',
    'west',
    'north-west',
    'north',
  ]);
});
