import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateScreenTime } from '../../src/breakdown/screen-time.js';
import { paginate } from '../../src/page/paginate.js';
import { measureText } from '../../src/page/text-width.js';
import type { PageLine } from '../../src/page/types.js';
import type { Block, Scene, Script } from '../../src/script/types.js';
import { papers } from '../../src/trade/page-measures.js';
import { action, item, pageBreak, part, scene, script, speech, transition } from '../support/script-builder.js';

const anything = fc.string({ unit: 'grapheme', maxLength: 200 });
const prose = fc
  .array(fc.constantFrom('Ivo', 'lifts', 'the', 'lantern.', 'She', 'waits', 'extraordinarily', 'a', 'No.', 'left?'), {
    minLength: 1,
    maxLength: 120,
  })
  .map((words) => words.join(' '));
const text = fc.oneof({ weight: 4, arbitrary: prose }, { weight: 1, arbitrary: anything });

const plainBlock: fc.Arbitrary<Block> = fc.oneof(
  text.map((one) => action(one)),
  fc.array(text, { minLength: 1, maxLength: 4 }).map((lines) => action(...lines)),
  text.map((one) => item(one)),
  fc
    .array(fc.oneof(text, fc.constant('(beat)')), { minLength: 1, maxLength: 5 })
    .map((lines) => speech('NORA (V.O.)', ...lines)),
  fc.constantFrom('CUT TO:', 'FADE OUT.').map((one) => transition(one)),
);
const anyBlock = fc.oneof({ weight: 9, arbitrary: plainBlock }, { weight: 1, arbitrary: fc.constant(pageBreak) });
const scenesOf = (block: fc.Arbitrary<Block>): fc.Arbitrary<Scene[]> =>
  fc.array(
    fc.array(block, { maxLength: 25 }).map((blocks) => scene('INT. STORE - DAY', blocks)),
    { minLength: 1, maxLength: 12 },
  );
const settings = fc.record({
  paper: fc.constantFrom('letter' as const, 'a4' as const),
  eighths: fc.constantFrom('nearest' as const, 'up' as const),
});

const textOf = (line: PageLine) => line.runs.map((run) => run.text).join('');

/** All letters that a script prints, without white space. */
function letters(one: Script): string {
  const blocks = [...one.opening, ...one.scenes.flatMap((s) => [s.heading, ...s.blocks]), ...one.closing];
  return blocks
    .map((block) => {
      if ('lines' in block) {
        const cue = 'cue' in block ? block.cue.text : '';
        return cue + block.lines.map((line) => ('line' in line ? line.line.text : line.text)).join('');
      }
      return 'line' in block ? block.line.text : '';
    })
    .join('')
    .replace(/\s/g, '');
}

describe('pages of any script', () => {
  it('print every letter once, in order, inside the margins and the page', () => {
    fc.assert(
      fc.property(scenesOf(anyBlock), settings, (scenes, front) => {
        const one = script(scenes, front);
        const { pages } = paginate(one);
        const printed = pages.pages.flatMap((page) =>
          page.lines.filter((line, at) => line.kind !== 'more' && !(at === 0 && textOf(line).includes("(CONT'D)"))),
        );
        expect(printed.map(textOf).join('').replace(/\s/g, '')).toBe(letters(one));
        for (const page of pages.pages) {
          const rows = page.lines.map((line) => line.row);
          expect(rows).toEqual([...new Set(rows)].sort((a, b) => a - b));
          expect(rows[0]).toBe(1);
          expect(rows.at(-1)).toBeLessThanOrEqual(papers[front.paper].bodyLines);
          for (const line of page.lines) expect(line.column + measureText(textOf(line))).toBeLessThanOrEqual(75);
        }
      }),
    );
  });

  it('never end with a heading that has a description, nor with a cue, nor start with a transition', () => {
    fc.assert(
      fc.property(scenesOf(plainBlock), settings, (scenes, front) => {
        const { pages } = paginate(script(scenes, front));
        for (const [at, page] of pages.pages.entries()) {
          const last = page.lines.at(-1);
          if (at < pages.pages.length - 1) {
            expect(last?.kind).not.toBe('cue');
            if (last?.kind === 'heading') {
              const next = pages.pages[at + 1]?.lines[0];
              expect(next?.scene).not.toBe(last.scene);
            }
          }
          if (at > 0) expect(page.lines[0]?.kind).not.toBe('transition');
        }
      }),
    );
  });

  it('leave no more than a third of a page empty, save where the writer breaks it', () => {
    fc.assert(
      fc.property(scenesOf(plainBlock), settings, (scenes, front) => {
        const { pages } = paginate(script(scenes, front));
        const height = papers[front.paper].bodyLines;
        for (const page of pages.pages.slice(0, -1)) {
          expect(height - (page.lines.at(-1)?.row ?? 0)).toBeLessThanOrEqual(height / 3);
        }
      }),
    );
  });
});

