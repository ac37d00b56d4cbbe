import { describe, expect, it } from 'vitest';
import { eighths, formatEighths } from '../../src/base/eighths.js';
import { paginate } from '../../src/page/paginate.js';
import { linesToEighths } from '../../src/page/scene-lengths.js';
import type { PageLine } from '../../src/page/types.js';
import type { Block } from '../../src/script/types.js';
import { pageMeasures, pageType, papers } from '../../src/trade/page-measures.js';
import { action, scene, script, speech, transition } from '../support/script-builder.js';

/** Inches as columns, 10 to the inch (ArtsEnt, artsentertainment.cc). */
const inches = (value: number) => Math.round(value * 10);

const text = (line: PageLine | undefined) => (line?.runs ?? []).map((run) => run.text).join('');

/** One-line actions, so many. */
const actions = (count: number): Block[] => Array.from({ length: count }, (_, at) => action(`Row ${at}.`));

describe('page measures', () => {
  // Academy Nicholl sample 1998 and 2014; Wikipedia, Screenplay; ArtsEnt.
  it('P3, P4: 12 point, 10 characters and 6 lines to the inch', () => {
    expect(pageType).toMatchObject({ size: 12, characterWidth: 72 / 10, leading: 72 / 6 });
  });
  // WMU (homepages.wmich.edu/~lipkin), Carnegie Library, Academy 2014, Gorman (paulgorman.org): 1.5 in left, 1.0 in right.
  it('P10-P12: headings and action are 60 characters from 1.5 in', () => {
    for (const name of ['heading', 'action'] as const) {
      expect(pageMeasures[name]).toMatchObject({ column: inches(1.5), width: inches(8.5 - 1.5 - 1.0) });
    }
  });
  // University of Drexel (pages.drexel.edu/~ina22/scrnfmt): 2.5 in from each edge; Gorman: the same.
  it('P13-P15: speech is 35 characters, 2.5 in from each edge', () => {
    expect(pageMeasures.dialogue).toMatchObject({ column: inches(2.5), width: inches(8.5 - 2.5 - 2.5) });
  });
  // Gorman: 3.0 in left, about 2.5 in wide.
  it('P16, P17: parentheticals are 25 characters from 3.0 in', () => {
    expect(pageMeasures.parenthetical).toMatchObject({ column: inches(3.0), width: inches(2.5) });
  });
  // Gorman: cue at 3.7 in, transition at 6.0 in or flush right.
  it('P18, P19: cue at 3.7 in, transition at 6.0 in', () => {
    expect(pageMeasures.cue.column).toBe(inches(3.7));
    expect(pageMeasures.transition.column).toBe(inches(6.0));
    const long = paginate(script([scene('INT. A - DAY', [transition('SLOW DISSOLVE THROUGH TO:')])])).pages.pages[0];
    const line = long?.lines.at(-1);
    expect((line?.column ?? 0) + text(line).length).toBe(inches(8.5 - 1.0));
  });
  it('P12, P15: fills a line of 60, of 35, and not one more', () => {
    const rows = (block: Block) => paginate(script([scene('INT. A - DAY', [block])])).pages.scenes[0]?.lines;
    expect(rows(action('a'.repeat(29), ''))).toBe(3);
    expect(rows(action(`${'a'.repeat(29)} ${'b'.repeat(30)}`))).toBe(3);
    expect(rows(action(`${'a'.repeat(30)} ${'b'.repeat(30)}`))).toBe(4);
    expect(rows(speech('NORA', `${'a'.repeat(17)} ${'b'.repeat(17)}`))).toBe(4);
    expect(rows(speech('NORA', `${'a'.repeat(18)} ${'b'.repeat(17)}`))).toBe(5);
  });
  // WMU, Gorman: 1 in top and bottom. ArtsEnt counts body lines 7 to 60.
  it('P22-P24: Letter holds 54 lines', () => {
    expect(papers.letter.bodyLines).toBe((11 - 1 - 1) * 6);
    expect(papers.letter.bodyLines).toBe(60 - 7 + 1);
    expect(papers.letter.bodyLines).toBeGreaterThanOrEqual(51); // P25: 51 to 57 by the Academy's bottom margin
    expect(papers.letter.bodyLines).toBeLessThanOrEqual(57);
  });
  // A4 is 0.69 in taller: 4 more lines.
  it('P7: A4 holds 58 lines', () => {
    expect(papers.a4.bodyLines).toBe(Math.floor((297 / 25.4 - 2) * 6));
  });
  // FilmScreenwriter (filmscreenwriter.net): 91 pages A4 = 98 pages Letter, one writer's script.
  it('P7: A4 against Letter gives about 91 pages for 98', () => {
    const scenes = Array.from({ length: 98 }, () => scene('INT. A - DAY', actions(26)));
    const letter = paginate(script(scenes)).pages.pages.length;
    const a4 = paginate(script(scenes, { paper: 'a4' })).pages.pages.length;
    expect(a4 / letter).toBeCloseTo(91 / 98, 1);
  });
  // P20: body starts on line 7, page number on line 3 (ArtsEnt); P27: 0.75 in from the right edge (Academy 1998).
  it('P20, P24, P27, P28: where the body and the page number stand', () => {
    expect(pageType.top / pageType.leading + 1).toBe(7);
    expect(pageType).toMatchObject({ numberLine: 3, numberRight: 0.75 * 72, firstNumberedPage: 2 });
  });
  // P40, P43: one blank line between elements and before a heading (WMU; Bookshep). P41: none inside a speech (ArtsEnt).
  it('P40, P41, P43, P44: blank lines', () => {
    const first = scene('INT. A - DAY', [action('One.'), speech('NORA', '(low)', 'Two.'), transition('CUT TO:')]);
    const { pages } = paginate(script([first, scene('INT. B - DAY', [action('Three.')])]));
    expect(pages.pages[0]?.lines.map((line) => [line.row, text(line)])).toEqual([
      [1, 'INT. A - DAY'],
      [3, 'One.'],
      [5, 'NORA'],
      [6, '(low)'],
      [7, 'Two.'],
      [9, 'CUT TO:'],
      [11, 'INT. B - DAY'],
      [13, 'Three.'],
    ]);
  });
});

