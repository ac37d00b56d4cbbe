import { describe, expect, it } from 'vitest';
import type { Breakdown } from '../../../src/breakdown/types.js';
import { buildBreakdownJson } from '../../../src/render/json/breakdown-json.js';
import { renderJson } from '../../../src/render/json/render-json.js';
import { breadVan } from '../../support/bread-van.js';
import { makeRenderInput } from '../../support/render-input.js';

const json = JSON.parse(JSON.stringify(buildBreakdownJson(breadVan)));
const scene = (id: string) => json.scenes.find((one: { id: string }) => one.id === id);

describe('breakdown.json', () => {
  it('has the promised fields at the top', () => {
    expect(json).toMatchObject({ title: 'The Bread Van', draft: 'B', pages: 2, eighths: 20 });
    expect(json.screenTime).toEqual({ seconds: 175, low: 140, high: 228, pageRule: 150, noted: true });
    for (const list of ['scenes', 'cast', 'elements', 'places']) expect(Array.isArray(json[list])).toBe(true);
  });

  it('has the promised fields in every scene', () => {
    for (const one of json.scenes) {
      expect(Object.keys(one)).toEqual(
        expect.arrayContaining(
          [
            ['id', 'number', 'order', 'setting', 'place', 'placeParts', 'time', 'light', 'qualifiers', 'page'],
            ['eighths', 'screenTime', 'storyDay', 'storyDayReason', 'synopsis', 'cast', 'extras', 'elements'],
            ['wears', 'hazards', 'questions'],
          ].flat(),
        ),
      );
    }
    expect(scene('kitchen-1974')).toMatchObject({ storyDay: 'F1', storyDayReason: 'FLASHBACK in the heading' });
    expect(scene('road')).toMatchObject({ number: '4A', order: 4, setting: 'EXT', time: 'DAWN', light: 'dawn' });
  });

  it('tells people seen from people heard', () => {
    const [nora, tomi] = scene('yard').cast;
    expect(nora).toMatchObject({ name: 'Nora', presence: 'seen', voice: null });
    expect(tomi).toMatchObject({ name: 'Tomi', presence: 'heard', voice: 'off-screen' });
    expect(scene('road').extras).toMatchObject([
      { name: 'fishermen', count: 6 },
      { name: 'passers-by', count: null },
    ]);
  });

  it('tells a carried element with the scene it comes from', () => {
    const key = scene('yard').elements.find((one: { id: string }) => one.id === 'van-key');
    expect(key).toMatchObject({ carried: true, from: 'bakery-kneading', by: 'Tomi', words: '', mentions: [] });
    const lantern = scene('yard').elements.find((one: { id: string }) => one.id === 'storm-lantern');
    expect(lantern).toMatchObject({
      name: 'storm lantern',
      category: 'props',
      known: 'marked',
      carried: false,
      from: null,
      by: 'Nora',
      count: null,
      stateIn: 'lit',
      stateOut: 'broken',
      words: 'storm lantern',
      line: 22,
      mentions: [{ words: 'storm lantern', line: 22 }],
    });
  });

  it('never shows an offset in the source', () => {
    const keys = new Set<string>();
    JSON.stringify(json, (key, value) => {
      keys.add(key);
      return value;
    });
    for (const key of ['at', 'offset', 'column', 'start', 'end', 'range', 'place.at'])
      expect(keys.has(key)).toBe(false);
  });

  it('keeps one order of keys, whatever the order in the model', async () => {
    const turned = JSON.parse(JSON.stringify(breadVan), (_, value) =>
      value !== null && typeof value === 'object' && !Array.isArray(value)
        ? Object.fromEntries(Object.entries(value).reverse())
        : value,
    );
    const render = async (breakdown: unknown) => (await renderJson(makeRenderInput(breakdown as Breakdown))).files[0];
    expect(await render(turned)).toEqual(await render(breadVan));
    expect((await render(breadVan))?.name).toBe('breakdown.json');
  });

  it('rounds the dust of fractions away', () => {
    const dusty = { ...breadVan, pages: 1 / 3, screenTime: { ...breadVan.screenTime, seconds: 0.1 + 0.2 } };
    expect(buildBreakdownJson(dusty)).toMatchObject({ pages: 0.3, screenTime: { seconds: 0.3 } });
  });
});