describe('lengths of any script', () => {
  const sentence = fc.constantFrom('Ivo runs.', 'She lifts the lantern over the wall and lets it fall.', 'No.');

  it('never shrink by one more sentence of action, at the end or anywhere', () => {
    fc.assert(
      fc.property(scenesOf(plainBlock), sentence, fc.nat(), fc.nat(), settings, (scenes, more, where, at, front) => {
        const index = where % scenes.length;
        const before = paginate(script(scenes, front)).pages.scenes[index];
        const one = scenes[index] as Scene;
        const longer = { ...one, blocks: one.blocks.toSpliced(at % (one.blocks.length + 1), 0, action(more)) };
        const after = paginate(script(scenes.with(index, longer), front)).pages.scenes[index];
        expect(after?.lines).toBeGreaterThan(before?.lines ?? 0);
        expect(after?.eighths).toBeGreaterThanOrEqual(before?.eighths ?? 0);
      }),
    );
  });

  it('never shrink by a sentence put into an action, between any two words', () => {
    fc.assert(
      fc.property(fc.oneof(prose, anything), sentence, fc.nat(), (words, more, at) => {
        const all = words.split(' ');
        const longer = all.toSpliced(at % (all.length + 1), 0, more).join(' ');
        const lines = (one: string) => paginate(script([scene('INT. A - DAY', [action(one)])])).pages.scenes[0]?.lines;
        expect(lines(longer)).toBeGreaterThanOrEqual(lines(words) ?? 0);
      }),
    );
  });

  /**
   * The rule by which the sum of eighths and the pages agree, for a script without forced breaks and parts.
   * With n scenes, p pages of h lines, and s the sum of eighths:
   * - each scene's eighths differ from its lines by less than one eighth, since a scene is never under one;
   * - the pages hold the scenes' lines and a blank one between scenes, which the top of a page swallows:
   *   lines + (n - 1) - (p - 1) <= p h;
   * - no page but the last is more than a third empty; a parted speech adds (MORE), its cue, and a line that its
   *   sentence left short: (p - 1)(h 2/3 - 4) < lines + (n - 1).
   */
  it('agree with the pages within the stated rule', () => {
    fc.assert(
      fc.property(scenesOf(plainBlock), settings, (scenes, front) => {
        const { pages } = paginate(script(scenes, front));
        const height = papers[front.paper].bodyLines;
        const [n, p, sum] = [scenes.length, pages.pages.length, pages.eighths];
        const lines = pages.scenes.reduce((total, one) => total + one.lines, 0);
        expect(Math.abs(sum - (lines * 8) / height)).toBeLessThan(n);
        expect(lines + (n - 1) - (p - 1)).toBeLessThanOrEqual(p * height);
        expect((p - 1) * ((height * 2) / 3 - 4)).toBeLessThan(lines + (n - 1));
        // Together: the sum in pages lies between these.
        expect(sum / 8).toBeLessThan(p + (n + p) / height + n / 8);
        expect(sum / 8).toBeGreaterThan((p - 1) * (2 / 3 - 4 / height) - n / height - n / 8);
      }),
    );
  });

  it('do not depend on what stands around a scene', () => {
    fc.assert(
      fc.property(scenesOf(plainBlock), settings, (scenes, front) => {
        const together = paginate(script(scenes, front)).pages.scenes;
        scenes.forEach((one, index) => {
          const alone = paginate(script([one], front)).pages.scenes[0];
          expect([alone?.lines, alone?.eighths]).toEqual([together[index]?.lines, together[index]?.eighths]);
        });
      }),
    );
  });

  it('leave out parts before a scene', () => {
    const blocks = [action('One.')];
    const bare = paginate(script([scene('INT. A - DAY', blocks)])).pages;
    const led = paginate(script([scene('INT. A - DAY', blocks, { lead: [part('ACT ONE')] })])).pages;
    expect(led.scenes[0]?.lines).toBe(bare.scenes[0]?.lines);
    expect(led.pages[0]?.lines).toHaveLength(3);
  });
});

describe('time', () => {
  it('grows with the script, not with its square', () => {
    const one = scene('INT. A - DAY', [action('word '.repeat(300)), speech('NORA', 'It was there. '.repeat(60))]);
    const time = (count: number) => {
      const long = script(Array.from({ length: count }, () => one));
      const start = performance.now();
      paginate(long);
      return performance.now() - start;
    };
    const rounds = Array.from({ length: 5 }, () => [time(200), time(1000)] as const);
    const [small, large] = [0, 1].map((at) => Math.min(...rounds.map((round) => round[at] as number)));
    // Five times the script; its square would be twenty-five times the work. The room is for a busy machine.
    expect((large as number) / (small as number)).toBeLessThan(15);
  });
  // Each of these took minutes where some step looked at the whole text again for every word.
  it.each([
    ['ideographs without a stop', '灯台の中で待っている'.repeat(10_000)],
    ['emoji of several code points', '👩‍🚀'.repeat(10_000)],
    ['letters under many accents', `e${'\u0301'.repeat(50_000)}`],
    ['white space', `é${' \t'.repeat(100_000)}é`],
    ['stops without an end', `${'.'.repeat(100_000)}x`],
    ['quotation marks', '"'.repeat(100_000)],
    ['one word', 'x'.repeat(1_000_000)],
  ])('takes a flood of %s', (_name, text) => {
    const one = scene('INT. A - DAY', [action(text), speech('NORA', text)]);
    const start = process.cpuUsage();
    const { pages } = paginate(script([one]));
    estimateScreenTime(one, pages.eighths);
    expect(process.cpuUsage(start).user / 1e6).toBeLessThan(10);
  });
  it('takes one paragraph of a million characters in its stride', () => {
    const { pages } = paginate(script([scene('INT. A - DAY', [action('word '.repeat(200_000))])]));
    expect(pages.pages.length).toBeGreaterThan(300);
  });
});
