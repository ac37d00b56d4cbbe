import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isMap, isPair, parseDocument, visit } from 'yaml';
import { addToBook } from '../../src/book/add-to-book.js';
import { readBook } from '../../src/book/read-book.js';
import { sketch } from '../plan/fixture.js';

const name = fc.constantFrom(
  'letter',
  'storm lantern',
  'coat',
  '7',
  'null',
  'été',
  'key "A"',
  'yes',
  'a b c',
  'tin: red',
  '#1',
);
const comment = fc.stringMatching(/^[ -~]{0,20}$/).map((text) => `# ${text.trim()}`);
const remark = fc.option(comment, { nil: '' }).map((text) => (text === '' ? '' : ` ${text}`));

const entry = fc
  .tuple(
    name,
    remark,
    fc.constantFrom(
      '',
      ' {get: own}',
      '\n      get: own',
      '\n      note: |\n        two\n        lines',
      '\n      prep:\n        - dye',
    ),
  )
  .map(([key, tail, value]) => {
    const body = value.startsWith('\n') ? `${tail}${value.replace(/^\n {4}/, '\n    ')}` : `${value}${tail}`;
    return { key, text: `  ${JSON.stringify(key.toLowerCase().replace(/\W+/g, '-'))}:${body}\n` };
  });
const section = (heading: string) =>
  fc
    .tuple(
      remark,
      fc.uniqueArray(entry, { selector: (one) => one.text.split(':')[0], maxLength: 4 }),
      fc.array(
        fc.oneof(
          comment.map((text) => `  ${text}\n`),
          fc.constant('\n'),
        ),
        { maxLength: 3 },
      ),
    )
    .map(([tail, entries, after]) => `${heading}:${tail}\n${entries.map((one) => one.text).join('')}${after.join('')}`);
const bookText = fc
  .tuple(
    fc.array(comment, { maxLength: 2 }),
    fc.shuffledSubarray([0, 1, 2, 3]),
    section('elements'),
    section('people'),
    section('places'),
    section('scenes'),
    fc.constantFrom('\n', '\r\n'),
  )
  .map(([top, order, ...rest]) => {
    const parts = rest.slice(0, 4);
    return [...top.map((one) => `${one}\n`), ...order.map((index) => parts[index] as string)]
      .join('')
      .replace(/\n/g, rest[4] as string);
  });
const script = fc.array(fc.uniqueArray(name, { maxLength: 4 }), { minLength: 1, maxLength: 4 }).map((scenes) =>
  sketch({
    scenes: scenes.map((things) => ({ cast: ['NORA'], things: Object.fromEntries(things.map((one) => [one, {}])) })),
  }),
);

const commentsOf = (text: string) =>
  text.split(/\r?\n/).flatMap((line) => /(?:^|\s)#.*$/.exec(line)?.[0]?.trim() ?? []);

describe('adding to a book', () => {
  it('run twice changes nothing the second time', () => {
    fc.assert(
      fc.property(bookText, script, (text, breakdown) => {
        const once = addToBook(text, breakdown);
        const twice = addToBook(once.text, breakdown);
        expect(twice.text).toBe(once.text);
        expect(twice.added).toEqual([]);
      }),
    );
  });

  it('keeps every line of the old text in its order, comments and blank lines too', () => {
    fc.assert(
      fc.property(bookText, script, (text, breakdown) => {
        const { text: after } = addToBook(text, breakdown);
        if (text.trim() === '') return;
        const lines = after.split(/\r?\n/);
        let at = 0;
        for (const line of text.split(/\r?\n/)) {
          const found = lines.indexOf(line, at);
          expect(found, line).toBeGreaterThanOrEqual(0);
          at = found + 1;
        }
        for (const one of commentsOf(text)) expect(commentsOf(after)).toContain(one);
      }),
    );
  });

  it('keeps what the book said', () => {
    fc.assert(
      fc.property(bookText, script, (text, breakdown) => {
        const before = parseDocument(text);
        const after = parseDocument(addToBook(text, breakdown).text);
        expect(after.errors).toEqual([]);
        visit(before, (_, node, path) => {
          if (!isPair(node)) return;
          const keys = [...path.filter(isPair), node].map((pair) => (pair as { key: unknown }).key);
          const value = after.getIn(keys, true);
          if (isMap(node.value)) expect(isMap(value)).toBe(true);
          else expect(after.hasIn(keys)).toBe(true);
        });
      }),
    );
  });

  it('never throws, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 80 }),
          fc.string({
            unit: fc.constantFrom(
              'a',
              ':',
              ' ',
              '\n',
              '-',
              '[',
              ']',
              '{',
              '}',
              '#',
              '"',
              '&',
              '*',
              '|',
              '?',
              'elements',
              'days',
              '1',
            ),
            maxLength: 40,
          }),
        ),
        script,
        (text, breakdown) => {
          readBook(text, 'book.yaml');
          addToBook(text, breakdown);
        },
      ),
      { numRuns: 300 },
    );
  });
});
