import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { renderers } from '../../src/render/renderers.js';
import type { OutputName } from '../../src/render/types.js';
import { breadVan, breadVanPurchases } from '../support/bread-van.js';
import { makeElement } from '../support/make-breakdown.js';
import { makeRenderInput } from '../support/render-input.js';

const loads = vi.hoisted(() => ({ pdfkit: 0 }));
vi.mock('pdfkit', async (importOriginal) => {
  loads.pdfkit++;
  return importOriginal();
});

const render = async (name: OutputName, breakdown = breadVan) =>
  (await renderers[name].load())(makeRenderInput(breakdown, breadVanPurchases));
const told = /^(?:name|words|state|stateIn|stateOut|by|text|settle|description|synopsis|heading|place|title|draft)$/;
const onPaper: OutputName[] = ['sheets', 'costumes', 'props', 'indexes', 'purchases', 'questions'];

describe('the record of renderers', () => {
  it('loads no PDF code for data alone', async () => {
    await render('json');
    await render('scenes');
    expect(loads.pdfkit).toBe(0);
    await render('indexes');
    expect(loads.pdfkit).toBe(1);
  });

  it.each(['json', 'scenes', ...onPaper] as OutputName[])('%s writes the files it promises', async (name) => {
    const { files, messages } = await render(name);
    expect(files.map((file) => file.name)).toEqual(renderers[name].files);
    expect(messages).toEqual([]);
  });

  it('never lets two outputs write one file', () => {
    const names = Object.values(renderers).flatMap((renderer) => renderer.files);
    expect(new Set(names).size).toBe(names.length);
  });

  it.each(onPaper)('%s gives the same bytes twice', async (name) => {
    expect((await render(name)).files).toEqual((await render(name)).files);
  });

  it.each(['props', 'indexes'] as OutputName[])('%s tells of a sign that no face has', async (name) => {
    const [first, ...rest] = breadVan.scenes;
    if (!first) throw new Error('no scene');
    const scenes = [{ ...first, elements: [makeElement({ name: 'sign \u05d0' })] }, ...rest];
    const elements = breadVan.elements.map((one, i) => (i === 0 ? { ...one, name: 'sign \u05d0' } : one));
    const { messages } = await render(name, { ...breadVan, scenes, elements });
    expect(messages.map((message) => message.code)).toEqual(['font-glyph-missing']);
  });

  it.each(['json', 'scenes', ...onPaper] as OutputName[])('%s prints whatever a name holds', async (name) => {
    const text = fc.oneof(fc.string({ unit: 'binary' }), fc.constant(''), fc.constant('x'.repeat(400)));
    await fc.assert(
      fc.asyncProperty(text, fc.nat(400), async (word, count) => {
        const breakdown = JSON.parse(JSON.stringify(breadVan), (key, value) => {
          if (key === 'count') return count;
          return typeof value === 'string' && told.test(key) ? word : value;
        });
        const { files } = await render(name, breakdown);
        expect(files.map((file) => file.name)).toEqual(renderers[name].files);
      }),
      { numRuns: 20 },
    );
  });
});
