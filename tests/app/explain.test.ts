import { describe, expect, it } from 'vitest';
import { main } from '../../src/cli/main.js';
import { createTestHost } from '../support/test-host.js';

const script = `---
cast:
  NORA: {}
  MR. PELL: { aliases: [PELL], age: 70 }
---

## 1. EXT. LANDING - DAWN

> Nora: wears yellow oilskin, boots

NORA hangs the [storm lantern] on the post.

MR. PELL (O.S.)
Good morning.

> storm lantern: lit

## 2A. INT. FERRY HOUSE - KITCHEN - NIGHT

> time: 0:40
> day: 2

PELL
Six eggs, please.

Nora lights two candles and hands him the storm lantern.

## INT. FERRY HOUSE - ATTIC - LATER

Nora sleeps.

[storm lantern]: prop "brass"
`;

async function explain(...name: string[]) {
  const host = createTestHost({ 'script.md': script });
  const exit = await main(['explain', 'script.md', ...name], host);
  return { exit, ...host.printed, lines: host.printed.out.trimEnd().split('\n') };
}

describe('explain', () => {
  it('says of an element where it stands, how it is known, who has it and in which state', async () => {
    const { exit, lines } = await explain('Storm', 'lantern');
    expect(exit).toBe(0);
    expect(lines[0]).toBe('storm lantern, props, marked');
    expect(lines).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/^ {2}scene 1: marked/),
        '    line 11: "storm lantern"',
        '    goes out: lit',
        expect.stringMatching(/^ {2}scene 2A: found/),
        expect.stringMatching(/^ {4}line 26: handed over from NORA to MR\. PELL: "/),
        expect.stringMatching(/^ {4}because: /),
        '  state "lit" from scene 1, on camera',
      ]),
    );
  });

  it('says how sure it is of what is only found', async () => {
    const { lines } = await explain('candles');
    expect(lines[0]).toMatch(/^candles?, props, found$/);
    expect(lines[1]).toMatch(/^ {2}scene 2A: found, with NORA, 2 of it, confidence 0\.\d\d$/);
    expect(lines[2]).toBe('    line 26: "two candles"');
  });

  it('says of a garment on whom it is, and from where it is carried', async () => {
    const { lines } = await explain('yellow oilskin');
    expect(lines[0]).toBe('yellow oilskin, costumes, noted');
    expect(lines[1]).toMatch(/^ {2}scene 1: noted, worn by NORA/);
  });

  it('says of a person in which scenes, seen or heard, under all names', async () => {
    for (const name of ['mr. pell', 'PELL', 'mr-pell']) {
      const { lines } = await explain(name);
      expect(lines[0]).toBe('MR. PELL, a person (also PELL)');
      expect(lines).toEqual(
        expect.arrayContaining([
          '  scene 1: heard, off-screen',
          '    line 13: "MR. PELL (O.S.)"',
          expect.stringMatching(/^ {2}scene 2A: seen, speaks/),
        ]),
      );
    }
  });

  it('says of a place its scenes and what stands there', async () => {
    const { lines } = await explain('ferry house');
    expect(lines[0]).toBe('FERRY HOUSE, a place (INT)');
    expect(lines[1]).toBe('  scenes: scene 2A, scene 3rd');
  });

  it.each([['2a'], ['scene 2A'], ['Sc. 2A'], ['int-ferry-house-kitchen-night']])(
    'says of the scene %s what its figures rest on',
    async (name) => {
      const { lines } = await explain(...name.split(' '));
      expect(lines[0]).toBe('scene 2A, INT. FERRY HOUSE - KITCHEN - NIGHT');
      expect(lines).toEqual(
        expect.arrayContaining([
          '  line 18 of the script, page 1',
          // Heading, cue, speech, action, and one blank line for each of the two blocks.
          '  length: 1/8 of a page, 6 lines counted',
          '  on screen: 0:40, from a time note; a minute a page gives 0:08',
          expect.stringMatching(/^ {2}story day D2: .*note/),
          expect.stringMatching(/^ {2}caution, Open flame: line 32, "storm lantern", .*“lights two candles”/),
        ]),
      );
    },
  );

  it('says why scenes play on a story day', async () => {
    const { lines } = await explain('D2');
    expect(lines[0]).toBe('D2, a story day');
    expect(lines[1]).toMatch(/^ {2}scene 2A: a note says so|^ {2}scene 2A: .*note/);
    expect(await explain('day', '2')).toEqual(await explain('d2'));
  });

  it('says what is in a state', async () => {
    const { lines } = await explain('lit');
    expect(lines).toEqual([
      '"lit", a state',
      '  scene 1: storm lantern becomes so here',
      ...lines.slice(2).map((line) => expect.stringMatching(/comes in so$/) && line),
    ]);
  });

  it('says which scenes have a figure, and how it is reckoned', async () => {
    const { lines } = await explain('0:40');
    expect(lines).toContain('0:40, a time on the screen');
    expect(lines).toContain('  scene 2A: from a time note');
    expect((await explain('1/8')).lines[0]).toBe('1/8, a length in pages');
    expect((await explain('totals')).lines[0]).toBe('the whole script');
  });

  it('says of a word that is only part of a name where the things of those names come from', async () => {
    expect((await explain('lantern')).lines[0]).toBe('storm lantern, props, marked');
  });

  it('finds a scene without a number by its order', async () => {
    expect((await explain('scene', '3')).lines[0]).toBe('scene 3rd, INT. FERRY HOUSE - ATTIC - LATER');
  });

  it.each([
    ['storm lanten', 'storm lantern'],
    ['Nroa', 'NORA'],
    ['ferry hous', 'FERRY HOUSE'],
  ])('offers the nearest name to %s', async (typed, nearest) => {
    const { exit, error, out } = await explain(typed);
    expect(exit).toBe(2);
    expect(out).toBe('');
    expect(error).toContain(`Nothing in the script is called "${typed}".`);
    expect(error).toContain(`Did you mean ${nearest}?`);
  });

  it('tells what can be asked for when nothing is near', async () => {
    const { exit, error } = await explain('Zanzibar');
    expect(exit).toBe(2);
    expect(error).toContain(
      'Use a name as the sheets print it, a scene number, a story day such as D2, a state or a figure.',
    );
  });
});
