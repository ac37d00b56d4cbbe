import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { main } from '../../src/cli/main.js';
import { createTestHost } from '../support/test-host.js';

type Files = Readonly<Record<string, string>>;

const script = (yard: string, attic = 'INT. ATTIC - NIGHT', before = '') => `---
title: Two Cups
---

INT. KITCHEN - DAY

NORA, 40, pours [tea] from a [blue pot].

${before}${yard}

NORA hangs the [ladder] on the wall and ties a [rope] to it.

${attic}

TOMI opens a [trunk] and finds a [lantern].
`;
const first = script('EXT. YARD - DAY');
const later = script('EXT. COURTYARD BEHIND THE MILL - DUSK');

const book = `# ours
days:
  - { date: 2026-05-01, call: 8:00, at: mill, scenes: [int-kitchen-day, ext-yard-day] }
  - { date: 2026-05-02, call: 8:00, scenes: [int-attic-night] }
locations:
  mill: { address: 3 Mill Lane }
places:
  kitchen: { at: mill }
  yard: # where the ladder hangs
    at: mill
scenes:
  ext-yard-day: # the ladder
    begin: 10:00   # after the coffee
    setups: 4
elements:
  rope: { get: own, have: 1 }
  ladder: { get: own, have: 1 }
`;

/** Runs one command beside what the runs before left. */
async function run(files: Files, text: string, bookText: string, command: readonly string[]) {
  const host = createTestHost({ ...files, 'film.md': text, 'film.book.yaml': bookText });
  const exit = await main([...command], host);
  const written = Object.fromEntries([...host.written].map(([name, content]) => [name, String(content)]));
  return { exit, ...host.printed, written, files: { ...files, ...written } };
}
const compile = (files: Files, text: string, bookText: string) =>
  run(files, text, bookText, ['compile', 'film.md', '--only', 'json']);
const jsonIn = (files: Files) => JSON.parse(files['film-breakdown/breakdown.json'] ?? '');
const daysIn = (files: Files) => jsonIn(files).shootingDays.map((day: { scenes: string[] }) => day.scenes);

const now = 'ext-courtyard-behind-the-mill-dusk';
const before = await compile({}, first, book);
const after = await compile(before.files, later, book);

const schema = readFileSync(new URL('../../src/render/json/breakdown.schema.json', import.meta.url), 'utf8');
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(JSON.parse(schema));

describe('a heading that changed', () => {
  it('keeps its day, its place and what the book says of it', () => {
    expect(daysIn(after.files)).toEqual([['int-kitchen-day', now], ['int-attic-night']]);
    expect(after.error).toContain(`"ext-yard-day" is "${now}" now (scene 2)`);
    expect(after.error).toContain('the place "yard" is "courtyard-behind-the-mill" now');
    expect(after.error).toContain('Type `prepwright book FILE`');
    expect(after.error).not.toContain('[book-reference-unknown]');
    expect(after.error).not.toContain('[book-entry-without-script]');
  });

  it('is carried at every run, as long as the book has the earlier name', async () => {
    const again = await compile(after.files, later, book);
    expect(daysIn(again.files)).toEqual(daysIn(after.files));
    expect(again.files).toEqual(after.files);
    expect(validate(jsonIn(again.files)), JSON.stringify(validate.errors)).toBe(true);
    expect(again.error).toBe(after.error);
    const renamed = await compile(again.files, script('EXT. MILL COURT - DUSK'), book);
    expect(daysIn(renamed.files)).toEqual([['int-kitchen-day', 'ext-mill-court-dusk'], ['int-attic-night']]);
  });

  it('is known to check too', async () => {
    const checked = await run(before.files, later, book, ['check', 'film.md']);
    expect(checked.error).toContain('[names-carried]');
    expect(checked.error).not.toContain('[book-reference-unknown]');
  });

  it('is written into the book by book, which loses no comment, and is quiet from then on', async () => {
    const made = await run(after.files, later, book, ['book', 'film.md']);
    const text = made.written['film.book.yaml'] ?? '';
    expect(made.out).toContain(`scenes: ${now} (was ext-yard-day)`);
    expect(text).toContain(`  ${now}: # the ladder\n    was: ext-yard-day\n    begin: 10:00   # after the coffee\n`);
    expect(text).toContain('  courtyard-behind-the-mill: # where the ladder hangs\n    was: yard\n    at: mill\n');
    for (const line of book.split('\n')) if (!/yard:|yard-day:/.test(line)) expect(text.split('\n')).toContain(line);
    const quiet = await compile({}, later, text);
    expect(daysIn(quiet.files)).toEqual(daysIn(after.files));
    expect(quiet.error).not.toMatch(/\[(names-carried|book-reference-unknown|book-entry-without-script)\]/);
    const second = await run(after.files, later, text, ['book', 'film.md']);
    expect(second.out).toContain('nothing new');
  });

  it('is known by the remark beside its entry where no papers are left', async () => {
    const made = await run({}, first, '', ['book', 'film.md']);
    const begun = `${made.written['film.book.yaml']}`.replace(
      'days:',
      'days:\n  - { date: 2026-05-01, scenes: [ext-yard-day] }',
    );
    const alone = await compile({}, later, begun);
    expect(daysIn(alone.files)).toEqual([[now]]);
    expect(alone.error).toContain('[names-carried]');
    const twice = later.replace(
      'TOMI opens a [trunk] and finds a [lantern].',
      'NORA hangs the [ladder] on the wall and ties a [rope] to it.',
    );
    const unsure = await compile({}, twice.replace('INT. ATTIC - NIGHT', 'INT. LOFT - NIGHT'), begun);
    expect(daysIn(unsure.files)).toEqual([[]]);
    expect(unsure.error).toContain('[book-reference-unknown]');
  });

  it('is known from papers in another folder too', async () => {
    const elsewhere = await run({}, first, book, ['compile', 'film.md', '--only', 'json', '--out', 'papers']);
    const checked = await run(elsewhere.files, later, book, ['check', 'film.md', '--out', 'papers']);
    expect(checked.error).toContain('[names-carried]');
    const made = await run(elsewhere.files, later, book, ['book', 'film.md', '--out', 'papers']);
    expect(made.out).toContain(`scenes: ${now} (was ext-yard-day)`);
  });

  it('is not taken for certain when little else is the same', async () => {
    const other = later.replace(
      'NORA hangs the [ladder] on the wall and ties a [rope] to it.',
      'TOMI sharpens a [scythe] on a [whetstone].',
    );
    const unsure = await compile(before.files, other, book);
    expect(unsure.error).toMatch(/It may be scene 2 now.*\[name-doubtful\]/s);
    expect(daysIn(unsure.files)).toEqual([['int-kitchen-day'], ['int-attic-night']]);
    const made = await run(before.files, other, book, ['book', 'film.md']);
    expect(parse(made.written['film.book.yaml'] ?? '').scenes['ext-yard-day']).toEqual({ begin: '10:00', setups: 4 });
    expect(made.error).toContain('[name-doubtful]');
  });
});

