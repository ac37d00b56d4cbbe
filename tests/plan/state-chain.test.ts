import { describe, expect, it } from 'vitest';
import { chainStates } from '../../src/plan/state-chain.js';
import { bookOf, lineOf, planOf } from './fixture.js';

describe('the chain of states', () => {
  it('says where each begins, whether it can be undone, and what the scene needs to be put back', () => {
    // Cotton dries in 8 to 12 h, and wet cloth is 0.1 h from dry; a tear stays. Dirt between scenes is washed out in 10 to 14 h.
    const scenes = [
      { wears: { IDA: { shirt: { in: 'dry' } } } },
      { wears: { IDA: { shirt: { in: 'dry', out: 'soaked' } } } },
      { wears: { IDA: { shirt: { in: 'muddy' } } } },
      { wears: { IDA: { shirt: { in: 'muddy', out: 'torn' } } } },
      { wears: { IDA: { shirt: { in: 'strange' } } } },
    ];
    const text = 'elements:\n  shirt: { material: cotton }\nscenes:\n  s2: { reset minutes: 9 }\n';
    const steps = chainStates(lineOf(planOf({ scenes }, text), 'shirt'), bookOf(text));
    expect(steps.map(({ state, starts, undo, resetMinutes }) => [state, starts, undo, resetMinutes])).toEqual([
      ['dry', 'from the start', 'yes, 3 min to 6 min', null],
      ['soaked', 'on camera in sc 2', 'yes, 8 h to 12 h', 9],
      ['muddy', 'between scenes, before sc 3', 'yes, 10 h to 14 h', null],
      ['torn', 'on camera in sc 4', 'no way back', null],
      ['strange', 'between scenes, before sc 5', 'not known: ask', null],
    ]);
    expect(steps[1]?.copies.length).toBeGreaterThan(1);
  });
});
