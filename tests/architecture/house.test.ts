import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { messageRegistry } from '../../src/messages/registry.js';
import { categories } from '../../src/trade/categories.js';
import { packageRoot } from '../support/test-host.js';

const sources = fs
  .readdirSync(path.join(packageRoot, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'));
const read = (name: string) => fs.readFileSync(path.join(packageRoot, 'src', name), 'utf8');

describe('the house', () => {
  it('has message codes in one way of writing, each used somewhere', () => {
    const text = sources
      .filter((name) => !name.startsWith('messages'))
      .map(read)
      .join('\n');
    for (const code of Object.keys(messageRegistry)) {
      expect(code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(text, `message ${code} is never said`).toContain(`'${code}'`);
    }
  });

  it('gives every message code to one layer only', () => {
    const tables = sources.filter((name) => name.startsWith('messages') && !/registry|define/.test(name)).map(read);
    const codes = tables.flatMap((text) =>
      [...text.matchAll(/^ {2}'?([a-z0-9]+(?:-[a-z0-9]+)+)'?: define/gm)].map((m) => m[1]),
    );
    expect(new Set(codes).size).toBe(codes.length);
    expect(codes.length).toBe(Object.keys(messageRegistry).length);
  });

  it('touches Node only in the host', () => {
    const touching = sources.filter((name) => /from 'node:/.test(read(name)));
    expect(touching.filter((name) => !/^(host|find\/build)\//.test(name))).toEqual([]);
  });

  it('has every category once, with a definition and a source', () => {
    const words = categories.flatMap((category) => category.written);
    expect(new Set(words).size).toBe(words.length);
    for (const category of categories) {
      expect(category.written).toContain(category.name);
      expect(category.definition.length).toBeGreaterThan(20);
      expect(category.source).not.toBe('');
    }
  });
});
