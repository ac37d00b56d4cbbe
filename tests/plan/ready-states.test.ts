import { describe, expect, it } from 'vitest';
import { planOf } from './fixture.js';

const tornLater = [{ things: { letter: { in: 'whole', out: 'torn' } } }, { things: { letter: { in: 'torn' } } }];

const readyOf = (plan: ReturnType<typeof planOf>) =>
  plan.tasks.filter((task) => task.id.includes('/ready-')).map((task) => [task.date, task.what]);

describe('what must look used before any scene uses it', () => {
  it('is a task of the day before, when the later state is shot first', () => {
    // Scene 2 has the letter torn and is shot on the 12th; scene 1 tears it on the 13th. Somebody tears one on the 11th.
    const book =
      'days:\n  - { date: 2027-03-12, scenes: [2] }\n  - { date: 2027-03-13, scenes: [1] }\nelements:\n  letter: { label: L }\n';
    expect(readyOf(planOf({ scenes: tornLater }, book))).toEqual([
      [
        '2027-03-11',
        expect.stringMatching(/^letter: have L-\d+ ready torn for scene 2 .*: no scene shot before leaves it so$/),
      ],
    ]);
  });

  it('is begun as long before as it must dry', () => {
    // Scene 2 has the wool suit dried with a tide mark and is shot first, Mon 15 March at 9:00. Wool dries at worst in 36 h:
    // that is Sat 13, 21:00, too late for the work of that day, so it is begun on Fri 12 and in hand on Thu 11.
    const scenes = [
      { things: { suit: { in: 'clean', out: 'wet' } } },
      { things: { suit: { in: 'dried, a tide mark' } } },
    ];
    const book =
      'days:\n  - { date: 2027-03-15, call: 9:00, wrap: 18:00, scenes: [2] }\n  - { date: 2027-03-16, scenes: [1] }\nelements:\n  suit: { get: own, have: 1, material: wool, label: S }\n';
    const plan = planOf({ scenes }, book);
    expect(readyOf(plan)).toEqual([
      ['2027-03-12', expect.stringMatching(/leaves it so, and it takes up to 36 h, drying with it$/)],
    ]);
    expect(plan.lines[0]?.dates).toMatchObject({
      needed: '2027-03-12',
      neededFor: 'being made ready dried, a tide mark for scene 2',
      inHand: '2027-03-11',
    });
  });

  it('is no task in the order of the story, nor for what is only opened', () => {
    const inOrder = 'days:\n  - { date: 2027-03-12, scenes: [1, 2] }\n';
    expect(readyOf(planOf({ scenes: tornLater }, inOrder))).toEqual([]);
    const opened = [{ things: { box: { in: 'closed', out: 'open' } } }, { things: { box: { in: 'open' } } }];
    const backward = 'days:\n  - { date: 2027-03-12, scenes: [2, 1] }\n';
    expect(readyOf(planOf({ scenes: opened }, backward))).toEqual([]);
  });
});

describe('a spare', () => {
  it('is not hired because a day of hire is cheap', () => {
    const book = (source: string) =>
      `money: { currency: EUR, budget: 900 }\nelements:\n  ladder: { get: ${source}, price: 8, per: ${source === 'hire' ? 'day' : 'piece'} }\n`;
    const wanted = (source: string) =>
      planOf({ scenes: [{ things: { ladder: {} } }] }, book(source)).needs[0]?.recommended;
    expect([wanted('buy'), wanted('hire')]).toEqual([2, 1]);
  });
});
