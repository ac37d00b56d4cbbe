import { describe, expect, it } from 'vitest';
import { paginate } from '../../src/page/paginate.js';
import type { PageLine } from '../../src/page/types.js';
import { harbourScript } from '../support/harbour-script.js';
import {
  action,
  heading,
  line,
  omitted,
  part,
  scene,
  script,
  speech,
  styledLine,
  transition,
} from '../support/script-builder.js';

const text = (one: PageLine) => one.runs.map((run) => run.text).join('');

describe('printed lines', () => {
  it('keep the styles of their stretches, also over a line end', () => {
    const words = styledLine(['The ', 'plain'], [`sign ${'x'.repeat(50)} NO`, 'bold'], [' entry', 'italic']);
    const [, ...lines] = paginate(script([scene('INT. A - DAY', [action(words)])])).pages.pages[0]?.lines ?? [];
    expect(lines.map((one) => one.runs)).toEqual([
      [
        { text: 'The ', style: 'plain' },
        { text: `sign ${'x'.repeat(50)}`, style: 'bold' },
      ],
      [
        { text: 'NO', style: 'bold' },
        { text: ' entry', style: 'italic' },
      ],
    ]);
  });
  it('take text outside every stretch as plain, and white space as spaces', () => {
    const bare = { ...line('A\tB'), spans: [] };
    const half = { ...line('one two'), spans: [{ start: 4, end: 7, offset: 0, style: 'italic' as const }] };
    const lines = paginate(script([scene('INT. A - DAY', [action(bare), action(half)])])).pages.pages[0]?.lines ?? [];
    expect(lines.slice(1).map((one) => one.runs)).toEqual([
      [{ text: 'A B', style: 'plain' }],
      [
        { text: 'one ', style: 'plain' },
        { text: 'two', style: 'italic' },
      ],
    ]);
  });
  it('carry a typed number on the first line of a heading, and of OMITTED', () => {
    const long = heading(`INT. ${'STORE '.repeat(12)}- DAY`, '12A');
    const { pages } = paginate(script([scene(long, [action('One.')], { lead: [omitted('11')] })]));
    const lines = pages.pages[0]?.lines ?? [];
    expect(lines.map(({ kind, number, scene: of }) => [kind, number, of])).toEqual([
      ['omitted', '11', null],
      ['heading', '12A', 0],
      ['heading', undefined, 0],
      ['action', undefined, 0],
    ]);
  });
  it('set a part in the middle, a transition at the right, FADE IN at the left', () => {
    const opening = [part('ACT ONE'), transition('FADE IN:')];
    const { pages } = paginate(script([scene('INT. A - DAY', [transition('CUT TO:')])], {}, { opening }));
    const columns = pages.pages[0]?.lines.map((one) => [text(one), one.column]);
    expect(columns).toEqual([
      ['ACT ONE', 15 + 26],
      ['FADE IN:', 15],
      ['INT. A - DAY', 15],
      ['CUT TO:', 60],
    ]);
  });
  it('leave out what has no text', () => {
    const { pages } = paginate(script([scene('INT. A - DAY', [action(''), action('One.'), action(' ', '')])]));
    expect(pages.pages[0]?.lines).toHaveLength(2);
    expect(pages.scenes[0]?.lines).toBe(3);
  });
  it("name the page of each heading and each line's scene", () => {
    const { pages } = paginate(harbourScript());
    expect(pages.scenes.map((one) => one.page)).toEqual([1, 1, 3]);
    for (const page of pages.pages) {
      for (const one of page.lines) {
        expect(one.scene === null).toBe(['part', 'omitted'].includes(one.kind) || text(one) === 'FADE IN:');
      }
    }
  });
  it('report a word that had to be cut', () => {
    const { messages } = paginate(script([scene('INT. A - DAY', [speech('NORA', 'a'.repeat(40))])]));
    expect(messages).toMatchObject([{ code: 'page-word-cut', severity: 'info', actual: 'a'.repeat(40) }]);
  });
});
