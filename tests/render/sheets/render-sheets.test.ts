import { describe, expect, it } from 'vitest';
import type { Breakdown, BreakdownScene } from '../../../src/breakdown/types.js';
import { readFontFile } from '../../../src/host/font-files.js';
import { sayRender } from '../../../src/messages/render.js';
import { areaOf, margins, mm, writingLine } from '../../../src/render/layout/measures.js';
import { heightOf } from '../../../src/render/layout/strips.js';
import { createTypesetter } from '../../../src/render/layout/typesetter.js';
import { fontBookOf } from '../../../src/render/pdf/font-book.js';
import { renderSheets } from '../../../src/render/sheets/render-sheets.js';
import { createSheetSetter } from '../../../src/render/sheets/scene-sheet.js';
import { createContext } from '../../../src/render/sheets/sheet-context.js';
import { hazards } from '../../../src/trade/hazards.js';
import { breadVan } from '../../support/bread-van.js';
import { crowdedScene } from '../../support/crowded-scene.js';
import { makeBreakdown, makeCast, makeElement, makeGarment, makeScene } from '../../support/make-breakdown.js';
import { readPdfType } from '../../support/pdf-fonts.js';
import { type PdfContent, readPdf } from '../../support/pdf-positions.js';
import { makeRenderInput } from '../../support/render-input.js';

async function render(breakdown: Breakdown) {
  const { files, messages } = await renderSheets(makeRenderInput(breakdown));
  expect(files.map((file) => file.name)).toEqual(['sheets.pdf']);
  const bytes = files[0]?.content as Uint8Array;
  return { bytes, messages, pdf: await readPdf(bytes) };
}

/** The words of a page as one text, spaces folded. */
function pageText(pdf: PdfContent, page: number): string {
  const words = pdf.texts.filter((text) => text.page === page).map((text) => text.text);
  return words.join(' ').replace(/\s+/g, ' ');
}

const scenesOnly = (breakdown: Breakdown) => breakdown.scenes.length;
const [cover, list, firstSheet] = [1, 2, 3];

describe('the sheets, read by pdfjs-dist', async () => {
  const { bytes, messages, pdf } = await render(breadVan);

  it('has a cover, the scene list, one page a scene and the cautions', () => {
    expect(messages).toEqual([]);
    expect(pdf.pages).toHaveLength(2 + scenesOnly(breadVan) + 1);
    expect(pageText(pdf, cover)).toContain('The Bread Van');
    expect(pageText(pdf, list)).toContain('The scenes, in story order');
    breadVan.scenes.forEach((scene, i) => {
      expect(pageText(pdf, firstSheet + i)).toMatch(new RegExp(`^Scene ${scene.number}\\. (Inside|Outside), `));
    });
    expect(pageText(pdf, 7)).toContain('Cautions');
  });

  it('keeps 20 mm white at the binding side and 12 mm elsewhere', () => {
    expect(margins.binding).toBeCloseTo(56.69, 2);
    expect(margins.edge).toBeCloseTo(34.02, 2);
    for (const { page, x, y } of pdf.texts) {
      const { height } = pdf.pages[page - 1] as { height: number };
      expect(x).toBeGreaterThanOrEqual(mm(20) - 0.01);
      expect(y).toBeGreaterThan(mm(12));
      expect(y).toBeLessThan(height - mm(12));
    }
  });

  it('embeds every face and sets nothing under 10 points', async () => {
    const type = await readPdfType(bytes);
    expect(type.lacking).toEqual([]);
    expect(type.embedded.some((name) => name.includes('SourceSans3'))).toBe(true);
    expect(type.sizes[0]).toBeGreaterThanOrEqual(10);
    expect(type.sizes.at(-1)).toBeGreaterThanOrEqual(18);
  });

  it('carries title, draft, date, name and page number on every page', () => {
    pdf.pages.forEach((_, i) => {
      const text = pageText(pdf, i + 1);
      expect(text).toContain('The Bread Van · draft B · 2026-11-02');
      expect(text).toContain(`page ${i + 1} of ${pdf.pages.length}`);
    });
  });

  it('prints the same bytes twice', async () => {
    const again = await render(breadVan);
    expect(Buffer.compare(Buffer.from(bytes), Buffer.from(again.bytes))).toBe(0);
  });

  it('tells on the cover both measures, what is open and how to read a sheet', () => {
    const text = pageText(pdf, cover);
    expect(text).toContain('add up to 2 4/8 pages, the script is 2 pages long');
    expect(text).toContain('2:55 (2:20 to 3:48), some scenes set by the writer');
    expect(text).toContain('2:30, a minute a page');
    expect(text).toContain('poorly for any single one');
    expect(text).toContain('3 questions : scenes 2, 4A');
    expect(text).toContain('Left out, number kept: 4');
    expect(text).toContain('(implied, likely) not in the text');
  });

  it('gives each scene a row: number, setting, place, light, day, eighths, time, people, synopsis', () => {
    const text = pageText(pdf, list);
    expect(text).toContain('2 EXT Yard night D1 1 3/8 1:25 Nora, Tomi (heard) Rain. The van will not start');
    expect(text).toContain('4A EXT Harbour road dawn D2 ? 4/8 0:40');
  });

  it('orders a sheet by importance', () => {
    const text = pageText(pdf, firstSheet + 1);
    const order = [
      'Scene 2. Outside, Yard, continuous, by night.',
      'story day D1',
      'Shooting day',
      'Rain. The van will not start; the dog guards the crates.',
      'Danger',
      'People',
      'In hand',
      'Costume and',
      'Effects',
      'Must match',
      'Open questions',
      'Photo numbers',
    ].map((words) => text.indexOf(words));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(order.every((at) => at >= 0)).toBe(true);
  });

  it('says of each thing how it is known, who has it and how it changes', () => {
    const text = pageText(pdf, firstSheet + 1);
    expect(text).toContain('storm lantern , brass Nora lit → broken');
    expect(text).toContain('6 × crate (found)');
    expect(text).toContain('matches (implied, likely)');
    expect(text).toContain('van key (carried from sc 1) Tomi in Tomi’s pocket');
    expect(text).toContain('change 1 : white apron, clean → soaked; grey jumper; no scarf');
    expect(text).toContain('heard only, off screen:');
    expect(text).toContain('called that day');
    expect(text).toContain('MINOR , age 16');
  });

  it('frames the danger box of a scene without hazards too, and never says that it is safe', () => {
    expect(pageText(pdf, firstSheet)).toContain('Danger. Nothing raised. Checked by');
    for (let page = 1; page <= pdf.pages.length; page++) expect(pageText(pdf, page)).not.toMatch(/\bsafe\b/);
  });
});

