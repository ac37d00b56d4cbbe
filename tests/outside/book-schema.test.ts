import { readFileSync, writeFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { printBookSchema } from '../../src/book/book-schema.js';
import { readBook } from '../../src/book/read-book.js';
import { bookTemplate } from '../../src/book/template.js';
import { fullBook } from '../book/full-book.js';

const file = new URL('../../src/book/book.schema.json', import.meta.url);
if (process.env.UPDATE_SCHEMA) writeFileSync(file, printBookSchema());
const schema = JSON.parse(readFileSync(file, 'utf8'));
const validate = new Ajv2020({ strict: false, allErrors: true }).compile(schema);

describe('the published schema of the book, against the validator ajv', () => {
  it('is the one that the reader checks by (UPDATE_SCHEMA=1 writes it anew)', () => {
    expect(readFileSync(file, 'utf8')).toBe(printBookSchema());
  });

  it('is itself a schema of draft 2020-12', () => {
    expect(new Ajv2020({ strict: false }).validateSchema(schema)).toBe(true);
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  });

  it.each([
    ['a full book', fullBook],
    ['a new book', bookTemplate],
    ['nothing', ''],
  ])('accepts %s, as the reader does', (_, text) => {
    expect(readBook(text, 'book.yaml').messages).toEqual([]);
    validate(parse(text));
    expect(validate.errors ?? []).toEqual([]);
  });

  it.each([
    'money: { budgt: 3 }',
    'money: { currency: 12345 EUR }',
    'days: [{ date: tomorrow }]',
    'days: [{ date: 2027-03-12, call: half past seven }]',
    'elements: { letter: { get: steal } }',
    'elements: { letter: { takes: 0 } }',
    'elements: { letter: { takes: 1.5 } }',
    'elements: { letter: { price: cheap } }',
    'elements: { letter: { used up: sometimes } }',
    'elements: { letter: { pack: 3 barrels } }',
    'elements: { letter: { prep: [{ who: sam }] } }',
    'elements: [letter]',
    'locations: { hut: { coordinates: north } }',
    'usual: { golden hour: late }',
    'helpers: { sam: { does: [everything] } }',
    'scenes: { s1: { setups: many } }',
    'money: { budget: -100 }',
    'money: { other costs: [{ what: fuel, cost: -45 }] }',
    'elements: { letter: { price: -5 } }',
    'elements: { letter: { paid: "-3.00 EUR" } }',
    'elements: { letter: { deposit: -7 } }',
    'elements: { letter: { refund: -7 } }',
    'elements: { letter: { delivery: 1001 } }',
    'elements: { letter: { prep: [{ task: dye, hours: 1001 }] } }',
    'elements: { letter: { states: { wet: { undo: 1001 } } } }',
    'prep: { hours a day: 0 }',
    'prep: { hours a day: 25 }',
    'people: { bob: { hours a day: 30 } }',
    'usual: { rest hours: 48 }',
    'nonsense: 1',
  ])('refuses %s, as the reader does', (text) => {
    expect(readBook(text, 'book.yaml').messages.length).toBeGreaterThan(0);
    expect(validate(parse(text))).toBe(false);
  });

  it('tells an editor what every name means', () => {
    const bare: string[] = [];
    const visit = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return;
      const { properties } = node as { properties?: Record<string, Record<string, unknown>> };
      for (const [name, value] of Object.entries(properties ?? {})) {
        const seen = describedBy(value);
        if (!seen) bare.push(`${path}.${name}`);
      }
      for (const [name, value] of Object.entries(node)) visit(value, `${path}.${name}`);
    };
    const describedBy = (node: Record<string, unknown>): boolean =>
      typeof node.description === 'string' ||
      (typeof node.$ref === 'string' && describedBy(schema.$defs[(node.$ref as string).split('/').at(-1) as string]));
    visit(schema, '');
    expect(bare).toEqual([]);
  });
});
