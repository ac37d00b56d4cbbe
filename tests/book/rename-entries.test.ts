import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { readBook } from '../../src/book/read-book.js';
import { renameEntries } from '../../src/book/rename-entries.js';
import type { Book } from '../../src/book/types.js';
import { renameEntry } from '../../src/book/write-names.js';

const bookOf = (text: string) => readBook(text, 'book.yaml').book as Book;
const none = new Map<string, string>();

describe('a book whose scene has a new id', () => {
  const text = `days:
  - { date: 2027-03-01, scenes: [yard-day, attic] }
scenes:
  yard-day: { begin: 10:00, was: field }
elements:
  rope: { used up in: [yard-day] }
answers:
  rain-yard-day: it must
`;
  const carried = renameEntries(bookOf(text), { scenes: new Map([['yard-day', 'court']]), places: none }, new Set());

  it('has it everywhere, and knows the earlier ones', () => {
    expect(carried.days[0]?.scenes.map((one) => one.text)).toEqual(['court', 'attic']);
    expect(carried.scenes).toMatchObject([{ id: 'court', was: ['field', 'yard-day'], begin: 600 }]);
    expect(carried.elements[0]?.usedUpIn).toEqual(['court']);
    expect(carried.answers[0]?.question).toBe('rain-court');
  });

  it('counts what the entry itself notes as an earlier name, save for one that is alive', () => {
    const noted = 'days:\n  - { date: 2027-03-01, scenes: [field] }\nscenes:\n  yard-day: { was: field }\n';
    const names = (live: readonly string[]) =>
      renameEntries(bookOf(noted), { scenes: none, places: none }, new Set(live)).days[0]?.scenes.map(
        (one) => one.text,
      );
    expect(names([])).toEqual(['yard-day']);
    expect(names(['field'])).toEqual(['field']);
  });

  it('lets the entry that says something count, and keeps both where both do', () => {
    const both = (court: string) =>
      renameEntries(
        bookOf(`scenes:\n  yard-day: { begin: 10:00 }\n  court: ${court}\n`),
        { scenes: new Map([['yard-day', 'court']]), places: none },
        new Set(),
      ).scenes.map(({ id, begin }) => [id, begin]);
    expect(both('')).toEqual([['court', 600]]);
    expect(both('{ begin: 11:00 }')).toEqual([
      ['yard-day', 600],
      ['court', 660],
    ]);
  });
});

describe('writing a new id into a book', () => {
  it.each([
    ['scenes:\n  yard: # rope\n', 'scenes:\n  court: # rope\n    was: yard\n'],
    ['scenes:\n  yard:', 'scenes:\n  court:\n    was: yard'],
    ['scenes:\r\n  yard:\r\n    begin: 9:00\r\n', 'scenes:\r\n  court:\r\n    was: yard\r\n    begin: 9:00\r\n'],
    ['scenes:\n  yard: { begin: 9:00 } # x\n', 'scenes:\n  court: { was: yard, begin: 9:00 } # x\n'],
    ['scenes:\n  yard: {}\n', 'scenes:\n  court: { was: yard }\n'],
    ['scenes:\n  yard:\n    was: field # old\n', 'scenes:\n  court:\n    was: [field, yard] # old\n'],
    ['scenes:\n  yard: { was: [field] }\n', 'scenes:\n  court: { was: [yard, field] }\n'],
    ['scenes: { yard: { begin: 9:00 } }\n', 'scenes: { court: { was: yard, begin: 9:00 } }\n'],
    ['scenes:\n  court: # new\n', 'scenes:\n  court: # new\n    was: yard\n'],
  ])('turns %j into %j', (before, after) => {
    expect(renameEntry(before, 'scenes', 'yard', 'court')).toBe(after);
  });

  it.each([
    ['there is no entry', 'scenes:\n  attic:\n'],
    ['there are two', 'scenes:\n  yard:\n  court:\n'],
    ['the entry is no map', 'scenes:\n  yard: 5\n'],
    ['the section is no map', 'scenes: []\n'],
    ['the earlier names stand in a list of lines', 'scenes:\n  yard:\n    was:\n      - field\n'],
  ])('leaves the text alone where %s', (_, text) => {
    expect(renameEntry(text, 'scenes', 'yard', 'court')).toBeNull();
  });

  it('keeps every other character, whatever the ids', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z0-9-]{1,12}$/), fc.stringMatching(/^[a-z0-9-]{1,12}$/), (from, to) => {
        fc.pre(from !== to && from !== 'attic' && to !== 'attic');
        const text = `# top\nscenes:\n  attic: # a\n    begin: 9:00\n  ${JSON.stringify(from)}: # b\n    setups: 3\n# end\n`;
        const after = renameEntry(text, 'scenes', from, to) ?? '';
        expect(parse(after).scenes[to]).toEqual({ was: parse(after).scenes[to].was, setups: 3 });
        expect(String(parse(after).scenes[to].was)).toBe(from);
        for (const line of text.split('\n')) if (!line.endsWith('# b')) expect(after.split('\n')).toContain(line);
      }),
    );
  });
});
