import { describe, expect, it } from 'vitest';
import { main } from '../../src/cli/main.js';
import type { OutputFile } from '../../src/render/types.js';
import { pdfLines } from '../support/pdf-lines.js';
import { createTestHost } from '../support/test-host.js';

type Files = Readonly<Record<string, string | Uint8Array>>;

const script = (draft: string | null, middle: string) => `---
title: Two Cups
${draft === null ? '' : `draft: ${draft}\n`}numbers: locked
---

## 1. INT. KITCHEN - DAY

NORA, 40, pours [tea] from a [blue pot].

> Nora: wears grey cardigan

## 2. EXT. YARD - ${middle}

## 3. INT. ATTIC - NIGHT

NORA opens a [trunk].
`;
const a = 'DAY\n\nNORA hangs the [ladder] on the wall.';
const b = 'NIGHT\n\nNORA cuts a [rope] with a [bread knife].\n\n> blue pot: cracked';

const book = (days: string) => `helpers:
  mika: { name: Mika, does: [props] }
days:
${days}`;
const dayOf = (date: string, scenes: string) => `  - { date: ${date}, call: 8:00, scenes: [${scenes}] }\n`;
const firstDays = book(dayOf('2027-05-01', '1, 2') + dayOf('2027-05-02', '3'));
const nextDays = book(dayOf('2027-05-01', '1') + dayOf('2027-05-02', '2, 3'));

interface Run {
  readonly exit: number;
  readonly error: string;
  readonly out: string;
  /** What stands in the folder after the run. */
  readonly folder: Files;
  /** The printed words of a PDF. */
  readonly lines: (name: string) => Promise<string[]>;
}

/** One compile into the folder that the run before left. */
async function run(
  folder: Files,
  text: string,
  more: readonly string[] = [],
  bookText: string | null = null,
): Promise<Run> {
  const given = { ...folder, 'film.md': text, ...(bookText === null ? {} : { 'film.book.yaml': bookText }) };
  const host = createTestHost(given);
  const exit = await main(['compile', 'film.md', '--out', 'out', ...more], host);
  const after = { ...folder, ...(Object.fromEntries(host.written) as Record<string, OutputFile['content']>) };
  return { exit, ...host.printed, folder: after, lines: (name) => pdfLines(after[`out/${name}`]) };
}

const textOf = (folder: Files, name: string) => {
  const content = folder[`out/${name}`];
  return typeof content === 'string' ? content : new TextDecoder().decode(content);
};

