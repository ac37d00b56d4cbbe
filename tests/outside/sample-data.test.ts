import fs from 'node:fs';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/app/compile.js';
import { createTestHost, packageRoot } from '../support/test-host.js';

const read = (file: string) => fs.readFileSync(path.join(packageRoot, file));
const { files } = await compile(
  {
    bytes: read('samples/slack-water/slack-water.md'),
    file: 'slack-water.md',
    outputs: ['json', 'scenes', 'purchases'],
    book: null,
    today: '2026-04-01',
  },
  createTestHost(),
);
const textOf = (name: string) => String(files.find((file) => file.name === name)?.content);
const json = JSON.parse(textOf('breakdown.json'));

// JSON Schema draft 2020-12 as ajv reads it, RFC 4180 as csv-parse reads it.
describe('the sample, read by other programs', () => {
  it('is a breakdown by the published schema', () => {
    const schema = JSON.parse(read('src/render/json/breakdown.schema.json').toString());
    const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(schema);
    validate(json);
    expect(validate.errors).toBeNull();
  });

  it('names only scenes that exist', () => {
    const ids = new Set(json.scenes.map((scene: { id: string }) => scene.id));
    const named: string[] = [];
    JSON.stringify(json, (key, value) => {
      if (key === 'from' && value !== null) named.push(value);
      if (['seen', 'heard'].includes(key)) named.push(...value);
      if (key === 'scenes' && typeof value[0] === 'string') named.push(...value);
      return value;
    });
    expect(named.length).toBeGreaterThan(50);
    expect(named.filter((id) => !ids.has(id))).toEqual([]);
  });

  it('has the scene list of the JSON in the CSV', () => {
    const rows: Record<'number' | 'eighths' | 'place' | 'synopsis', string>[] = parse(textOf('scenes.csv'), {
      bom: true,
      columns: true,
    });
    expect(rows.map(({ number, eighths, place, synopsis }) => [number, Number(eighths), place, synopsis])).toEqual(
      json.scenes.map((scene: Record<'number' | 'eighths' | 'place' | 'synopsis', unknown>) => [
        scene.number,
        scene.eighths,
        scene.place,
        scene.synopsis,
      ]),
    );
  });

  it('buys only what the JSON lists', () => {
    const names = new Set(json.elements.map((element: { name: string }) => element.name));
    const rows: Record<'name', string>[] = parse(textOf('purchases.csv'), { bom: true, columns: true });
    expect(rows.length).toBeGreaterThan(20);
    expect(rows.filter((row) => !names.has(row.name))).toEqual([]);
  });
});
