import { describe, expect, it } from 'vitest';
import { findsOf, foundIn } from '../find/finds-of.js';

// Breakdowns that teachers publish, on texts of our own that tell the same and mark nothing.
const inCategory = (text: string, category: string, cast: readonly string[]) => [
  ...new Set(
    foundIn(text, cast)
      .filter((one) => one.category === category)
      .map((one) => one.name),
  ),
];

describe('worked breakdowns of teachers, without a mark', () => {
  /** The Film Look, thefilmlook.com, how to break down your script: fans are extras; bandana and foam hand are costume, leaflets props. */
  it('a wrestler of the eighties arrives at a show past his fans', () => {
    const text =
      'Stan, in washed-out jeans and a multicoloured jacket, walks past cheering fans. One fan wears a bandana and a foam hand. Another hands out leaflets.';
    expect(inCategory(text, 'costumes', ['STAN']).toSorted()).toEqual(['bandana', 'foam hand', 'jacket', 'jeans']);
    expect(inCategory(text, 'props', ['STAN'])).toEqual(['leaflets']);
    expect(findsOf(text, ['STAN']).people.map((one) => [one.name, one.kind])).toContainEqual(['fan', 'extras']);
  });

  /** SlidePlayer, breakdown of a student film, scene 1: textbooks, posters, mind map, snacks, stationery, laptops, exam papers are props. */
  it('pupils revise', () => {
    const text =
      'Amy flicks through a textbook. Ben draws a mind map. Cara types on a laptop. Dev eats crisps and drops his pencil case. Eve sorts a pile of exam papers.';
    const cast = ['AMY', 'BEN', 'CARA', 'DEV', 'EVE'];
    expect(inCategory(text, 'props', cast)).toEqual(['textbook', 'mind map', 'laptop', 'pencil case', 'exam papers']);
    expect(inCategory(text, 'food', cast)).toEqual(['crisps']);
    expect(foundIn(text, cast).map((one) => one.by)).toEqual(['AMY', 'BEN', 'CARA', 'DEV', 'DEV', 'EVE']);
  });

  /** SlidePlayer, the same film, scene 2: backpacks, mobile phone and textbook are props. */
  it('they travel to school', () => {
    const text =
      'Ben sits on the bus, texting on a mobile phone. Two girls walk past with backpacks. Dev runs, a textbook under his arm.';
    expect(inCategory(text, 'props', ['BEN', 'DEV'])).toEqual(['mobile phone', 'backpacks', 'textbook']);
    expect(inCategory(text, 'vehicles', ['BEN', 'DEV'])).toEqual(['bus']);
  });

  /** University of British Columbia, properties course: the teapot and the cup that are used are hand props, the rest of the service is set dressing. */
  it('tea is poured, and the rest of the service stands on a dresser', () => {
    const text = 'Nora lifts the teapot and pours tea into a cup. A milk jug and a sugar bowl stand on the dresser.';
    expect(inCategory(text, 'props', ['NORA'])).toEqual(['teapot', 'cup']);
    expect(inCategory(text, 'food', ['NORA'])).toEqual(['tea']);
    expect(inCategory(text, 'dressing', ['NORA'])).toEqual(['milk jug', 'sugar bowl', 'dresser']);
  });

  /** Don't Shoot the Costumer, dontshootthecostumer.wordpress.com, glossary, continuity: a jacket is put on, kept on, and taken off in the fourth scene. */
  it('a jacket is put on in one scene and taken off in another', () => {
    const text = [
      '## 1 INT. FLAT - DAY',
      'Leo puts on a jacket.',
      '## 2 EXT. STREET - CONTINUOUS',
      'Leo walks to his car.',
      '## 3 INT. CAR - DAY',
      'Leo drives.',
      '## 4 EXT. YARD - DAY',
      'Leo takes off the jacket and slings it over his shoulder.',
    ].join('\n\n');
    const { moves } = findsOf(text, ['LEO']);
    expect(moves.map((one) => [one.scene, one.kind, one.name, one.from, one.to])).toEqual([
      [0, 'put on', 'jacket', null, 'LEO'],
      [3, 'taken off', 'jacket', 'LEO', null],
    ]);
    expect(inCategory(text, 'costumes', ['LEO'])).toEqual(['jacket']);
  });
});
