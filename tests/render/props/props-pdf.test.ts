import { describe, expect, it } from 'vitest';
import { renderProps } from '../../../src/render/props/render-props.js';
import { breadVan } from '../../support/bread-van.js';
import { makeBreakdown, makeElement, makeGarment, makeHazard, makeScene } from '../../support/make-breakdown.js';
import { pdfLines } from '../../support/pdf-lines.js';
import { readPdf } from '../../support/pdf-positions.js';
import { makeRenderInput } from '../../support/render-input.js';

const linesOf = async (breakdown = breadVan) =>
  pdfLines((await renderProps(makeRenderInput(breakdown))).files[0]?.content);
const lines = await linesOf();
/** What stands between the lines of a list where it runs on to another page. */
const turn = /page \d+ of \d+$|^No word after a name|^Scene What Who/;
const list = lines
  .slice(lines.indexOf('In hand, scene by scene') + 2, lines.indexOf('Things that change or are used up'))
  .filter((line) => !turn.test(line));

describe('props.pdf', () => {
  it('names the dangers on the first page, and the place sheet has a blank for the person in charge', () => {
    expect(lines.slice(0, lines.indexOf('In hand, scene by scene')).join(' ')).toContain('Rain and electricity (sc 2)');
    expect(lines).toContain('Rain and electricity 2');
    expect(lines.join(' ')).not.toMatch(/\b(?:is|are) safe\b/);
  });

  it('asks the open questions about its own things only', () => {
    expect(lines).toContain('Open questions ? sc 2: Does Nora light the lantern with matches? yes no');
    expect(lines.join(' ')).not.toContain('handles the dog');
  });

  it('lists everything in hand in story order: who has it, its state, where it goes', () => {
    expect(list).toEqual([
      '1 Inside, Bakery, back room, night, story day D1',
      'bread dough Nora used up',
      'van key Tomi → in Tomi’s pocket sc 2',
      '2 Outside, Yard, continuous, by night, story day D1',
      'Rain and electricity',
      'storm lantern Nora lit → broken ends here',
      'brass',
      'bread van sc 4A',
      'yard dog ends here',
      '6 × crate (found) ends here',
      'matches (implied, likely) used up',
      'van key (carried from sc 1) Tomi in Tomi’s pocket ends here',
      '3 Inside, Family kitchen, day (flashback, 1974), flashback day F1',
      'letter Nora → torn ends here',
      '4A Outside, Harbour road, dawn, story day D2',
      'bread van muddy ends here',
    ]);
  });

  it('leaves sounds, effects and worn things out', async () => {
    const scene = makeScene({
      order: 1,
      place: 'Yard',
      elements: [
        makeElement({ name: 'thunder', category: 'sound' }),
        makeElement({ name: 'smoke', category: 'effects' }),
        makeElement({ name: 'ring on a chain', worn: true, by: 'Bo' }),
      ],
      wears: [{ person: 'Bo', change: 1, changeOut: 1, garments: [makeGarment({ name: 'ring on a chain' })] }],
    });
    const text = (await linesOf(makeBreakdown({ scenes: [scene] }))).join(' ');
    expect(text).toContain('nothing in hand');
    expect(text).not.toMatch(/thunder|smoke|ring on a chain/);
  });

  it('has a sheet for each place: what stands there, what is dangerous, blanks for whom to ask', () => {
    const sheet = lines.slice(lines.indexOf('Place sheet: Bakery'));
    expect(sheet).toContain('Bakery - back room, inside 1 wall clock (found)');
    expect(sheet.join(' ')).toContain('Whom to ask:');
    expect(lines).not.toContain('Place sheet: Harbour road');
    expect(lines.slice(lines.indexOf('Place sheet: Yard')).join(' ')).toMatch(/Dangers here.*Rain and electricity 2/);
  });

  it('shows the chain of states', () => {
    const chain = lines.slice(lines.indexOf('Things that change or are used up'));
    expect(chain).toContain('storm lantern lit: from sc 2');
    expect(chain).toContain('broken: changes on camera in sc 2');
  });

  it('says of food that each take uses it up', () => {
    expect(lines).toContain('bread dough used up in each take, sc 1');
  });

  it('gives every paper lines for its exact words', () => {
    expect(lines).toContain('letter: sc 3');
    expect(lines.join(' ')).toMatch(/by hand, written by.*spelling checked by/);
  });

  it('has a sheet for blades of its own only when there are blades, without a word of guns', async () => {
    expect(lines.join(' ')).not.toContain('Blades');
    const blade = makeHazard({ id: 'H2', title: 'Blades and points', words: 'bread knife', precaution: 'Blunt it.' });
    const scenes = [1, 2].map((order) => makeScene({ order, place: 'Yard', hazards: [blade] }));
    const { files } = await renderProps(makeRenderInput(makeBreakdown({ scenes })));
    const { texts, pages } = await readPdf(files[0]?.content as Uint8Array);
    const title = texts.find((piece) => piece.text.trim() === 'Blades');
    expect(title?.page).toBe(pages.length);
    expect(title?.y).toBeLessThan(80);
    const sheet = (await pdfLines(files[0]?.content)).join(' ');
    expect(sheet).toContain('Blades and points: sc 1, 2. “bread knife” Blunt it.');
    expect(sheet).toContain('One adult keeps them and nobody else:');
    expect(sheet).not.toMatch(/unloaded|live/);
  });
});
