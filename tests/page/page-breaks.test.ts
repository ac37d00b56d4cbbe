import { describe, expect, it } from 'vitest';
import { paginate } from '../../src/page/paginate.js';
import type { Page } from '../../src/page/types.js';
import type { Block, Scene } from '../../src/script/types.js';
import { action, pageBreak, part, scene, script, speech, transition } from '../support/script-builder.js';

const body = 54;

function text(page: Page | undefined): string[] {
  return (page?.lines ?? []).map((line) => line.runs.map((run) => run.text).join(''));
}

function lastRow(page: Page | undefined): number {
  return page?.lines.at(-1)?.row ?? 0;
}

/** One-line actions that fill the page up to `row`, an odd row, after a heading on row 1. */
function fillTo(row: number): Scene {
  const blocks: Block[] = [];
  for (let at = 3; at <= row; at += 2) blocks.push(action(`Row ${at}.`));
  return scene('INT. STORE - DAY', blocks);
}

function lay(...scenes: Scene[]) {
  return paginate(script(scenes)).pages.pages;
}

/** A sentence that takes exactly one line of 60. */
function lineOf(letter: string): string {
  return `${letter.toUpperCase()}${letter.repeat(58)}.`;
}

describe('page breaks', () => {
  it('fills 54 lines, and the next page starts without a blank one', () => {
    const pages = lay(fillTo(55));
    expect(lastRow(pages[0])).toBe(53);
    expect(pages[1]?.lines[0]).toMatchObject({ row: 1, kind: 'action' });
  });

  // P50: a heading stays with the first lines of its description (Academy 1998, 2014; ScreenReads).
  it('P50: moves a heading that would stand last', () => {
    const pages = lay(fillTo(51), scene('EXT. PIER - NIGHT', [action('Rain falls.')]));
    expect(lastRow(pages[0])).toBe(51);
    expect(text(pages[1])).toEqual(['EXT. PIER - NIGHT', 'Rain falls.']);
  });
  it('P50: keeps a heading whose first line still fits', () => {
    const pages = lay(fillTo(49), scene('EXT. PIER - NIGHT', [action('Rain falls.')]));
    expect(pages).toHaveLength(1);
    expect(lastRow(pages[0])).toBe(53);
  });
  it('P50: takes the part name above along', () => {
    const second = scene('EXT. PIER - NIGHT', [action('Rain falls.')], { lead: [part('ACT TWO')] });
    expect(text(lay(fillTo(49), second)[1])[0]).toBe('ACT TWO');
  });

  // P51: a one-line establishing shot that is the whole scene may be last (ScreenReads).
  it('P51: leaves a heading last when it is the whole scene', () => {
    const pages = lay(fillTo(51), scene('EXT. PIER - NIGHT', []), scene('INT. CABIN - NIGHT', [action('Dark.')]));
    expect(text(pages[0]).at(-1)).toBe('EXT. PIER - NIGHT');
    expect(lastRow(pages[0])).toBe(53);
  });

  // P52: a cue is never parted from its speech (Academy 1998; Belletristica).
  it('P52: moves cue, parenthetical and speech together', () => {
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(51).blocks, speech('NORA', '(low)', 'Listen.')]));
    expect(lastRow(pages[0])).toBe(51);
    expect(text(pages[1])).toEqual(['NORA', '(low)', 'Listen.']);
  });

  // P53: a one-line speech is not split (Academy 1998, 2014).
  it('P53: never splits a speech of one sentence', () => {
    const words =
      'I have counted the boxes and the boxes have counted me and we are both one short of the twenty that we signed for';
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(49).blocks, speech('NORA', `${words}.`)]));
    expect(lastRow(pages[0])).toBe(49);
    expect(text(pages[1])[0]).toBe('NORA');
  });

  // P54: only after a sentence end, two lines left before it (BBC, Carless). P55: (MORE) and (CONT'D).
  const four =
    'The first boat came in at five. It had nobody aboard at all. The second one came at six and it had two of me.';
  it("P54, P55: splits a longer speech after a sentence, with (MORE) and (CONT'D)", () => {
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(49).blocks, speech('NORA (V.O.)', four)]));
    expect(text(pages[0]).slice(-4)).toEqual([
      'NORA (V.O.)',
      'The first boat came in at five. It',
      'had nobody aboard at all.',
      '(MORE)',
    ]);
    expect(lastRow(pages[0])).toBe(54);
    expect(text(pages[1])).toEqual(["NORA (V.O.) (CONT'D)", 'The second one came at six and it', 'had two of me.']);
  });
  it('P54: does not split when only one line would stay', () => {
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(51).blocks, speech('NORA', four)]));
    expect(lastRow(pages[0])).toBe(51);
    expect(text(pages[1])[0]).toBe('NORA');
  });
  it("P55: does not say (CONT'D) twice", () => {
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(49).blocks, speech("NORA (CONT'D)", four)]));
    expect(text(pages[1])[0]).toBe("NORA (CONT'D)");
  });

  // P56: never inside a sentence, in action or speech (ScriptWrecked; YankeeClassic; Belletristica).
  it('P56: splits an action between sentences and fills the lines anew', () => {
    const long = `${lineOf('a')} Bb ccc. Dd eee fff ${lineOf('g')} Hh.`;
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(51).blocks, action(long)]));
    expect(text(pages[0]).at(-1)).toBe('Bb ccc. Dd eee fff'.slice(0, 7));
    expect(text(pages[1])[0]).toBe('Dd eee fff');
  });
  it('P56: moves an action of one sentence', () => {
    const long = `${'word '.repeat(30)}end.`;
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(51).blocks, action(long)]));
    expect(lastRow(pages[0])).toBe(51);
  });
  it('P56: knows that a title is no sentence end', () => {
    const long = `${lineOf('a')} This is what Mr. ${lineOf('B')}`;
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(51).blocks, action(long)]));
    expect(lastRow(pages[0])).toBe(51);
  });

  // P57: a transition never starts a page; it stays with the scene it ends (Student-A2; Belletristica).
  it('P57: takes the last action along to the next page', () => {
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(53).blocks, transition('CUT TO:')]));
    expect(lastRow(pages[0])).toBe(51);
    expect(text(pages[1])).toEqual(['Row 53.', 'CUT TO:']);
  });
  it('P57: leaves as much of a long action as its sentences allow', () => {
    const long = [lineOf('a'), lineOf('b'), lineOf('c')].join(' ');
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(49).blocks, action(long), transition('CUT TO:')]));
    expect(lastRow(pages[0])).toBe(52);
    expect(text(pages[1])).toEqual([lineOf('c'), 'CUT TO:']);
  });

  it('P57: takes FADE IN along with the scene that it opens', () => {
    const pages = lay(
      scene('INT. STORE - DAY', [...fillTo(49).blocks, transition('FADE IN:')]),
      scene('EXT. PIER - NIGHT', [action('Rain falls.')]),
    );
    expect(lastRow(pages[0])).toBe(49);
    expect(text(pages[1])).toEqual(['FADE IN:', 'EXT. PIER - NIGHT', 'Rain falls.']);
  });

  // P58: no hyphenation (Student-A2; IndieFictions).
  it('P58: never adds a hyphen', () => {
    const words = 'unquestionably extraordinarily understandable misunderstandings everywhere';
    const pages = lay(scene('INT. STORE - DAY', [speech('NORA', words)]));
    expect(text(pages[0]).slice(2).join(' ')).toBe(words);
  });

  // P59: the same speaker after action prints as typed. P60: no CONTINUED at page turns.
  it('P59, P60: adds nothing to a cue after action, nor CONTINUED at a page turn', () => {
    const pages = lay(
      scene('INT. STORE - DAY', [
        ...fillTo(49).blocks,
        speech('NORA', 'One.'),
        action('Beat.'),
        speech('NORA', 'Two.'),
      ]),
    );
    const all = pages.flatMap(text);
    expect(all.filter((one) => one.startsWith('NORA'))).toEqual(['NORA', 'NORA']);
    expect(all.some((one) => one.includes('CONTINUED'))).toBe(false);
  });

  // P61: rather split than leave more than a third of the page empty (Belletristica).
  it('P61: splits inside a sentence when a third of the page would stay empty', () => {
    const sentence = `${'word '.repeat(350)}end.`;
    const { pages, messages } = paginate(script([scene('INT. STORE - DAY', [...fillTo(31).blocks, action(sentence)])]));
    expect(lastRow(pages.pages[0])).toBe(body);
    expect(messages.map((message) => message.code)).toEqual(['page-sentence-split']);
  });
  it('P61: obeys the rule when no more than a third stays empty', () => {
    const sentence = `${'word '.repeat(235)}end.`;
    const pages = lay(scene('INT. STORE - DAY', [...fillTo(37).blocks, action(sentence)]));
    expect(lastRow(pages[0])).toBe(37);
    expect(lay(scene('INT. STORE - DAY', [...fillTo(35).blocks, action(sentence)]))[0]?.lines.at(-1)?.row).toBe(54);
  });
  it('P61: splits a sentence longer than a page', () => {
    const sentence = `${'word '.repeat(2000)}end.`;
    const pages = lay(scene('INT. STORE - DAY', [action(sentence)]));
    expect(pages.slice(0, -1).every((page) => lastRow(page) === body)).toBe(true);
    expect(
      pages
        .flatMap(text)
        .join(' ')
        .split(' ')
        .filter((word) => word === 'word'),
    ).toHaveLength(2000);
  });

  it('starts a page where the writer breaks it, and adds no empty page', () => {
    const pages = lay(
      scene('INT. STORE - DAY', [pageBreak, action('One.'), pageBreak, pageBreak, action('Two.'), pageBreak]),
    );
    expect(pages.map(text)).toEqual([['INT. STORE - DAY'], ['One.'], ['Two.']]);
  });
});
