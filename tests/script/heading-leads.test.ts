import { describe, expect, it } from 'vitest';
import { readScriptText } from '../../src/script/read-script.js';

const read = (heading: string) => readScriptText(`INT. HALL - DAY\n\nA bell.\n\n${heading}\n\nShe sits.\n`, 'a.md');

describe('words before the setting of a heading', () => {
  it.each([
    ['FLASHBACK: INT. HALL KITCHEN - NIGHT - 1994', 'FLASHBACK', 'HALL KITCHEN'],
    ['FLASHBACK - INT. KITCHEN - NIGHT', 'FLASHBACK', 'KITCHEN'],
    ['DREAM: EXT. LAKE - DAY', 'DREAM', 'LAKE'],
    ['BACK TO: INT. HALL - DAY', 'BACK TO SCENE', 'HALL'],
    ['4. FLASHBACK: INT. KITCHEN - NIGHT', 'FLASHBACK', 'KITCHEN'],
  ])('reads %s', (heading, qualifier, place) => {
    const { script } = read(heading);
    expect(script?.scenes).toHaveLength(2);
    expect(script?.scenes[1]?.heading.qualifiers).toContain(qualifier);
    expect(script?.scenes[1]?.heading.placeParts).toEqual([place]);
    expect(script?.scenes[1]?.heading.text).toBe(heading.replace(/^4\. /, ''));
  });

  it('warns on a line that holds a heading behind other words', () => {
    const { script, messages } = read('RESUME ON INT. YARD - DAY');
    expect(script?.scenes).toHaveLength(1);
    const found = messages.find((one) => one.code === 'heading-behind-words');
    expect(found?.place?.start.line).toBe(5);
    expect(found?.hint).toContain('INT. YARD - DAY');
  });
});

describe('titles short and in full', () => {
  it('takes DOCTOR PATEL for DR PATEL', () => {
    const { script } = readScriptText('INT. WARD - DAY\n\nDR PATEL\nHello.\n\nDOCTOR PATEL\nHello.\n', 'a.md');
    expect(script?.people.map((one) => one.name)).toEqual(['DR PATEL']);
  });
});
