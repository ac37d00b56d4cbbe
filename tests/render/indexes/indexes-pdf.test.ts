import { describe, expect, it } from 'vitest';
import { renderIndexes } from '../../../src/render/indexes/render-indexes.js';
import { breadVan } from '../../support/bread-van.js';
import { makeBreakdown, makeElement, makeExtra, makeScene } from '../../support/make-breakdown.js';
import { pdfLines } from '../../support/pdf-lines.js';
import { makeRenderInput } from '../../support/render-input.js';

const lines = await pdfLines((await renderIndexes(makeRenderInput(breadVan))).files[0]?.content);

describe('indexes.pdf', () => {
  it('tells of each person where seen, where only heard, and the changes', () => {
    expect(lines).toContain('Nora 1–4A change 1: story day D1, sc 1, 2');
    expect(lines).toContain('also called The baker change 2: flashback day F1, sc 3');
    expect(lines).toContain('Tomi 1 2, 4A change 1: story day D1, sc 1');
    expect(lines).toContain('age 16, MINOR');
  });

  it('tells of extras how many', () => {
    expect(lines).toContain('fishermen 6 4A');
    expect(lines).toContain('passers-by how many? 4A');
  });

  it('lists background people apart, with the number of each scene and what they wear and hold', async () => {
    const scene = (order: number, count: number | null) =>
      makeScene({
        order,
        place: 'Yard',
        extras: [makeExtra({ name: 'porters', count })],
        elements: [makeElement({ name: 'caps', category: 'costumes', by: 'porters' })],
      });
    const scenes = [scene(1, 4), scene(2, 6), scene(3, null)];
    const found = await pdfLines((await renderIndexes(makeRenderInput(makeBreakdown({ scenes })))).files[0]?.content);
    expect(found).toContain('By background people');
    expect(found).toContain('porters 6 1–3 4: sc 1 caps');
    expect(found).toEqual(expect.arrayContaining(['6: sc 2', 'how many?: sc 3']));
  });

  it('lists a scene of two places under both', async () => {
    const places = [
      { name: 'Van / Quay', scenes: ['s1'] },
      { name: 'Quay', scenes: ['s2'] },
    ].map((one) => ({ ...one, id: one.name, settings: ['EXT' as const], areas: [], dressing: [], sets: [] }));
    const scenes = [
      makeScene({ order: 1, id: 's1', place: 'Van / Quay' }),
      makeScene({ order: 2, id: 's2', place: 'Quay' }),
    ];
    const made = { ...makeBreakdown({ scenes }), places };
    const found = await pdfLines((await renderIndexes(makeRenderInput(made))).files[0]?.content);
    expect(found).toEqual(expect.arrayContaining([expect.stringMatching(/^Quay 1, 2 nothing named/)]));
    expect(found).toEqual(expect.arrayContaining(['as Van / Quay: sc 1', 'Van 1 see Van / Quay']));
  });

  it('tells of each thing every name, scenes, count, who, states', () => {
    expect(lines).toContain('storm lantern 2 Nora lit: from sc 2');
    expect(lines).toContain('also called lamp broken: changes on camera in sc 2');
    expect(lines).toContain('crate (found) 2 6');
  });

  it('orders things by category, then by name', () => {
    const at = (line: string) => lines.findIndex((one) => one.startsWith(line));
    const order = [
      'PROPS',
      'crate',
      'matches',
      'storm lantern',
      'van key',
      'FOOD AND DRINK',
      'bread dough',
      'GRAPHICS',
    ];
    const places = order.map(at);
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('tells of rooms of a place which scenes they have, and where a thing stands', async () => {
    const [bakery, ...rest] = breadVan.places;
    if (!bakery) throw new Error('no place');
    const places = [
      {
        ...bakery,
        scenes: ['bakery-kneading', 'yard'],
        sets: [...bakery.sets, { setting: 'EXT' as const, place: 'BAKERY - RAMP', scenes: ['yard'] }],
      },
      ...rest,
    ];
    const { files } = await renderIndexes(makeRenderInput({ ...breadVan, places }));
    const found = await pdfLines(files[0]?.content);
    expect(found).toContain('Bakery 1, 2 wall clock (found): sc 1');
    expect(found).toContain('Inside, Bakery - back room: sc 1');
    expect(found).toContain('Outside, Bakery - Ramp: sc 2');
  });

  it('tells of each place its areas, scenes and dressing', () => {
    expect(lines).toContain('Bakery 1 wall clock (found)');
    expect(lines).toContain('with back room');
    expect(lines).toContain('Harbour road 4A nothing named');
  });
});
