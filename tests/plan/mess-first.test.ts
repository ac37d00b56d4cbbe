import { describe, expect, it } from 'vitest';
import { planOf } from './fixture.js';

const days = (scenes: string) => `days:\n  - { date: 2027-03-12, call: "8:00", wrap: "18:00", scenes: [${scenes}] }\n`;

describe('what is spoilt before it is wanted clean', () => {
  // The story goes clean (1), then bloody (2). Shot 2, 1 with one shirt: the clean scene comes after the blood.
  const scenes = [{ wears: { ADA: { shirt: {} } } }, { wears: { ADA: { shirt: { in: 'bloody', out: 'bloody' } } } }];

  it('is warned of with one copy', () => {
    const plan = planOf({ scenes }, `${days('2, 1')}elements:\n  shirt: { get: own, have: 1, copies: 1 }\n`);
    expect(plan.messes.map(({ sure, scene, clean }) => [sure, scene.label, clean.map((one) => one.label)])).toEqual([
      [true, '2', ['1']],
    ]);
    expect(plan.messes[0]?.words).toContain('get a second, clean it in between, or shoot sc 1 first');
  });

  it('is no matter with two copies, or in the order of the story', () => {
    expect(planOf({ scenes }, `${days('2, 1')}elements:\n  shirt: { copies: 2 }\n`).messes).toEqual([]);
    expect(planOf({ scenes }, days('1, 2')).messes).toEqual([]);
  });

  it('is asked about what else the same person wears, in whatever order the story goes', () => {
    // Scene 1 soaks the coat on camera; the shoes are on the same body and wanted dry in scene 2, shot after it.
    const soaked = [
      { wears: { ADA: { coat: { out: 'soaked' }, shoes: {} }, BEN: { cap: {} } } },
      { wears: { ADA: { shoes: {} }, BEN: { cap: {} } } },
    ];
    const [asked, ...others] = planOf({ scenes: soaked }, days('1, 2')).messes;
    expect(others).toEqual([]);
    expect(asked?.sure).toBe(false);
    expect(asked?.things).toEqual(['shoes']);
  });

  it('is asked of everybody near blood that is on nobody, and of its owner alone when it is on somebody', () => {
    const near = (by?: string) => ({
      scenes: [
        { wears: { ADA: { shirt: {} }, BEN: { vest: {} } } },
        { wears: { ADA: { shirt: {} }, BEN: { vest: {} } }, things: { blood: by ? { by } : {} } },
      ],
      categories: { blood: 'makeup' as const },
    });
    expect(planOf(near(), days('2, 1')).messes.map((one) => one.things)).toEqual([['shirt', 'vest']]);
    expect(planOf(near('BEN'), days('2, 1')).messes.map((one) => one.things)).toEqual([['vest']]);
  });
});
