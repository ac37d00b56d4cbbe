import { describe, expect, it } from 'vitest';
import { makePlan } from '../../src/plan/make-plan.js';
import { bookOf, needOf, planOf, type Sketch, sketch } from './fixture.js';

const two = 'days:\n  - { date: 2027-03-18, scenes: [1] }\n  - { date: 2027-03-21, scenes: [2] }\n';

describe('what burns down or is opened once', () => {
  it.each(['cigarette', 'box of matches', 'match'])('%s', (name) => {
    // (4 × 2 + 1) = 9 matches or cigarettes at least, 10.8 with a fifth to spare: 11. A box is one.
    const need = needOf(planOf({ scenes: [{ things: { [name]: { by: 'ADA' } } }] }), name.replace(/ /g, '-'));
    expect([need.minimum, need.recommended]).toEqual(name === 'box of matches' ? [1, 1] : [9, 11]);
  });

  it('is not counted so against the book', () => {
    const scenes = [{ things: { cigarette: { by: 'ADA' } } }];
    expect(needOf(planOf({ scenes }, 'elements:\n  cigarette: { used up: no }\n'), 'cigarette').minimum).toBe(1);
  });

  it('is a sealed copy each take where an envelope is opened on camera, and a reset where a door is', () => {
    const scenes = [{ things: { envelope: { out: 'open' }, cupboard: { out: 'open' } } }];
    const plan = planOf({ scenes });
    expect([needOf(plan, 'envelope').minimum, needOf(plan, 'cupboard').minimum]).toEqual([9, 1]);
    const reset = 'elements:\n  envelope: { states: { open: { on camera: reset } } }\n';
    expect(needOf(planOf({ scenes }, reset), 'envelope').minimum).toBe(1);
  });
});

describe('food', () => {
  const food = (...things: { out?: string; count?: number }[]) => {
    const made = sketch({ scenes: things.map((bun) => ({ things: { bun } })), categories: { bun: 'food' } });
    return { ...made, elements: made.elements.map((one) => ({ ...one, known: 'found' as const })) };
  };
  const bunOf = (made: ReturnType<typeof food>, book = '') =>
    needOf(makePlan(made, bookOf(book), '2027-01-11').plan, 'bun');

  it('that is put on a desk is kept, and asked about', () => {
    const need = bunOf(food({}));
    expect([need.usedUp, need.minimum]).toEqual([false, 1]);
    expect(need.questions).toEqual([expect.stringContaining('is it eaten in a take?')]);
    // 4 takes × 2 setups + 1 rehearsal = 9 once the book says that each take eats one; 9 × 1.2 = 10.8: 11.
    const eaten = bunOf(food({}), 'elements:\n  bun: { used up: yes }\n');
    expect([eaten.minimum, eaten.recommended, eaten.questions]).toEqual([9, 11, []]);
  });

  it('that somebody eats is used up in that scene, and only lies there in another', () => {
    // Nine times in scene 2, and one that lies in scene 1: 10; with a fifth to spare 10.8, rounded up to 11, and 1: 12.
    const need = bunOf(food({}, { out: 'eaten' }));
    expect([need.usedUp, need.minimum, need.recommended, need.questions]).toEqual([true, 10, 12, []]);
  });
});

describe('what is lit', () => {
  it('says in words why a match counts by the take and a candle does not', () => {
    // One candle, lit with a match: 4 takes × 2 setups + 1 rehearsal = 9 matches, and the same candle each time.
    const plan = planOf({ scenes: [{ things: { candle: { by: 'ADA' }, match: { by: 'ADA' } } }] });
    const reasons = ['match', 'candle'].map((id) => [needOf(plan, id).minimum, needOf(plan, id).minimumReason]);
    expect(reasons).toEqual([
      [9, 'struck or burnt down in each take. scene 1: 4 takes × 2 setups + 1 rehearsal = 9 times'],
      [1, 'one serves its scene; lit again for each take'],
    ]);
  });
});

describe('the takes that see it', () => {
  const eggs = {
    scenes: [{ things: { eggs: { count: 6 } } }, { things: { eggs: { count: 2 } } }],
    categories: { eggs: 'food' as const },
  };

  it('are those of the scene in which it is eaten; elsewhere it only lies there', () => {
    // Two eggs in 9 takes: 18, with a fifth 21.6; and six more that lie in a hat: 24 at least, 27.6 rounded up: 22 + 6 = 28.
    const need = needOf(planOf(eggs, 'elements:\n  eggs: { used up in: [2] }\n'), 'eggs');
    expect([need.minimum, need.recommended, need.questions]).toEqual([24, 28, []]);
    expect(needOf(planOf(eggs), 'eggs').questions[0]).toContain(
      'does it only lie there in some? Write "used up in: [1]"',
    );
  });

  it('are the shots that name it, where the scene has its shots listed', () => {
    // Five shots, one of them with the letter: 4 takes × 1 setup + 1 rehearsal = 5.
    const scenes = [{ things: { letter: { out: 'torn' } } }];
    const book = 'scenes:\n  s1: { shots: [wide, "hands, the letter tears", face, door, feet] }\n';
    const need = needOf(planOf({ scenes }, book), 'letter');
    expect([need.minimum, need.minimumReason]).toEqual([5, expect.stringContaining('4 takes × 1 setup + 1 rehearsal')]);
    expect(needOf(planOf({ scenes }, book.replace('the letter tears', 'paper tears')), 'letter').minimum).toBe(9);
  });

  it('are asked how much they drink, not how many teas', () => {
    const tea = { scenes: [{ things: { tea: {} } }], categories: { tea: 'food' as const } };
    const need = needOf(planOf(tea), 'tea');
    expect([need.uncounted, need.questions[0]]).toEqual([
      true,
      expect.stringContaining('how much "tea" does one take use?'),
    ]);
    expect(needOf(planOf(tea, 'elements:\n  tea: { per take: 150 ml }\n'), 'tea').recommended).toBe(1755);
  });
});