describe('a script that gets its numbers after its book', () => {
  it('keeps all days', async () => {
    const numbered = first
      .replace('title: Two Cups', 'title: Two Cups\nnumbers: locked')
      .replace('INT. KITCHEN', '1. INT. KITCHEN')
      .replace('EXT. YARD', '2. EXT. YARD')
      .replace('INT. ATTIC', '3. INT. ATTIC');
    const locked = await compile(before.files, numbered, book);
    expect(daysIn(locked.files)).toEqual([['s1', 's2'], ['s3']]);
  });
});

describe('a day that names a scene by its place in the script', () => {
  const byNumber = book.replace('[int-kitchen-day, ext-yard-day]', '[1, 2]').replace('[int-attic-night]', '[3]');
  const one = { files: {} as Files };
  it('says when another scene stands there now', async () => {
    one.files = (await compile({}, first, byNumber)).files;
    const inserted = script('EXT. YARD - DAY', undefined, 'INT. STABLE - DAY\n\nA horse sleeps beside a [cart].\n\n');
    const slipped = await compile(one.files, inserted, byNumber);
    expect(slipped.error).toMatch(
      /Expected "3" to be the scene that it was in the run before.*scene 4 now, "int-attic-night"/s,
    );
    expect(validate(jsonIn(slipped.files)), JSON.stringify(validate.errors)).toBe(true);
    const again = await compile(slipped.files, inserted, byNumber);
    expect([again.error, again.files]).toEqual([slipped.error, slipped.files]);
    const later = await compile(again.files, inserted, byNumber.replace('[1, 2]', '[1, 3]').replace('[3]', '[4]'));
    expect(later.error).not.toContain('[name-slipped]');
    expect(jsonIn(later.files).renamed).toBeUndefined();
    const mended = await compile(one.files, inserted, byNumber.replace('[1, 2]', '[1, 3]').replace('[3]', '[4]'));
    expect(mended.error).not.toContain('[name-slipped]');
  });
});

describe('a day that names the last scene by its place', () => {
  it('says which one it meant when a scene before it is cut', async () => {
    const byNumber = book.replace('[int-attic-night]', '[3]');
    const { files } = await compile({}, first, byNumber);
    const shorter = first.replace(/INT\. KITCHEN.*?(?=EXT)/s, '');
    const cut = await compile(files, shorter, byNumber);
    expect(cut.error).toMatch(/Expected "3" to be.*none under that name.*"int-attic-night"/s);
    expect(cut.error).not.toMatch(/found "3", which is not there/);
    // Of what was cut nothing is guessed.
    expect(cut.error).toMatch(/found "int-kitchen-day", which is not there.*Correct it, or take it out/s);
  });
});

describe('beginning a book', () => {
  it('tells to number the scenes first, and why', async () => {
    const host = createTestHost({ 'film.md': first });
    expect(await main(['book', 'film.md'], host)).toBe(0);
    expect(host.printed.error).toMatch(/3 of 3 scenes without one.*"1\. INT\. KITCHEN - DAY".*numbers: locked/s);
  });

  it('says nothing of it where the numbers are locked', async () => {
    const locked = '---\ntitle: Two Cups\nnumbers: locked\n---\n\n1. INT. KITCHEN - DAY\n\nNora pours [tea].\n';
    const host = createTestHost({ 'film.md': locked });
    await main(['book', 'film.md'], host);
    expect(host.printed.error).not.toContain('[book-scenes-unnumbered]');
  });

  it('tells of a day that lost its scene', async () => {
    const cut = first.replace(/INT\. ATTIC.*/s, '');
    const made = await run({}, cut, book, ['book', 'film.md']);
    expect(made.error).toMatch(/shooting day 2026-05-02.*"int-attic-night".*\[book-reference-unknown\]/s);
  });
});
