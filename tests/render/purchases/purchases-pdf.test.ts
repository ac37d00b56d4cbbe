import { describe, expect, it } from 'vitest';
import { renderPurchases } from '../../../src/render/purchases/render-purchases.js';
import { breadVan, breadVanPurchases } from '../../support/bread-van.js';
import { pdfLines } from '../../support/pdf-lines.js';
import { readPdf } from '../../support/pdf-positions.js';
import { makeRenderInput } from '../../support/render-input.js';

const { files, messages } = await renderPurchases(makeRenderInput(breadVan, breadVanPurchases));
const lines = await pdfLines(files[0]?.content);

describe('the purchase list', () => {
  it('comes on paper and as CSV', () => {
    expect(files.map((file) => file.name)).toEqual(['purchases.pdf', 'purchases.csv']);
    expect(messages).toEqual([]);
  });

  it('lies across the paper', async () => {
    const { pages } = await readPdf(files[0]?.content as Uint8Array);
    expect(pages[0]).toEqual({ width: 792, height: 612 });
    const a4 = await renderPurchases(makeRenderInput({ ...breadVan, paper: 'a4' }, breadVanPurchases));
    const [page] = (await readPdf(a4.files[0]?.content as Uint8Array)).pages;
    expect(page?.width).toBeCloseTo(841.89, 1);
    expect(page?.height).toBeCloseTo(595.28, 1);
  });

  it('has one line a thing, by department', () => {
    const text = lines.join('\n');
    const at = (word: string) => text.indexOf(word);
    const order = [
      'COSTUME',
      'white apron 1, 2',
      'PROPS',
      'bread dough 1 yes',
      'storm lantern 2',
      'crate (found) 2 6',
      'ART',
    ];
    const places = order.map(at);
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('asks for every state, and whether each take uses it up', () => {
    expect(lines.join(' ')).toContain('in each of these states: clean; soaked');
    expect(lines.find((line) => line.startsWith('letter'))).toBe('letter 3 yes no Nora');
  });

  it('says so when there is nothing to get', async () => {
    const none = await renderPurchases(makeRenderInput(breadVan, []));
    expect((await pdfLines(none.files[0]?.content)).join(' ')).toContain('The script names nothing to get.');
  });
});
