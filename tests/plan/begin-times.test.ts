import { describe, expect, it } from 'vitest';
import { makePlan } from '../../src/plan/make-plan.js';
import { bookOf, sketch } from './fixture.js';

/** Clock times at which the scenes of one day begin, and what is said of them; every scene is reckoned alike. */
function begin(day: string, begins: Readonly<Record<string, string>>, order = '1, 2, 3') {
  const lines = ['s1', 's2', 's3'].map(
    (id) => `  ${id}: { setups: 1, takes: 2${begins[id] ? `, begin: ${begins[id]}` : ''} }`,
  );
  const book = bookOf(`days:\n  - { date: 2027-03-16, ${day}, scenes: [${order}] }\nscenes:\n${lines.join('\n')}\n`);
  const { plan, messages } = makePlan(sketch({ scenes: [{}, {}, {}] }), book, '2027-02-15');
  const midnight = Date.UTC(2027, 2, 16) / 3_600_000;
  const hours = plan.days[0]?.scenes.map((slot) => Math.round(((slot.start ?? 0) - midnight) * 100) / 100);
  const said = messages.filter((one) => one.code === 'plan-begin' || one.code === 'plan-begin-tight');
  return { hours, said, lines: said.map((one) => one.place?.start.line) };
}

describe('the beginnings that the book gives', () => {
  it('hold, and the scenes between them share the time', () => {
    // Call 8:00; scene 2 at 14:00; scene 3 right after it, half of the 4 hours to wrap: 16:00.
    expect(begin('call: 8:00, wrap: 18:00', { s2: '14:00' })).toMatchObject({ hours: [8, 14, 16], said: [] });
  });

  it('after midnight belong to a day that runs past it', () => {
    expect(begin('call: 16:00, wrap: 2:00', { s1: '16:30', s2: '23:00', s3: '1:00' })).toMatchObject({
      hours: [16.5, 23, 25],
      said: [],
    });
  });

  it('before the call do not count, and are said', () => {
    // Scene 3 follows scene 2 as the order has it: from 8:00 the three share 10 hours.
    const { hours, said, lines } = begin('call: 8:00, wrap: 18:00', { s3: '7:30' });
    expect(hours).toEqual([8, 11.33, 14.67]);
    expect(said[0]?.reason).toContain('"begin: 07:30", which is before the call at 08:00');
    expect(said[0]?.hint).toContain('"call: 07:30" or earlier for Tue 16 March');
    expect(lines).toEqual([6]);
  });

  it('against the order of the day do not count either', () => {
    // Scene 1 at 14:00 stands first; scene 2 cannot begin at 9:00: the three share the 4 hours to wrap.
    const { hours, said } = begin('call: 8:00, wrap: 18:00', { s1: '14:00', s2: '9:00', s3: '7:30' });
    expect(hours).toEqual([14, 15.33, 16.67]);
    expect(said.map((one) => one.reason)).toEqual([
      expect.stringContaining('no later than scene 1, which stands before it and begins at 14:00'),
      expect.stringContaining('before the call'),
    ]);
  });

  it('after the wrap do not count', () => {
    expect(begin('call: 8:00, wrap: 18:00', { s3: '19:00' }).said[0]?.reason).toContain('after the wrap at 18:00');
    // A day until 1:30: 2:00 is half an hour after its wrap, 15:00 an hour before its call.
    expect(begin('call: 16:00, wrap: 1:30', { s3: '2:00' }).said[0]?.reason).toContain('after the wrap');
    expect(begin('call: 16:00, wrap: 1:30', { s3: '15:00' }).said[0]?.reason).toContain('before the call at 16:00');
  });

  it('that leave no time for the scene before are said, and hold', () => {
    // One setup in a room: 40 min of light, and 2 takes of 30 s × 1.3 + 60 s = 99 s: 43.3, rounded 43. Half of it is 21.5 min:
    // 21 are too few, 22 are not called so.
    const tight = begin('call: 8:00, wrap: 18:00', { s2: '8:21' });
    expect([tight.hours?.[1], tight.said[0]?.code]).toEqual([8.35, 'plan-begin-tight']);
    expect(tight.said[0]?.reason).toContain('found 21 min for scene 1, reckoned at about 43 min');
    expect(begin('call: 8:00, wrap: 18:00', { s2: '8:22' }).said).toEqual([]);
  });
});

describe('two entries on one date', () => {
  it('are said, and no rest between them is reckoned', () => {
    const book = bookOf(
      'days:\n  - { date: 2027-03-16, call: 8:00, wrap: 12:00, scenes: [1] }\n  - { date: 2027-03-16, call: 10:00, wrap: 18:00, scenes: [2] }\n',
    );
    const { plan, messages } = makePlan(sketch({ scenes: [{}, {}] }), book, '2027-02-15');
    const said = messages.find((one) => one.code === 'plan-date-twice');
    expect(said?.reason).toContain('Tue 16 March 2027 a second time');
    expect(said?.place?.start.line).toBe(3);
    expect(plan.days[1]?.restHours).toBeNull();
    expect(plan.days[1]?.warnings.join()).not.toContain('between the last wrap');
  });
});
