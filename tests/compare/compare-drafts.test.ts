import { describe, expect, it } from 'vitest';
import { compareDrafts } from '../../src/compare/compare-drafts.js';
import type { Change, DayFacts, DraftFacts, SceneFacts } from '../../src/compare/types.js';
import { makeDraft, makeSceneFacts, makeThing } from '../support/make-draft.js';

/** A change in short: `count crate: 2 > 6`. */
function short({ kind, subject, wearer, before, after, whole }: Change): string {
  const about = [kind, subject, wearer && wearer !== subject ? `(${wearer})` : null].filter(Boolean).join(' ');
  return `${about}: ${before} > ${after}${whole ? ' (whole)' : ''}`;
}

function listOf(before: DraftFacts, after: DraftFacts): string[] {
  const { scenes, whole } = compareDrafts(before, after);
  return [
    ...whole.map(short),
    ...scenes.flatMap((scene) => scene.changes.map((one) => `${scene.scene} ${short(one)}`)),
  ];
}

const one = (part: Partial<SceneFacts>) => makeDraft([makeSceneFacts({ id: 'kitchen', place: 'KITCHEN', ...part })]);
const worn = (name: string, absent = false) => ({ id: name, name, stateIn: null, stateOut: null, absent });

describe('two drafts of one scene', () => {
  it('are the same when nothing differs', () => {
    expect(listOf(one({}), one({}))).toEqual([]);
  });

  it('tell place, light, story day and length', () => {
    const after = one({ place: 'CELLAR', time: 'NIGHT', light: 'night', storyDay: 'D2', eighths: 11 });
    expect(listOf(one({}), after)).toEqual([
      'kitchen place: KITCHEN > CELLAR',
      'kitchen light: DAY > NIGHT',
      'kitchen story day: D1 > D2',
      'kitchen length: 1 > 1 3/8',
    ]);
  });

  it('tell the light where the heading only says that time runs on', () => {
    const running = { time: 'CONTINUOUS' };
    expect(listOf(one({ ...running, light: 'day' }), one({ ...running, light: 'dusk' }))).toEqual([
      'kitchen light: day > dusk',
    ]);
  });

  it('tell things: new, gone, how many, in whose hands', () => {
    const before = one({
      things: [makeThing('crate', { count: 2 }), makeThing('rope'), makeThing('key', { by: 'NORA' })],
    });
    const after = one({
      things: [makeThing('crate', { count: 6 }), makeThing('lamp'), makeThing('key', { by: 'TOMI' })],
    });
    expect(listOf(before, after)).toEqual([
      'kitchen count crate: 2 > 6',
      'kitchen thing lamp: null > 1 (whole)',
      'kitchen holder key: NORA > TOMI',
      'kitchen thing rope: 1 > null (whole)',
    ]);
  });

  it('tell states: once for a thing that keeps its state, apart for one that changes on camera', () => {
    const keeps = (state: string) => one({ things: [makeThing('coat', { stateIn: state })] });
    expect(listOf(keeps('dry'), keeps('wet'))).toEqual(['kitchen state coat: dry > wet']);
    const changes = (state: string) => one({ things: [makeThing('coat', { stateIn: 'dry', stateOut: state })] });
    expect(listOf(changes('wet'), changes('torn'))).toEqual(['kitchen state out coat: wet > torn']);
    expect(listOf(keeps('dry'), changes('torn'))).toEqual(['kitchen state out coat: dry > torn']);
  });

  it('tell people and what they wear, each garment once', () => {
    const nora = { name: 'NORA', presence: 'seen' as const };
    const tomi = { name: 'TOMI', presence: 'seen' as const };
    const dressed = (change: number, ...garments: ReturnType<typeof worn>[]) => [{ person: 'NORA', change, garments }];
    const coat = makeThing('coat', { category: 'costumes', by: 'NORA' });
    const before = one({ cast: [nora], things: [coat], wears: dressed(1, worn('coat'), worn('scarf')) });
    const after = one({
      cast: [{ ...nora, presence: 'heard' }, tomi],
      wears: dressed(2, worn('scarf', true), worn('hat')),
    });
    expect(listOf(before, after)).toEqual([
      'kitchen person NORA: seen > heard',
      'kitchen person TOMI: null > seen (whole)',
      'kitchen garment scarf (NORA): worn > not worn',
      'kitchen garment hat (NORA): null > worn (whole)',
      'kitchen garment coat (NORA): worn > null (whole)',
      'kitchen costume number NORA: 1 > 2',
    ]);
  });

  it('tell dangers and background people', () => {
    const before = one({ dangers: ['Height and edges'], extras: [{ name: 'guest', count: 6 }] });
    const after = one({
      dangers: ['Open flame'],
      extras: [
        { name: 'guest', count: 12 },
        { name: 'waiter', count: null },
      ],
    });
    expect(listOf(before, after)).toEqual([
      'kitchen danger Open flame: null > raised',
      'kitchen danger Height and edges: raised > null',
      'kitchen count guest: 6 > 12',
      'kitchen extra waiter: null > ?',
    ]);
  });

  it('find a renamed thing and a renamed person by the name they went by', () => {
    const lamp = makeThing('lamp', { by: 'NORA' });
    const lantern = makeThing('storm lantern', { by: 'NORA BERG' });
    const before = one({ cast: [{ name: 'NORA', presence: 'seen' }], things: [lamp] });
    const scene = one({ cast: [{ name: 'NORA BERG', presence: 'seen' }], things: [lantern] });
    const after = {
      ...scene,
      people: [{ id: 'nora-berg', name: 'NORA BERG', names: ['NORA BERG', 'NORA'] }],
      things: [{ id: 'storm-lantern', name: 'storm lantern', names: ['storm lantern', 'Lamp'] }],
    };
    expect(listOf(before, after)).toEqual([
      'name NORA BERG: NORA > NORA BERG',
      'name storm lantern: lamp > storm lantern',
    ]);
  });
});