describe('eighths', () => {
  // Wikipedia, Script breakdown; fromheretointernity.blogspot.com (28 June 2015): 1.5 pages = 12/8 = 1 4/8.
  it('E20: twelve eighths are 1 4/8', () => {
    expect(formatEighths(linesToEighths(81, 54, 'nearest'))).toBe('1 4/8');
  });
  // MasteringFilm (masteringfilm.com/the-mathematics-of-your-script).
  it('E21, E22: half a page is 4/8, one and a quarter is 1 2/8', () => {
    expect(formatEighths(linesToEighths(27, 54, 'nearest'))).toBe('4/8');
    expect(formatEighths(linesToEighths(54 * 1.25, 54, 'nearest'))).toBe('1 2/8');
    expect(formatEighths(linesToEighths(29, 58, 'nearest'))).toBe('4/8');
  });
  // CourseNotes (coursehero.com/file/6359806, 2010): always up.
  it('E23: 2.5 eighths are 3/8 when lengths go up', () => {
    expect(formatEighths(linesToEighths(2.5 * (54 / 8), 54, 'up'))).toBe('3/8');
    expect(formatEighths(linesToEighths(15, 54, 'up'))).toBe('3/8');
    expect(formatEighths(linesToEighths(15, 54, 'nearest'))).toBe('2/8');
  });
  // LAFCPUG forum (lafcpug.org/phorum, 28 May 2010): page 1 and the very top of page 2 are 1 1/8, not 2.
  it('E24: a scene that fills page 1 and the very top of page 2 is 1 1/8 when lengths go up', () => {
    const { pages } = paginate(script([scene('INT. A - DAY', actions(27))], { eighths: 'up' }));
    expect(pages.pages).toHaveLength(2);
    expect(formatEighths(pages.scenes[0]?.eighths ?? eighths(0))).toBe('1 1/8');
  });
  // MovieMaker (moviemaker.com/whats-in-an-eighth-assistant-director): a page is 8/8, whatever stands on it.
  it('E3: a scene that fills one page is 1, under either rounding', () => {
    const full = [...actions(25), action('Last.', 'Row.')];
    for (const rounding of ['nearest', 'up'] as const) {
      const { pages } = paginate(script([scene('INT. A - DAY', full)], { eighths: rounding }));
      expect(pages.pages[0]?.lines.at(-1)?.row).toBe(54);
      expect(pages.pages).toHaveLength(1);
      expect(formatEighths(pages.scenes[0]?.eighths ?? eighths(0))).toBe('1');
    }
  });
  // MovieMaker: one sentence is 1/8, be it a car that stops or an army at sunrise.
  it('E5, E25, E26: a scene of one sentence is 1/8', () => {
    const car = scene('EXT. ROAD - DAY', [action('A sports car stops and its driver steps out.')]);
    const army = scene('EXT. PLAIN - DAWN', [action('As far as the eye can see, an army waits for the sun.')]);
    const { pages } = paginate(script([car, army, scene('EXT. PLAIN - DAY', [])]));
    expect(pages.scenes.map((one) => formatEighths(one.eighths))).toEqual(['1/8', '1/8', '1/8']);
  });
  // MovieMaker: more than eight scenes on a page may total 9 or 10 eighths.
  it('E7: a page of ten scenes is 10 eighths', () => {
    const scenes = Array.from({ length: 10 }, () => scene('EXT. ROAD - DAY', [action('A car stops.')]));
    const { pages } = paginate(script(scenes));
    expect(pages.pages).toHaveLength(1);
    expect(pages.eighths).toBe(10);
  });
  // LAFCPUG: 90 pages over 20 days are 4.5 a day. MovieMaker: 94 over 15 are about 6 2/8.
  it('E27, E28: pages a day as eighths', () => {
    expect(formatEighths(linesToEighths((90 / 20) * 54, 54, 'nearest'))).toBe('4 4/8');
    expect(formatEighths(linesToEighths((94 / 15) * 54, 54, 'nearest'))).toBe('6 2/8');
  });
});