describe('a scene too full for a page', () => {
  it.each([6, 9, 12])('stays on one page with %i of everything and says what it folded', async (size) => {
    const { pdf, messages } = await render(crowdedScene(size));
    const text = pageText(pdf, firstSheet);
    expect(text).toContain('Folded to fit one page:');
    expect(pageText(pdf, firstSheet + 1)).toContain('Left over: what full sheets could not show');
    for (let i = 1; i <= size; i++) {
      expect(text).toContain(`Person ${i}`);
      expect(text).toContain(`props thing ${i}`);
    }
    for (const hazard of hazards.slice(0, size))
      expect(text.replaceAll(' ', '')).toContain(hazard.title.replaceAll(' ', ''));
    expect(messages).toEqual([]);
  });

  it('gives each danger a line or two; the cautions have all of it', async () => {
    const { pdf } = await render(crowdedScene(3));
    const text = pageText(pdf, firstSheet);
    expect(text).toContain('Plan, rehearse slowly and brief');
    expect(text).toContain('Qualified: A trained armourer.');
    expect(text).toContain('Local codes and licensed people decide. There may be other dangers.');
    expect(text).not.toContain('First aid at hand');
    const cautions = pageText(pdf, pdf.pages.length);
    expect(cautions).toContain('First aid at hand');
    expect(cautions).toContain('permits and insurance as the local law asks');
  });

  it('cuts from the bottom when even folding is not enough, says so on paper and in a message', async () => {
    const { pdf, messages } = await render(crowdedScene(150));
    const texts = pdf.pages.map((_, i) => pageText(pdf, i + 1));
    expect(texts[firstSheet - 1]).toContain('Scene 1. Inside, Market hall, day.');
    expect(texts[firstSheet - 1]).toContain('lines are left off here. Split it into two scenes.');
    const rest = texts.slice(firstSheet).join(' ');
    for (const name of ['Person 150', 'props thing 150', 'sound thing 150', 'matter 150', 'Note 150'])
      expect(rest).toContain(name);
    expect(messages.map((message) => message.code)).toEqual(['sheet-overfull']);
    const { severity } = sayRender('sheet-overfull', { scene: '1', lines: 1 });
    expect(messages[0]?.severity).toBe(severity);
  });

  it('never keeps tasks, which no line of the script speaks of, while what is worn is left over', async () => {
    const people = Array.from({ length: 60 }, (_, i) => `PERSON ${i}`);
    const scene = makeScene({
      order: 1,
      place: 'Hall',
      cast: people.map((name) => makeCast({ name })),
      wears: people.map((person) => ({
        person,
        change: 1,
        changeOut: 1,
        garments: [makeGarment({ name: 'coat', stateOut: 'soaked' })],
      })),
      tasks: people.slice(0, 20).map((name) => ({
        text: `Find a stand-in of the right size for ${name}.`,
        strength: 'likely',
        words: 'w',
        line: 1,
        rule: 'r',
      })),
    });
    const text = pageText((await render(makeBreakdown({ scenes: [scene] }))).pdf, firstSheet);
    expect(text).toContain('20 tasks: see');
    expect(text).not.toContain('Find a stand-in');
  });

  it('tells a whole change on camera in one entry, and what it is changed to', async () => {
    const garment = (name: string, action: string | null) => makeGarment({ name, action });
    const garments = [
      garment('coat', 'taken off'),
      garment('boots', 'taken off'),
      garment('ring', null),
      garment('robe', 'put on'),
      { ...garment('boots', 'left off'), absent: true },
    ];
    const scene = makeScene({
      order: 1,
      place: 'Hall',
      cast: [makeCast({ name: 'BEN' })],
      wears: [{ person: 'BEN', change: 1, changeOut: 2, garments }],
    });
    const text = pageText((await render(makeBreakdown({ scenes: [scene] }))).pdf, firstSheet);
    expect(text).toContain('change 1 : coat; boots; ring then 2 on camera : ring; robe; from then on no boots');
    expect(text).toContain('Costume and make-up BEN : change 1 → 2 on camera Photo');
  });

  it('asks on the sheet what nothing tells of clothes, and prints every state on the way', async () => {
    const scene = makeScene({
      order: 1,
      place: 'Hall',
      cast: [makeCast({ name: 'BEN' }), makeCast({ name: 'ADA' }), makeCast({ name: 'CY', voiceOver: true })],
      wears: [
        { person: 'BEN', change: 2, changeOut: 2, garments: [] },
        { person: 'ADA', change: 2, changeOut: 2, garments: [] },
        {
          person: 'CY',
          change: 1,
          changeOut: 1,
          garments: [makeGarment({ name: 'shirt', stateIn: 'clean', statesBetween: ['wet'], stateOut: 'torn' })],
        },
      ],
      perhapsWorn: [{ person: 'ADA', garments: ['jeans', 'cap'], from: 'scene-1' }],
    });
    const text = pageText((await render(makeBreakdown({ scenes: [scene] }))).pdf, firstSheet);
    expect(text).toMatch(/BEN speaks change 2 : \? not told/);
    expect(text).toMatch(/ADA speaks change 2 : \? still jeans, cap \(as in sc 1\)/);
    expect(text).toContain('shirt, clean → wet → torn');
    expect(text).toContain('record the voice: CY (also seen)');
  });

  it('drops the lines to write on first, then folds more and more as the page gets shorter', () => {
    const type = createTypesetter(fontBookOf(readFontFile));
    const breakdown = crowdedScene(3);
    const scene = breakdown.scenes[0] as BreakdownScene;
    const area = areaOf('a4');
    const heights = Array.from({ length: 82 }, (_, i) => 2000 - i * 20);
    const sheets = heights.map((height) =>
      createSheetSetter(createContext(breakdown), { ...area, height }, type)(scene),
    );
    sheets.forEach((sheet, i) => {
      expect(heightOf(sheet.strips)).toBeLessThanOrEqual(heights[i] as number);
    });
    const lines = sheets.map((sheet) => sheet.strips.filter((one) => one.height === writingLine).length);
    const folds = sheets.map((sheet) => sheet.leftOver.length);
    const firstFolded = folds.findIndex((count) => count > 0);
    expect(lines[0]).toBe(10);
    expect(firstFolded).toBeGreaterThan(0);
    expect(lines[firstFolded - 1]).toBeLessThan(5);
    expect(folds.at(-1)).toBeGreaterThan(3);
  });
});

