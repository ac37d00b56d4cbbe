import { describe, expect, it } from 'vitest';
import { renderCostumes } from '../../../src/render/costumes/render-costumes.js';
import { breadVan } from '../../support/bread-van.js';
import {
  makeBreakdown,
  makeCast,
  makeChange,
  makeElement,
  makeEntry,
  makeGarment,
  makePerson,
  makeQuestion,
  makeScene,
} from '../../support/make-breakdown.js';
import { pdfLines } from '../../support/pdf-lines.js';
import { makeRenderInput } from '../../support/render-input.js';

const linesOf = async (breakdown = breadVan) =>
  pdfLines((await renderCostumes(makeRenderInput(breakdown))).files[0]?.content);
const lines = await linesOf();
const linesAfter = (start: string) => lines.slice(lines.findIndex((line) => line.startsWith(start)) + 1);

describe('costumes.pdf', () => {
  it('asks on every page what a new day leaves open, and says where nothing is told', async () => {
    const day = (number: number) => ({
      label: `D${number}`,
      series: 'D' as const,
      number,
      reason: 'a test',
      sure: true,
    });
    const scene = (order: number, garments: readonly string[], perhaps: readonly string[]) =>
      makeScene({
        order,
        place: 'Yard',
        storyDay: day(order),
        cast: [makeCast({ name: 'Bo' })],
        wears: [
          { person: 'Bo', change: order, changeOut: order, garments: garments.map((name) => makeGarment({ name })) },
        ],
        perhapsWorn: perhaps.length > 0 ? [{ person: 'Bo', garments: perhaps, from: 'scene-1' }] : [],
      });
    const scenes = [scene(1, ['cap'], []), scene(2, [], ['cap']), scene(3, [], [])];
    const changes = scenes.map(({ id, wears, storyDay }, i) =>
      makeChange({
        number: i + 1,
        storyDay: storyDay.label,
        scenes: [id],
        garments: wears.flatMap(({ garments }) => garments.map((one) => ({ ...one, states: [] }))),
      }),
    );
    const cast = [makePerson({ name: 'Bo', seen: scenes.map(({ id }) => id), changes })];
    const text = (await linesOf(makeBreakdown({ scenes, cast }))).join(' ');
    expect(text).toContain('change 2, sc 2: ? as before');
    expect(text).toContain('change 3, sc 3: not told');
    expect(text).toContain('Scene 2, a new day: ? still cap (as in sc 1)? Ask. Yes');
    expect(text).toContain('Bo: ? still cap (as in sc 1): ask.');
    expect(text).toContain('? In sc 3 the script does not tell what Bo wears. Ask, and write it here:');
  });

  it('lists the open questions about clothes on its first page, and no others', async () => {
    const question = (key: string, text: string) => makeQuestion({ id: `${key}-yard`, key, text });
    const questions = [
      question('clothes-bo', 'Still the same clothes?'),
      question('wet-bo', 'Which are wet?'),
      question('along-coat', 'Does the coat come along?'),
      question('state-lamp', 'In which state is the lamp?'),
      question('day', 'Is this still D1?'),
    ];
    const elements = [makeElement({ name: 'coat', category: 'costumes' }), makeElement({ name: 'lamp' })];
    const scenes = [makeScene({ order: 1, place: 'Yard', elements, questions })];
    const entries = elements.map((one) =>
      makeEntry({ id: one.id, name: one.name, category: one.category, scenes: ['scene-1'] }),
    );
    const text = (await linesOf(makeBreakdown({ scenes, elements: entries }))).join(' ');
    for (const asked of questions.slice(0, 3)) expect(text).toContain(`? sc 1: ${asked.text}`);
    for (const other of questions.slice(3)) expect(text).not.toContain(other.text);
  });

  it('opens with what to read first', () => {
    expect(lines[0]).toBe('Costumes: The Bread Van');
    expect(lines[1]).toContain('Read this first.');
    expect(lines.join(' ')).toContain('The Bread Van, draft B, 2026-11-02');
  });

  it('shows people by story days, the change in each cell', () => {
    const grid = linesAfter('Who wears which change');
    expect(grid[0]).toBe('Person Day D1 Flashback F1 Day D2');
    expect(grid[1]).toBe('Nora change 1, sc 1, 2 change 2, sc 3 change 3, sc 4A');
    expect(grid[2]).toBe('Tomi change 1, sc 1');
  });

  it('lists a change head to foot, with states and with what must not be worn', () => {
    expect(linesAfter('Nora, change 1:').slice(1, 7)).toEqual([
      'Neck NO scarf must not be worn: check',
      'Body white apron sc 1: clean, put on in the scene',
      'sc 2: clean → soaked',
      'grey jumper',
      'Legs trousers or skirt: not told: ask',
      'Feet work boots (found)',
    ]);
  });

  it('runs through the scenes: the whole list first, then only what differs', () => {
    const text = linesAfter('Costumes, scene by scene').join(' ');
    expect(text).toContain('Nora, change 1: NO scarf, white apron (clean, put on in the scene), grey jumper.');
    expect(text).toContain('Nora, change 1: as before; NO scarf, white apron (clean → soaked).');
    expect(text).toContain('6 fishermen: ? the script does not tell.');
    expect(text).toContain('passers-by, how many?: ? the script does not tell.');
  });

  it('leaves people out who are only heard', () => {
    const scene2 = linesAfter('Scene 2').join(' ').split('Scene 3')[0];
    expect(scene2).not.toContain('Tomi');
  });

  it('asks for what no line tells', async () => {
    const bare = await linesOf(
      makeBreakdown({
        scenes: [makeScene({ order: 1, place: 'Yard', cast: [makeCast({ name: 'Bo' })] })],
        cast: [makePerson({ name: 'Bo', seen: ['scene-1'] })],
      }),
    );
    expect(bare).toContain('Bo ? sc 1: not told');
    expect(bare.join(' ')).toContain('In sc 1 the script does not tell what Bo wears.');
    expect(bare).toContain('Bo: ? the script does not tell.');
  });

  it('says a change on camera, clothes on nobody, and make-up', async () => {
    const scene = makeScene({
      order: 1,
      place: 'Yard',
      cast: [makeCast({ name: 'Bo' })],
      elements: [
        makeElement({ name: 'wet suit', category: 'costumes', stateIn: 'dripping' }),
        makeElement({ name: 'blood to the elbows', category: 'makeup', by: 'Bo' }),
      ],
      wears: [{ person: 'Bo', change: 1, changeOut: 2, garments: [makeGarment({ name: 'jumper', action: 'put on' })] }],
    });
    const text = (await linesOf(makeBreakdown({ scenes: [scene] }))).join(' ');
    expect(text).toContain('Bo, change 1 → 2 in the scene: first as before; then jumper.');
    expect(text).toContain('Not on anybody: wet suit, dripping');
    expect(text).toContain('Make-up: blood to the elbows, Bo');
  });

  it('says a state once while it lasts', async () => {
    const shirt = (part = {}) => makeGarment({ name: 'shirt', ...part });
    const states = [
      { stateOut: 'torn' },
      { stateIn: 'torn', stateOut: 'torn' },
      { stateIn: 'torn', stateOut: 'mended' },
    ];
    const scenes = states.map((state, i) =>
      makeScene({
        order: i + 1,
        place: 'Yard',
        cast: [makeCast({ name: 'Bo' })],
        wears: [{ person: 'Bo', change: 1, changeOut: 1, garments: [shirt(state)] }],
      }),
    );
    const ids = scenes.map((scene) => scene.id);
    const change = makeChange({ number: 1, scenes: ids, garments: [{ ...shirt(), states: [] }] });
    const text = await linesOf(
      makeBreakdown({ scenes, cast: [makePerson({ name: 'Bo', seen: ids, changes: [change] })] }),
    );
    const at = text.findIndex((line) => line.startsWith('Body shirt'));
    expect(text.slice(at, at + 2)).toEqual(['Body shirt sc 1: → torn', 'sc 3: torn → mended']);
    expect(text).toContain('Bo, change 1: as before; shirt (torn).');
  });
});
