import { describe, expect, it } from 'vitest';
import { compareDrafts } from '../../../src/compare/compare-drafts.js';
import type { DayFacts, SceneFacts } from '../../../src/compare/types.js';
import { changedSection } from '../../../src/render/words/changed-section.js';
import { helperLines } from '../../../src/render/words/helper-changes.js';
import type { CategoryName } from '../../../src/trade/categories.js';
import { makeDraft, makeSceneFacts, makeThing } from '../../support/make-draft.js';

const props = new Set<CategoryName>(['props']);
const costumes = new Set<CategoryName>(['costumes', 'cast', 'extras']);
const seen = (name: string) => ({ name, presence: 'seen' as const });
const scene = (id: string, part: Partial<SceneFacts> = {}) => makeSceneFacts({ id, place: `PLACE ${id}`, ...part });
const day = (number: number, scenes: string[]): DayFacts => ({
  number,
  date: `2027-03-1${number}`,
  call: '08:00',
  places: [],
  scenes,
});

const before = makeDraft(
  [
    scene('1', { things: [makeThing('rope'), makeThing('crate', { count: 2 }), makeThing('key')] }),
    scene('2', { things: [makeThing('rope'), makeThing('lamp', { stateIn: 'lit' })] }),
    scene('3', { cast: [seen('NORA')] }),
  ],
  { days: [day(1, ['1', '2']), day(2, ['3'])] },
);
const after = makeDraft(
  [
    scene('1', { things: [makeThing('crate', { count: 6 }), makeThing('axe')], dangers: ['Blades and points'] }),
    scene('2', { things: [makeThing('lamp', { stateIn: 'broken' }), makeThing('key'), makeThing('axe')] }),
    scene('3', { cast: [seen('NORA'), seen('TOMI')] }),
  ],
  { draft: 'B', days: [day(1, ['1']), day(2, ['2', '3'])] },
);
const changes = compareDrafts(before, after);

describe('what changed for a helper', () => {
  it('is told with what can hurt first, then what costs, then where to be, then what to prepare', () => {
    expect(helperLines(changes, props)).toEqual([
      'DANGER, new: Blades and points (sc 1). Read the framed box on the scene’s sheet.',
      'STOP, not needed any more: rope (was in sc 1, 2). Do not buy; ask before you give anything away.',
      'GET: axe (sc 1, 2). Ask before you buy what the lists call (found) or (implied).',
      'Scene 2: to be shot on day 2, Fri 12 March (was day 1, Thu 11 March).',
      'Scene 1: crate: 6 (was 2).',
      'Scene 2: lamp: broken (was lit).',
      'No longer there: key (sc 1).',
      'Now also there: key (sc 2).',
    ]);
  });

  it('leaves out what is another helper’s', () => {
    expect(helperLines(changes, costumes)).toEqual([
      'DANGER, new: Blades and points (sc 1). Read the framed box on the scene’s sheet.',
      'New in the film: TOMI (sc 3).',
      'Scene 2: to be shot on day 2, Fri 12 March (was day 1, Thu 11 March).',
    ]);
  });

  it('names the reader’s things in a new scene, and no more of a scene that is cut than its sheet', () => {
    const cellar = scene('4', {
      place: 'CELLAR',
      things: [makeThing('crate', { count: 3 }), makeThing('coat', { category: 'costumes' })],
    });
    const [one, two, three] = before.scenes as [SceneFacts, SceneFacts, SceneFacts];
    const coat = { id: 'coat', name: 'coat', names: ['coat'] };
    const added = makeDraft([one, two, cellar], { things: [...before.things, coat] });
    const lines = helperLines(
      compareDrafts(makeDraft([one, two, three], { things: [...before.things, coat] }), added),
      props,
    );
    expect(lines).toEqual([
      'Old scene 3 is cut (inside, Place 3, day). Throw the old sheet away.',
      'Scene 4 is new (inside, Cellar, day). Yours in it: 3 × crate.',
    ]);
  });

  it('never says of a danger that it is over', () => {
    expect(helperLines(compareDrafts(after, before), props).join(' ')).not.toMatch(/blades/i);
  });

  it('fills eight lines at most and counts the rest', () => {
    const many = Array.from({ length: 20 }, (_, i) =>
      scene(`s${i}`, { things: [makeThing(`pot ${i}`, { count: 1 })] }),
    );
    const more = many.map((one) => ({ ...one, things: one.things.map((thing) => ({ ...thing, count: 2 })) }));
    const compared = compareDrafts(makeDraft(many), makeDraft(more, { draft: 'B' }));
    const words = JSON.stringify(changedSection({ comparison: { kind: 'compared', changes: compared } }, props));
    expect(words).toContain('Since draft A');
    expect(words.match(/: 2 \(was 1\)/g)).toHaveLength(8);
    expect(words).toContain('and 12 more: see changes.md');
  });

  it('is nothing only when the drafts were compared', () => {
    const same = JSON.stringify(
      changedSection({ comparison: { kind: 'compared', changes: compareDrafts(before, before) } }, props),
    );
    expect(same).toContain('Nothing changed for you since draft A.');
    for (const why of ['no label', 'nothing earlier', 'not readable'] as const)
      expect(JSON.stringify(changedSection({ comparison: { kind: 'not compared', why } }, props))).not.toMatch(
        /nothing changed/i,
      );
  });
});
