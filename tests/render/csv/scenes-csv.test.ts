import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { renderScenes } from '../../../src/render/scenes/render-scenes.js';
import type { RenderInput } from '../../../src/render/types.js';
import { breadVan } from '../../support/bread-van.js';

const rendered = await renderScenes({ breakdown: breadVan } as RenderInput);
const rows: Record<'number' | 'length' | 'extras', string>[] = parse(rendered.files[0]?.content as string, {
  bom: true,
  columns: true,
});

describe('scenes.csv', () => {
  it('has one row a scene, in script order', () => {
    expect(rendered.files[0]?.name).toBe('scenes.csv');
    expect(rows.map((row) => row.number)).toEqual(['1', '2', '3', '4A']);
  });

  it('tells all of the scene list', () => {
    expect(rows[1]).toEqual({
      number: '2',
      'INT/EXT': 'EXT',
      place: 'Yard',
      time: 'CONTINUOUS',
      light: 'night',
      'story day': 'D1',
      page: '1',
      eighths: '11',
      length: '1 3/8 pages',
      seconds: '85',
      'seconds, low': '68',
      'seconds, high': '111',
      'seconds, page rule': '83',
      people: 'Nora',
      'heard only': 'Tomi (off-screen)',
      extras: '',
      synopsis: 'Rain. The van will not start; the dog guards the crates.',
    });
  });

  it('counts extras, and asks where the script does not count', () => {
    expect(rows[3]?.extras).toBe('6 fishermen; passers-by (how many?)');
  });

  it('never writes a length that a spreadsheet takes for a date', () => {
    for (const row of rows) expect(row.length).toMatch(/ pages?$/);
  });
});
