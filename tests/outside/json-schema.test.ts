import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { buildBreakdownJson } from '../../src/render/json/breakdown-json.js';
import { breadVan } from '../support/bread-van.js';
import { makeBreakdown } from '../support/make-breakdown.js';

// JSON Schema, draft 2020-12 (json-schema.org), as the validator ajv implements it.
const schemaText = readFileSync(new URL('../../src/render/json/breakdown.schema.json', import.meta.url), 'utf8');
const schema = JSON.parse(schemaText);
const validate = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);

const copyOf = () => JSON.parse(JSON.stringify(buildBreakdownJson(breadVan)));

describe('the published schema', () => {
  it('is a draft 2020-12 schema with a description on every field', () => {
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    const bare = Object.entries({ top: schema, ...schema.$defs }).flatMap(([owner, one]) =>
      Object.entries((one as { properties?: Record<string, { description?: string; $ref?: string }> }).properties ?? {})
        .filter(([, field]) => !field.description && !field.$ref)
        .map(([name]) => `${owner}.${name}`),
    );
    expect(bare).toEqual([]);
  });

  it.each([
    ['a full breakdown', breadVan],
    ['an empty one', makeBreakdown()],
  ])('accepts %s', (_, breakdown) => {
    validate(JSON.parse(JSON.stringify(buildBreakdownJson(breakdown))));
    expect(validate.errors).toBeNull();
  });

  it('refuses a field it does not know, wherever it stands', () => {
    const places: ((json: ReturnType<typeof copyOf>) => object)[] = [
      (json) => json,
      (json) => json.scenes[0],
      (json) => json.scenes[0].elements[0],
      (json) => json.scenes[0].elements[0].mentions[0],
      (json) => json.scenes[0].wears[0].garments[0],
      (json) => json.cast[0].changes[0].garments[0].states[0],
      (json) => json.places[0].dressing[0],
    ];
    for (const find of places) {
      const json = copyOf();
      Object.assign(find(json), { offset: 12 });
      expect(validate(json)).toBe(false);
    }
  });

  it('refuses people among the elements', () => {
    for (const category of ['cast', 'extras']) {
      const json = copyOf();
      json.scenes[0].elements[0].category = category;
      expect(validate(json)).toBe(false);
    }
  });
});