describe('soaked paper', () => {
  it('is a copy each take, and none of them is clean again', () => {
    // Soaked in 9 takes on the 18th, clean on the 21st: 9 + 1 = 10 at least; with spares 11 + 1 = 12, and one more for paper that spoils is not added.
    const scenes = [{ things: { map: { out: 'soaked' } } }, { things: { map: {} } }];
    const need = needOf(planOf({ scenes }, two), 'map');
    expect([need.minimum, need.recommended]).toEqual([10, 12]);
    expect(need.minimumReason).toContain('no way back');
  });

  it('dries on in the story: the soaked one serves the scene in which it is wavy', () => {
    const scenes = [{ things: { map: { in: 'soaked' } } }, { things: { map: { in: 'dried, wavy' } } }];
    const need = needOf(planOf({ scenes }, two), 'map');
    expect(need.minimum).toBe(1);
    expect(need.conversions.map((one) => [one.to, one.wayBack])).toEqual([['dried, wavy', true]]);
  });

  it('leaves cloth as it was: it dries', () => {
    const scenes = [{ things: { towel: { in: 'soaked' } } }, { things: { towel: {} } }];
    expect(needOf(planOf({ scenes }, two), 'towel').minimum).toBe(1);
  });
});

describe('what a crowd wears', () => {
  const plan = (count: number | null, book = '', by: string | null = null) => {
    const scenes: Sketch = { scenes: [{ things: { helmets: {} } }], categories: { helmets: 'costumes' } };
    const made = sketch(scenes);
    const [scene] = made.scenes;
    const element = scene?.elements[0];
    if (!scene || !element) throw new Error('no scene');
    const at = { start: { line: 3, column: 1, offset: 9 }, end: { line: 3, column: 2, offset: 10 } };
    const extras = [{ id: 'soldiers', name: 'soldiers', count, known: 'found' as const, words: 'Soldiers', line: 3 }];
    const told = {
      ...scene,
      extras,
      elements: [{ ...element, by, mentions: [{ words: 'helmets', line: 3, at }] }],
    };
    return makePlan({ ...made, scenes: [told] }, bookOf(book), '2027-02-01').plan;
  };

  it('is one each, a fifth more to spare, and a question', () => {
    // Six soldiers: 6; a fifth of 6 is 1.2, rounded up 2: 8.
    const need = needOf(plan(6), 'helmets');
    expect([need.minimum, need.recommended]).toEqual([6, 8]);
    expect(need.questions).toEqual(['does each of the 6 soldiers wear one? It is counted so']);
  });

  it('is counted so too where the words put it on the group, and never on one person', () => {
    expect(needOf(plan(6, '', 'soldiers'), 'helmets').minimum).toBe(6);
    expect(needOf(plan(6, '', 'girl'), 'helmets').minimum).toBe(1);
  });

  it('is asked where nobody counts the crowd, and settled by the book', () => {
    expect(needOf(plan(null), 'helmets').uncounted).toBe(true);
    const need = needOf(plan(6, 'elements:\n  helmets: { copies: 3 }\n'), 'helmets');
    expect([need.toGet, need.questions]).toEqual([3, []]);
  });
});

describe('what is creased', () => {
  // Pressed in half an hour, cloth is as it was; paper never is: (4 × 2 + 1) = 9 of it.
  it.each([
    ['coat', 'costumes', 1],
    ['overalls', 'costumes', 1],
    ['handkerchief', 'props', 1],
    ['letter', 'props', 9],
    ['ticket', 'graphics', 9],
  ] as const)('%s', (name, category, minimum) => {
    const scenes = [{ things: { [name]: { by: 'ADA' } } }, { things: { [name]: { by: 'ADA', out: 'creased' } } }];
    const turned = 'days:\n  - { date: 2027-03-18, scenes: [2] }\n  - { date: 2027-03-21, scenes: [1] }\n';
    const need = needOf(planOf({ scenes, categories: { [name]: category } }, turned), name);
    expect(need.minimum).toBe(minimum === 1 ? 1 : minimum + 1);
  });

  it('is spoilt for good in cloth too where it is torn besides', () => {
    const scenes = [{ things: { coat: { out: 'creased and torn' } } }];
    expect(needOf(planOf({ scenes, categories: { coat: 'costumes' } }), 'coat').minimum).toBe(9);
  });
});
