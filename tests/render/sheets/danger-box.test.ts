import { describe, expect, it } from 'vitest';
import type { SceneHazard } from '../../../src/breakdown/types.js';
import { renderSheets } from '../../../src/render/sheets/render-sheets.js';
import { makeBreakdown, makeElement, makeHazard, makeScene } from '../../support/make-breakdown.js';
import { pdfLines } from '../../support/pdf-lines.js';
import { makeRenderInput } from '../../support/render-input.js';

/** The text of the sheet of a scene with one flame and a lamp. */
async function sheetOf(hazard: Partial<SceneHazard>, description: string): Promise<string> {
  const flame = makeHazard({
    id: 'H5',
    title: 'Open flame',
    words: 'storm lantern',
    line: 77,
    precaution: 'Prefer an electric flame. Keep water at hand. Watch it after the last take, too, until it is cold.',
    qualified: 'Fire permit; an effects technician.',
    ...hazard,
  });
  const elements = [makeElement({ name: 'storm lantern', description })];
  const breakdown = makeBreakdown({ scenes: [makeScene({ order: 1, place: 'Quay', hazards: [flame], elements })] });
  const lines = await pdfLines((await renderSheets(makeRenderInput(breakdown))).files[0]?.content);
  const from = lines.findIndex((line) => line.startsWith('Scene 1.'));
  return lines.slice(from, lines.indexOf('Cautions')).join(' ');
}

describe('a danger in the box of a sheet', () => {
  it('has its words, the leading precaution, who must be qualified and a blank; no line of the script', async () => {
    const sheet = await sheetOf({}, 'brass');
    expect(sheet).toContain('Prefer an electric flame.');
    expect(sheet).toContain('Qualified: Fire');
    expect(sheet).toContain('in charge');
    expect(sheet).not.toMatch(/line 77|Watch it after|effects technician/);
  });

  it('says of a lamp that the writer calls electric only that it is said to be so', async () => {
    const sheet = await sheetOf({}, 'electric flicker inside');
    expect(sheet).toContain('Said to be electric; if a real flame is used, see “Cautions”.');
    expect(sheet).not.toContain('Prefer an electric flame');
    expect(sheet).not.toMatch(/\bsafe\b/);
  });

  it('warns as usual when another flame stands beside that lamp', async () => {
    const sheet = await sheetOf({ because: 'the action; also “candle”' }, 'electric flicker inside');
    expect(sheet).toContain('Prefer an electric flame.');
  });

  it('does not take a word inside another for electric', async () => {
    expect(await sheetOf({}, 'filled by hand')).toContain('Prefer an electric flame.');
  });
});