describe('drafts of several scenes', () => {
  const [a, b, c, d] = ['a', 'b', 'c', 'd'].map((id, i) => makeSceneFacts({ id, label: `${i + 1}` })) as [
    SceneFacts,
    SceneFacts,
    SceneFacts,
    SceneFacts,
  ];

  it('tell a new scene, and the numbers that it pushes on', () => {
    const after = [a, makeSceneFacts({ id: 'x', label: '2' }), { ...b, label: '3' }];
    expect(listOf(makeDraft([a, b]), makeDraft(after))).toEqual(['x scene: null > INT PLACE x, DAY', 'b label: 2 > 3']);
  });

  it('tell a scene that is cut where it stood', () => {
    const changes = compareDrafts(makeDraft([a, b, c]), makeDraft([a, c]));
    expect(changes.scenes).toMatchObject([{ scene: 'b', before: '2', after: null }]);
  });

  it('tell the one scene that moved, not those it leapt over', () => {
    expect(listOf(makeDraft([a, b, c, d]), makeDraft([b, c, d, a]))).toEqual([
      'a position: first of all > after scene 4',
    ]);
  });

  const day = (number: number, date: string, scenes: string[], part: Partial<DayFacts> = {}): DayFacts => ({
    number,
    date,
    call: '08:00',
    places: ['Old dairy'],
    scenes,
    ...part,
  });
  const shot = (...days: DayFacts[]) => makeDraft([a, b, c], { days });

  it('tell that a scene moved to another shooting day', () => {
    const before = shot(day(1, '2027-03-12', ['a', 'b']), day(2, '2027-03-13', ['c']));
    const after = shot(day(1, '2027-03-12', ['a']), day(2, '2027-03-13', ['b', 'c']));
    expect(listOf(before, after)).toEqual(['b shooting day: day 1, Fri 12 March > day 2, Sat 13 March']);
  });

  it('tell call, place and order of a day', () => {
    const before = shot(day(1, '2027-03-12', ['a', 'b', 'c']));
    const after = shot(day(1, '2027-03-12', ['c', 'a', 'b'], { call: '07:30', places: ['Old dairy', 'Quay'] }));
    expect(listOf(before, after)).toEqual([
      'day call day 1, Fri 12 March: 08:00 > 07:30',
      'day places day 1, Fri 12 March: Old dairy > Old dairy, then Quay',
      'c shooting order day 1, Fri 12 March: number 3 of 3 > number 1 of 3',
    ]);
  });

  it('tell of a whole day that moved once, not of each of its scenes', () => {
    const before = shot(day(1, '2027-03-12', ['a', 'b']), day(2, '2027-03-13', ['c']));
    const after = shot(day(1, '2027-03-12', ['a', 'b']), day(2, '2027-03-20', ['c']));
    expect(listOf(before, after)).toEqual(['day date day 2, Sat 20 March: day 2, Sat 13 March > day 2, Sat 20 March']);
  });

  it('say that days were not compared when a draft tells of none', () => {
    const after = shot(day(1, '2027-03-12', ['a', 'b', 'c']));
    expect(compareDrafts(makeDraft([a, b, c]), after)).toMatchObject({ scenes: [], whole: [], daysCompared: false });
  });
});
