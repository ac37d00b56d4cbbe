import { describe, expect, it } from 'vitest';
import { countBackground, listBackground } from '../../src/plan/background.js';
import { makePlan } from '../../src/plan/make-plan.js';
import { makeQuestion } from '../support/make-breakdown.js';
import { bookOf, sketch } from './fixture.js';

const made = sketch({ scenes: [{}, {}, {}] });
const extra = (id: string, count: number | null) => ({
  id,
  name: id,
  count,
  known: 'found' as const,
  words: id,
  line: 1,
});
const question = makeQuestion({ id: 'count-guests-s2', text: 'How many guests?' });
const breakdown = {
  ...made,
  scenes: made.scenes.map((scene, at) => ({
    ...scene,
    extras: [[extra('guests', 20)], [extra('guests', null), extra('girl', 1)], [extra('boys', 3)]][at] ?? [],
    questions: at === 1 ? [question] : [],
  })),
};
const days = 'days:\n  - { date: 2027-03-12, call: 8:00, wrap: 18:00, scenes: [1, 2, 3] }\n';

describe('people in the background', () => {
  it('are the most in one scene, with a fifth of spare hats from five on', () => {
    // Twenty: a fifth is 4. Three boys can be asked by name: none.
    expect(listBackground(breakdown, null).map(({ id, count, spare, minor }) => [id, count, spare, minor])).toEqual([
      ['guests', 20, 4, false],
      ['girl', 1, 0, true],
      ['boys', 3, 0, true],
    ]);
  });

  it('are as many as the book decides, by count or by looks, and the question is gone', () => {
    // 8 in dark coats and 4 walkers are 12, fewer than the script's 20; a fifth of 12 is 2.4, rounded up 3.
    const book = bookOf('background: { guests: { looks: [{ look: dark, count: 8 }, { look: walkers, count: 4 }] } }\n');
    const counted = countBackground(breakdown, book);
    expect(counted.scenes.map((scene) => scene.extras.map((one) => one.count))).toEqual([[12], [12, 1], [3]]);
    expect(counted.scenes[1]?.questions).toEqual([]);
    expect(listBackground(counted, book)[0]).toMatchObject({ count: 12, spare: 3 });
  });

  it('never become more in a scene than the script says', () => {
    const counted = countBackground(breakdown, bookOf('background: { boys: { count: 9 } }\n'));
    expect(counted.scenes[2]?.extras[0]?.count).toBe(3);
  });

  it('have their hours asked when they are children, with the number that the book has', () => {
    const minors = makePlan(breakdown, bookOf(`${days}background: { girl: { hours a day: 3 } }\n`), '2027-02-01').plan
      .days[0]?.minors;
    expect(minors?.map((one) => [one.name, one.hoursEntered])).toEqual([
      ['girl', 3],
      ['3 boys', null],
    ]);
    expect(minors?.[0]?.question).toMatch(
      /^girl is under age and would be on set about [\d]+ h \d\d min; 3 hours a day is entered/,
    );
  });
});