describe('a scene with nothing in it', async () => {
  const { pdf } = await render(
    makeBreakdown({ scenes: [makeScene({ order: 1, place: 'QUAY', number: null, time: null })] }),
  );

  it('prints blanks to fill in, and sections only where there is something to say', () => {
    const text = pageText(pdf, firstSheet);
    expect(text).toContain('Scene 1. Inside, Quay, by day.');
    expect(text).toContain('What happens:');
    expect(text).toContain('Nothing raised. Checked by');
    expect(text).toContain('Nobody is named.');
    expect(text).not.toContain('In hand');
    expect(pdf.pages).toHaveLength(3);
  });

  it('says on the cover that the scenes have no numbers', () => {
    expect(pageText(pdf, cover)).toContain('The scenes have no numbers yet');
  });
});

describe('letters outside the faces', () => {
  it('are told, with their number in their place', async () => {
    const scene = makeScene({
      order: 1,
      place: 'Quay',
      cast: [makeCast({ name: 'Дарья' })],
      elements: [makeElement({ name: 'sign שלט' })],
    });
    const { pdf, messages } = await render(makeBreakdown({ scenes: [scene] }));
    expect(messages.map((message) => message.code)).toEqual(Array(3).fill('font-glyph-missing'));
    expect(pageText(pdf, firstSheet)).toContain('sign [U+05E9][U+05DC][U+05D8]');
    expect(pageText(pdf, firstSheet)).toContain('Дарья');
  });
});

describe('paper', () => {
  it.each([
    ['letter', 612, 792],
    ['a4', 595.28, 841.89],
  ] as const)('is %s', async (paper, width, height) => {
    const { pdf } = await render(makeBreakdown({ paper, scenes: [makeScene({ order: 1, place: 'Quay' })] }));
    expect(pdf.pages[2]?.width).toBeCloseTo(width, 1);
    expect(pdf.pages[2]?.height).toBeCloseTo(height, 1);
    expect(pdf.pages[1]?.width).toBeCloseTo(height, 1);
    expect(areaOf(paper).width).toBeCloseTo(width - mm(32), 1);
  });
});
