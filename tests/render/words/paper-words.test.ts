import { describe, expect, it } from 'vitest';
import { eighths } from '../../../src/base/eighths.js';
import type { SceneTask } from '../../../src/breakdown/types.js';
import { findUntoldParts } from '../../../src/render/costumes/untold-parts.js';
import { extraWords, speakerAmong } from '../../../src/render/words/extras-words.js';
import { thingsInHand } from '../../../src/render/words/in-hand.js';
import { limitDoubtful } from '../../../src/render/words/on-paper.js';
import {
  makeBreakdown,
  makeCast,
  makeElement,
  makeEntry,
  makeExtra,
  makeGarment,
  makeScene,
} from '../../support/make-breakdown.js';

describe('a group of extras and a person who speaks', () => {
  const group = makeExtra({ name: 'hikers', count: 3 });

  it('counts the speaker among them', () => {
    expect(speakerAmong(group, [makeCast({ name: 'HIKER' })])).toBe(', one of them HIKER');
    const two = [makeCast({ name: 'HIKER #1' }), makeCast({ name: 'HIKER #2' })];
    expect(speakerAmong(group, two)).toBe(', among them HIKER #1 and HIKER #2');
  });

  it('reads as people say it', () => {
    expect(extraWords(group)).toBe('3 hikers');
    expect(extraWords(makeExtra({ name: 'crowd', count: 20 }))).toBe('crowd of 20');
    expect(extraWords(makeExtra({ name: 'crowd', count: null }))).toBe('crowd');
  });

  it('says nothing of others, of someone only heard, or of a single extra', () => {
    expect(speakerAmong(group, [makeCast({ name: 'NORA' })])).toBe('');
    expect(speakerAmong(group, [makeCast({ name: 'HIKER', presence: 'heard' })])).toBe('');
    expect(speakerAmong(makeExtra({ name: 'hiker', count: 1 }), [makeCast({ name: 'HIKER' })])).toBe('');
  });
});

describe('what is doubtful', () => {
  const task = (strength: SceneTask['strength'], i: number): SceneTask => ({
    text: `task ${i}`,
    strength,
    words: '',
    line: i,
    rule: 'I1',
  });
  const asked = [1, 2, 3, 4, 5].map((i) => task('ask', i));
  const scene = (length: number) =>
    makeScene({
      order: 1,
      place: 'Quay',
      eighths: eighths(length),
      tasks: [...asked, task('likely', 6), task('certain', 7)],
      elements: asked.map((_, i) => makeElement({ name: `thing ${i}`, known: 'implied', strength: 'ask' })),
    });
  const limited = (length: number) => limitDoubtful(makeBreakdown({ scenes: [scene(length)] })).scenes[0];

  it.each([
    [1, 1],
    [2, 2],
    [3, 3],
    [16, 3],
  ])('of a scene of %i eighths puts %i on paper', (length, most) => {
    expect(limited(length)?.elements).toHaveLength(most);
    expect(limited(length)?.tasks.filter((one) => one.strength === 'ask')).toHaveLength(most);
  });

  it('leaves what is certain or likely whole', () => {
    expect(limited(1)?.tasks.map((one) => one.strength)).toEqual(['ask', 'likely', 'certain']);
  });

  it('leaves no entry in the indexes for what no sheet shows', () => {
    const elements = scene(1).elements.map(({ id, name }) =>
      makeEntry({ id, name, known: 'implied', strength: 'ask' }),
    );
    const breakdown = limitDoubtful(makeBreakdown({ scenes: [scene(1)], elements }));
    expect(breakdown.elements.map((one) => one.name)).toEqual(['thing 0']);
  });
});

describe('things in hand', () => {
  it('leaves out what a costume change lists, and nothing else that is worn', () => {
    const elements = ['watch', 'cap'].map((name) => makeElement({ name, worn: true }));
    const wears = [{ person: 'Bo', change: 1, changeOut: 1, garments: [makeGarment({ name: 'cap' })] }];
    const scene = makeScene({ order: 1, place: 'Quay', elements, wears });
    expect(thingsInHand(scene).map((one) => one.name)).toEqual(['watch']);
  });
});

describe('the parts of the body that a change does not tell of', () => {
  const asked = (...names: string[]) => findUntoldParts(names).map((part) => part.asked);

  it.each([
    [['white shirt', 'work trousers', 'boots'], []],
    [['new grey suit', 'black shoes'], []],
    [
      ['oilskin', 'woollen hat'],
      ['trousers or skirt', 'shoes'],
    ],
    [['nightdress', 'thick socks'], ['shoes']],
    [['shoes'], ['top', 'trousers or skirt']],
  ])('%j', (names, parts) => {
    expect(asked(...names)).toEqual(parts);
  });

  it('takes what must not be worn as told', () => {
    expect(asked('dress', 'shoes')).toEqual([]);
  });
});
