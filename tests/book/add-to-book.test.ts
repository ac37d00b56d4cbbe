import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { addToBook } from '../../src/book/add-to-book.js';
import { readBook } from '../../src/book/read-book.js';
import { sketch } from '../plan/fixture.js';
import { fullBook } from './full-book.js';

const breakdown = sketch({
  scenes: [
    { cast: ['NORA'], things: { letter: {}, 'storm lantern': {} } },
    { wears: { NORA: { coat: {} } }, place: 'QUAY' },
  ],
});

describe('a new book', () => {
  const made = addToBook(null, breakdown);

  it('has an entry for everything in the script, and reads without a message', () => {
    expect(made.added).toEqual([
      'people: nora',
      'places: boathouse',
      'places: quay',
      'scenes: s1',
      'scenes: s2',
      'elements: letter',
      'elements: storm-lantern',
      'elements: coat',
    ]);
    expect(readBook(made.text, 'book.yaml').messages).toEqual([]);
    expect(parse(made.text).elements).toEqual({ letter: null, 'storm-lantern': null, coat: null });
  });

  it('gains nothing the second time', () => {
    expect(addToBook(made.text, breakdown)).toEqual({ text: made.text, added: [], messages: [] });
  });
});

describe('a book in use', () => {
  const text = `# mine
elements: # things

    # the letter comes first
    letter:   {get: make}   # two of them

    key:
        get: own
        # from my uncle


    # end of things

days: []
`;

  it('keeps every character and adds at the end of its section, in its own indentation', () => {
    const { text: after } = addToBook(text, breakdown);
    expect(after.startsWith(text.slice(0, text.indexOf('\ndays: []')))).toBe(true);
    expect(after).toContain('    # end of things\n    storm-lantern: # Props\n    coat: # Costumes\n\ndays: []\n');
    expect(after).toContain('\npeople:\n  nora: # NORA\n');
  });

  it('reports what no longer matches, and keeps it', () => {
    const { text: after, messages } = addToBook(text, breakdown);
    expect(messages.map((one) => [one.code, one.place?.start.line])).toEqual([['book-entry-without-script', 7]]);
    expect(parse(after).elements.key).toEqual({ get: 'own' });
  });

  it('tells in one message of all that a cut took out', () => {
    const { messages } = addToBook('elements:\n  goldfish:\n    get: own\n  typewriter:\n    get: own\n', breakdown);
    expect(messages.map((one) => one.code)).toEqual(['book-entries-without-script']);
    expect(messages[0]?.reason).toContain('goldfish, typewriter');
  });

  it('knows a thing under its earlier names', () => {
    const renamed = {
      ...breakdown,
      elements: breakdown.elements.map((one) =>
        one.id === 'letter' ? { ...one, id: 'telegram', name: 'telegram', names: ['telegram', 'letter'] } : one,
      ),
    };
    expect(addToBook(text, renamed).added).not.toContain('elements: telegram');
    const noted = addToBook('elements:\n  note:\n    was: letter\n', breakdown);
    expect(noted.added).not.toContain('elements: letter');
    expect(noted.messages).toEqual([]);
  });

  it.each([
    ['elements: {}\n', 'elements: { letter: null, storm-lantern: null, coat: null }'],
    [
      'elements: { letter: {get: own} } # all\n',
      'elements: { letter: {get: own}, storm-lantern: null, coat: null } # all',
    ],
    ['elements:\n  letter: |-\n', 'elements:\n  letter: |-\n'],
    ['elements:', 'elements:\n  letter: # Props\n'],
    ['elements: # later\n', 'elements: # later\n  letter: # Props\n'],
  ])('extends %j', (before, expected) => {
    expect(addToBook(before, breakdown).text).toContain(expected);
  });

  it('leaves a section of another form alone and says so', () => {
    const { text: after, messages } = addToBook('elements: []\nkit: {}\n', breakdown);
    expect(after.startsWith('elements: []\nkit: {}\n')).toBe(true);
    expect(messages.map((one) => one.code)).toContain('book-section-not-extended');
  });

  it('leaves a text that is no YAML alone', () => {
    const { text: after, added, messages } = addToBook('elements: [', breakdown);
    expect([after, added, messages[0]?.code]).toEqual(['elements: [', [], 'book-not-readable']);
  });

  it('keeps the line ends of the file', () => {
    const { text: after } = addToBook('elements:\r\n  letter:\r\n', breakdown);
    expect(after.replace(/\r\n/g, '')).not.toMatch(/[\r\n]/);
  });

  it('does not bring back what was refused', () => {
    expect(addToBook('refused: [storm-lantern]\n', breakdown).added).not.toContain('elements: storm-lantern');
  });

  it('leaves a full book as it is, but for what is new', () => {
    const { text: after } = addToBook(fullBook, breakdown);
    for (const line of fullBook.split('\n')) expect(after.split('\n')).toContain(line);
  });
});