describe('drafts compiled into one folder', async () => {
  const first = await run({}, script('A', a), [], firstDays);
  const second = await run(first.folder, script('B', b), [], nextDays);
  const again = await run(second.folder, script('B', b), [], nextDays);

  it('say at the first that nothing earlier was there, and how to have it next time', async () => {
    expect(first.exit).toBe(0);
    expect(Object.keys(first.folder)).not.toContain('out/previous.json');
    expect(Object.keys(first.folder)).not.toContain('out/changes.md');
    for (const pack of ['props.pdf', 'costumes.pdf']) {
      const page = (await first.lines(pack)).join(' ');
      expect(page).toContain('This is the first draft given: nothing earlier was there to compare.');
      expect(page).toContain('draft: B');
      expect(page).not.toMatch(/nothing changed/i);
    }
  });

  it('keep the breakdown of the draft before, byte for byte', async () => {
    expect(second.exit).toBe(0);
    expect(second.folder['out/previous.json']).toBe(first.folder['out/breakdown.json']);
  });

  it('tell the prop helper what to stop, what to get, and which scene moved to another day', async () => {
    const page = (await second.lines('props.pdf')).join(' ');
    expect(page).toContain('Since draft A, the most costly first:');
    expect(page).toMatch(/STOP, not needed any more: ladder \(was in sc 2\)/);
    expect(page).toMatch(/GET: rope \(sc 2(?:, \d)*\), bread knife \(sc 2/);
    expect(page).toContain('Scene 2: to be shot on day 2, Sun 2 May (was day 1, Sat 1 May).');
    expect(page).toContain('Scene 2: now night (was day).');
  });

  it('tell nobody of what is not theirs', async () => {
    const page = (await second.lines('costumes.pdf')).join(' ');
    expect(page).toContain('Scene 2: now night (was day).');
    expect(page).not.toMatch(/STOP|GET: /);
  });

  it('mark the sheet of a changed scene only', async () => {
    const lines = await second.lines('sheets.pdf');
    expect(lines.filter((line) => line.startsWith('Changed since draft A:')).length).toBe(1);
    expect(lines).toContain('Changed, replace the old sheet: scene 2');
  });

  it('say it loudly when the scene was shot already', async () => {
    const done = nextDays.replace('scenes: [2, 3]', 'scenes: [2, 3], shot: yes');
    const shot = await run(first.folder, script('B', b), ['--only', 'sheets'], done);
    const loud = (await shot.lines('sheets.pdf')).filter((line) => line.startsWith('SHOT ALREADY, before this change'));
    expect(loud.length).toBe(1);
  });

  it('list all by scene', async () => {
    const list = textOf(second.folder, 'changes.md');
    expect(list).toContain('From draft A to draft B.');
    expect(list).toContain('## Scene 2\n');
    expect(list).toContain('- ladder: no longer here\n');
    expect(list).not.toContain('## Scene 1');
  });

  it('give the same bytes when the same draft is compiled again', async () => {
    expect(again.folder).toEqual(second.folder);
  });

  it('lose nothing of what changed when the draft is worked on', async () => {
    const later = await run(again.folder, script('B', `${b}\n\nNORA lights a [candle].`), [], nextDays);
    const list = textOf(later.folder, 'changes.md');
    expect(list).toContain('- ladder: no longer here\n');
    expect(list).toContain('- candle: new here\n');
    expect(later.folder['out/previous.json']).toBe(first.folder['out/breakdown.json']);
  });

  it('say that nothing changed only when the drafts were compared', async () => {
    const same = await run(second.folder, script('C', b), [], nextDays);
    expect((await same.lines('props.pdf')).join(' ')).toContain('Nothing changed for you since draft B.');
    expect(textOf(same.folder, 'changes.md')).toContain('Nothing that is compared has changed.');
  });

  it('compare with another draft on demand', async () => {
    const third = await run(second.folder, script('C', b), [], nextDays);
    const since = await run(
      { ...third.folder, 'old.json': first.folder['out/breakdown.json'] as string },
      script('C', b),
      ['--since', 'old.json'],
      nextDays,
    );
    expect(since.exit).toBe(0);
    expect(textOf(since.folder, 'changes.md')).toContain('From draft A to draft C.');
  });

  it('write no earlier draft away when only other outputs are asked for', async () => {
    const only = await run(first.folder, script('B', b), ['--only', 'props,changes'], nextDays);
    expect(Object.keys(only.folder)).not.toContain('out/previous.json');
    expect(only.folder['out/breakdown.json']).toBe(first.folder['out/breakdown.json']);
    expect(textOf(only.folder, 'changes.md')).toContain('From draft A to draft B.');
  });
});

describe('a folder without a draft to compare with', () => {
  it('says so of a draft without a label', async () => {
    const labelled = await run({}, script('A', a), ['--only', 'json']);
    const plain = await run(labelled.folder, script(null, b), ['--only', 'json,props,changes']);
    expect((await plain.lines('props.pdf')).join(' ')).toContain('Not compared: this draft has no letter.');
    expect(Object.keys(plain.folder)).not.toContain('out/changes.md');
    const next = await run(plain.folder, script('B', b), ['--only', 'json,changes']);
    expect(textOf(next.folder, 'changes.md')).toContain('From draft A to draft B.');
  });

  it('tells of a damaged file and goes on', async () => {
    const damaged = await run({ 'out/breakdown.json': '{' }, script('B', b), ['--only', 'props,changes']);
    expect(damaged).toMatchObject({
      exit: 0,
      error: expect.stringMatching(/out\/breakdown\.json.*\[earlier-not-read\]/s),
    });
    expect((await damaged.lines('props.pdf')).join(' ')).not.toMatch(/nothing changed/i);
  });

  it('tells of a kept file of another version, each time alike', async () => {
    const old = { 'out/breakdown.json': '{"version":0,"draft":"A"}' };
    const once = await run(old, script('B', b), ['--only', 'json,props']);
    const twice = await run(once.folder, script('B', b), ['--only', 'json,props']);
    expect(once.error).toMatch(/expected version 1 of the format, found 0.*\[earlier-not-read\]/s);
    expect((await once.lines('props.pdf')).join(' ')).toContain('Not compared: the earlier draft could not be read.');
    expect(twice.folder).toEqual(once.folder);
  });

  it('refuses a file after --since that is no breakdown, and writes nothing', async () => {
    const refused = await run({ 'old.json': '[]' }, script('B', b), ['--since', 'old.json']);
    expect(refused).toMatchObject({ exit: 1, error: expect.stringMatching(/old\.json.*\[since-not-read\]/s) });
    expect(Object.keys(refused.folder)).toEqual(['old.json']);
  });

  it('says that there is nothing to write when only the changes are asked for', async () => {
    const empty = await run({}, script('B', b), ['--only', 'changes']);
    expect(empty).toMatchObject({
      exit: 0,
      out: expect.stringContaining('No file: there is no earlier draft to compare with'),
    });
  });
});
