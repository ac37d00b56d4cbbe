import { describe, expect, it } from 'vitest';
import { breakDown } from '../support/break-down.js';

function ids(text: string): string[] {
  return breakDown(text).scenes.map(({ id }) => id);
}

describe('scene ids', () => {
  it('are the heading in words, with a running count among equals', () => {
    expect(ids('## INT. BAR - NIGHT\n\nA.\n\n## EXT. QUAY - DAY\n\nB.\n\n## INT. BAR - NIGHT\n\nC.\n')).toEqual([
      'int-bar-night',
      'ext-quay-day',
      'int-bar-night-2',
    ]);
  });

  it('outlive scenes put in before them, with the numbers free', () => {
    const before = '## 1. INT. BAR - NIGHT\n\nA.\n\n## 2. EXT. QUAY - DAY\n\nB.\n';
    const after = `## 1. EXT. LANE - DAY\n\nNew.\n\n${before.replace('1.', '2.').replace('## 2. EXT', '## 3. EXT')}`;
    expect(ids(after)).toEqual(['ext-lane-day', ...ids(before)]);
  });

  it('are the numbers once these are locked', () => {
    const text =
      '---\nnumbers: locked\n---\n\n## 12. INT. BAR - NIGHT\n\nA.\n\n## 12A. INT. BAR - NIGHT\n\nB.\n\n## EXT. QUAY - DAY\n\nC.\n';
    expect(ids(text)).toEqual(['s12', 's12a', 'ext-quay-day']);
  });

  it('are unique whatever the headings', () => {
    const all = ids(
      '## INT. BAR 2 - DAY\n\nA.\n\n## INT. BAR - DAY\n\nB.\n\n## INT. BAR - DAY\n\nC.\n\n## INT. BAR - DAY-2\n\nD.\n',
    );
    expect(new Set(all).size).toBe(4);
  });
});

describe('element ids', () => {
  it('are slugs; where two clash, the marked one or the only thing to get keeps the plain one', () => {
    const head = '---\ncast: { NORA: {} }\n---\n\n## INT. BAR - NIGHT\n\n';
    const told = (name: string, category: 'sound' | 'props' | 'dressing', words: string) => ({ name, category, words });
    const clash = breakDown(`${head}The bell rings. The bell. A bell.\n`, {
      elements: [told('bell', 'sound', 'bell'), told('bell', 'props', 'bell#2')],
    });
    expect(clash.breakdown.elements.map(({ id, category }) => `${id} ${category}`)).toEqual([
      'bell-sound sound',
      'bell props',
    ]);
    const twoToGet = breakDown(`${head}The bell rings. The bell. A bell.\n`, {
      elements: [told('bell', 'dressing', 'bell'), told('bell', 'props', 'bell#2')],
    });
    expect(twoToGet.breakdown.elements.map(({ id }) => id)).toEqual(['bell-dressing', 'bell-props']);
  });

  it('of questions outlive scenes put in before them, and an answer given stays given', () => {
    const body = (note: string) => `## INT. BAR - DAY\n\nA.\n\n## EXT. QUAY - DAY\n\n${note}B.\n`;
    const before = '## INT. HALL - MORNING\n\nNew.\n\n';
    const ids = (source: string) => breakDown(source).scenes.flatMap(({ questions }) => questions.map(({ id }) => id));
    expect(ids(body(''))).toEqual(['day-ext-quay-day']);
    expect(ids(before + body('> answer: day-ext-quay-day yes\n\n'))).toEqual([]);
  });
});
