import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { formatCsv } from '../../../src/render/csv/format-csv.js';
import { purchaseRows } from '../../../src/render/purchases/purchases-csv.js';
import { breadVanPurchases } from '../../support/bread-van.js';

type Row = Record<'name' | 'in script' | 'used up in each take? yes / no', string>;
const rows: Row[] = parse(formatCsv(purchaseRows(breadVanPurchases)), { bom: true, columns: true });
const row = (name: string) => rows.find((one) => one.name === name) as Row;

describe('purchases.csv', () => {
  it('has one row a thing to get', () => {
    expect(rows.map((one) => one.name)).toEqual(['white apron', 'bread dough', 'storm lantern', 'crate', 'letter']);
  });

  it('tells what the script knows and leaves the rest blank', () => {
    expect(row('white apron')).toEqual({
      department: 'costume',
      name: 'white apron',
      description: '',
      category: 'Costumes',
      scenes: '1; 2',
      'first scene': '1',
      states: 'clean; soaked',
      'in script': '',
      'to get': '',
      'used up in each take? yes / no': '',
      'who uses it': 'Nora',
      known: 'noted',
      source: '',
      price: '',
      ordered: '',
      received: '',
    });
    expect(row('crate')['in script']).toBe('6');
  });

  it('says of what the words tell that each take uses it up', () => {
    expect(row('bread dough')['used up in each take? yes / no']).toBe('yes');
    expect(row('letter')['used up in each take? yes / no']).toBe('');
  });
});
